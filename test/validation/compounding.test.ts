import { describe, expect, it } from "vitest"
import { milligramsIn, needsPoisonCaution } from "../../src/engine/compounding/atropine-content.js"
import { compoundingOrder } from "../../src/engine/compounding/compounding-order.js"
import { uspSolutionLimits } from "../../src/engine/compounding/limits.js"
import clinical from "../../src/evidence/tables/clinical/checks.json" with { type: "json" }
import norms from "../../src/evidence/tables/clinical/safety-norms.json" with { type: "json" }
import treatments from "../../src/evidence/tables/treatments/checks.json" with { type: "json" }
import compounding from "../../src/evidence/tables/treatments/compounding.json" with { type: "json" }

interface Row {
  readonly id: number | string
  readonly inputs?: unknown
  readonly input?: unknown
  readonly expected: unknown
  readonly tolerance: number | null
}
const row = (rows: readonly Row[], id: number | string) => {
  const found = rows.find((check) => check.id === id)
  if (!found) throw new Error(`no check ${id} in the evidence`)
  return {
    given: (found.inputs ?? found.input) as Record<string, number>,
    expected: found.expected as number,
    tolerance: found.tolerance ?? 0,
  }
}
const fromStock = (concentrationPercent: number, volumeMl: number) => {
  const order = compoundingOrder({
    concentrationPercent,
    volumeMl,
    stockPercent: 1,
    bottles: 1,
    smallestVolumeMl: 0.005,
  })
  if (order.kind === "refused") throw new Error("refused")
  return order.steps
}

describe("hand-worked dilutions (evidence: treatments/checks.json)", () => {
  it.each([33, 34, 35])("row %i: millilitres of 1 % stock", (id) => {
    const { given, expected, tolerance } = row(treatments.checks, id)
    const steps = fromStock(given.target!, given.V!)
    expect(steps).toHaveLength(1)
    expect(Math.abs(steps[0]!.takeMl - expected)).toBeLessThanOrEqual(tolerance)
  })

  it("row 36: micrograms in one drop", () => {
    const { given, expected, tolerance } = row(treatments.checks, 36)
    const milligrams = milligramsIn({ concentrationPercent: given.pct!, volumeMl: given.uL! / 1000 })
    expect(Math.abs(milligrams * 1000 - expected)).toBeLessThanOrEqual(tolerance)
  })

  it.each(compounding.dilution_table)(
    "the table of dilutions: $target_percent %",
    ({ target_percent, mL_of_1pct_in_5mL, mL_of_1pct_in_10mL }) => {
      expect(fromStock(target_percent, 10)[0]!.takeMl).toBeCloseTo(mL_of_1pct_in_10mL, 9)
      // 0.125 mL is more than a syringe shows; it is read as 0.13.
      expect(Math.abs(fromStock(target_percent, 5)[0]!.takeMl - mL_of_1pct_in_5mL)).toBeLessThanOrEqual(
        0.005001,
      )
    },
  )
})

describe("milligrams in a bottle (evidence: clinical/checks.json, source TOXINFO)", () => {
  it.each(["K44", "K45"])("%s", (id) => {
    const { given, expected, tolerance } = row(clinical.checks as readonly Row[], id)
    const milligrams = milligramsIn({ concentrationPercent: given.percent!, volumeMl: given.ml! })
    expect(Math.abs(milligrams - expected)).toBeLessThanOrEqual(tolerance)
  })

  it("K46: four drops of 0.5 %", () => {
    const { given, expected, tolerance } = row(clinical.checks as readonly Row[], "K46")
    const volumeMl = given.drops! * given.ml_per_drop!
    expect(
      Math.abs(milligramsIn({ concentrationPercent: given.percent!, volumeMl }) - expected),
    ).toBeLessThanOrEqual(tolerance)
  })

  it.each(norms.atropine_content.table)(
    "$percent % in $ml mL holds $mg mg, with the poison caution from 5 mg",
    ({ percent, ml, mg }) => {
      const milligrams = milligramsIn({ concentrationPercent: percent, volumeMl: ml })
      expect(milligrams).toBeCloseTo(mg, 9)
      expect(needsPoisonCaution(milligrams)).toBe(mg >= norms.atropine_content.child_severe_from_mg)
    },
  )
})

describe("limits of the pharmacopoeia (evidence: treatments/compounding.json)", () => {
  it("are those of the monograph for the solution", () => {
    const { lowPercentOfLabel, highPercentOfLabel } = uspSolutionLimits
    expect([lowPercentOfLabel, highPercentOfLabel]).toEqual(compounding.usp.monograph.assay_percent_of_label)
  })
})
