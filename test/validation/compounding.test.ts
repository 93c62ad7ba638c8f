import { describe, expect, it } from "vitest"
import { milligramsIn, needsPoisonCaution } from "../../src/engine/compounding/atropine-content.js"
import { bottlesNeeded } from "../../src/engine/compounding/bottles-needed.js"
import { compoundingOrder } from "../../src/engine/compounding/compounding-order.js"
import { dropsPerMl, dropVolume, nightsOfDrops } from "../../src/engine/compounding/drop-volume.js"
import { uspSolutionLimits } from "../../src/engine/compounding/limits.js"
import { benzalkoniumCarriedOver } from "../../src/engine/compounding/preservative.js"
import { OPENED_STUDIED_DAYS, stabilityLines } from "../../src/engine/compounding/stability.js"
import { usualPharmacy } from "../../src/engine/compounding/usual-pharmacy.js"
import clinical from "../../src/evidence/tables/clinical/checks.json" with { type: "json" }
import norms from "../../src/evidence/tables/clinical/safety-norms.json" with { type: "json" }
import treatments from "../../src/evidence/tables/treatments/checks.json" with { type: "json" }
import compounding from "../../src/evidence/tables/treatments/compounding.json" with { type: "json" }
import { compounding as readPart } from "../../src/evidence/treatments.js"

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

  it("row 37: nights from 5 mL in both eyes with the largest drops", () => {
    const { given, expected, tolerance } = row(treatments.checks, 37)
    expect(given.uL).toBe(dropVolume.largestDropMicrolitres)
    const { low } = nightsOfDrops({ volumeMl: given.mL!, dropsANight: 2 })
    expect(Math.abs(low - expected)).toBeLessThanOrEqual(tolerance)
  })

  it("row 38: nights from 5 mL in both eyes with the smallest drops of that study, inside the range", () => {
    const { given, expected, tolerance } = row(treatments.checks, 38)
    const nights = (given.mL! * 1000) / given.uL! / 2
    expect(Math.abs(nights - expected)).toBeLessThanOrEqual(tolerance)
    const { low, high } = nightsOfDrops({ volumeMl: given.mL!, dropsANight: 2 })
    expect(nights).toBeGreaterThan(low)
    expect(nights).toBeLessThan(high)
  })

  it("row 39: true strength of the worst bottle of a survey", () => {
    const { given, expected, tolerance } = row(treatments.checks, 39)
    const limits = { lowPercentOfLabel: given.claim!, highPercentOfLabel: 100, source: "richdale2023" }
    const order = compoundingOrder({
      concentrationPercent: given.label!,
      stockPercent: 1,
      bottles: 1,
      volumeMl: 10,
      limits,
    })
    if (order.kind === "refused") throw new Error("refused")
    expect(Math.abs(order.limitsPercent.low - expected)).toBeLessThanOrEqual(tolerance)
    expect(order.limitsPercent.low).toBeLessThan((given.label! * uspSolutionLimits.lowPercentOfLabel) / 100)
  })

  it("no row about drops, dilutions or bottles is left out", () => {
    const about = (treatments.checks as readonly { id: number; description: string }[])
      .filter(({ description }) => /\bmL\b|drop\b|bottle/i.test(description))
      .map(({ id }) => id)
    expect(about).toEqual([33, 34, 35, 36, 37, 38, 39])
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

describe("bottles (evidence: treatments/compounding.json, drops, both studies read in the abstract)", () => {
  const { drops } = compounding

  it("take the ends of the two studies together, never a fixed 20 drops a millilitre", () => {
    expect(dropVolume.largestDropMicrolitres).toBe(drops.volume_uL_range[1])
    expect(dropsPerMl.high).toBe(drops.drops_per_mL_range[1])
    expect(dropsPerMl.low).toBeLessThan(drops.drops_per_mL_range[0]!)
    expect([drops.volume_how, drops.drops_how]).toEqual(["abstract", "abstract"])
    expect(dropVolume.sources).toEqual(
      [drops.volume_source, drops.drops_source].map((id) => `treatments/${id}`),
    )
  })

  it("allow 39 to 102 nights from 5 mL in both eyes, as the summary of the evidence does", () => {
    const { german1999, moore2017 } = drops.nights_from_5mL_two_eyes
    const answer = bottlesNeeded({ volumeMl: 5, eyes: 2, nights: 30, daysAfterOpening: 30 })
    expect(answer).toMatchObject({ nightsByDrops: { low: german1999[0], high: moore2017[1] } })
  })

  it("24 or 25 are needed for two years, thrown away after a month (common practice, no source)", () => {
    for (const [daysAfterOpening, bottles] of [
      [31, 24],
      [30, 25],
    ] as const)
      expect(bottlesNeeded({ volumeMl: 5, eyes: 2, nights: 730, daysAfterOpening })).toMatchObject({
        bottles: { low: bottles, high: bottles },
        binding: "beyond-use",
      })
  })

  it("hold 5 mL where nobody says otherwise, the most frequent size of a survey", () => {
    expect(usualPharmacy.bottleMl).toBe(compounding.pharmacy_survey.bottle_mL_median)
  })
})

describe("a 1 % stock diluted 1 : 100 (common practice, no source)", () => {
  it("gives 0.01 %", () => {
    const order = compoundingOrder({ concentrationPercent: 0.01, stockPercent: 1, bottles: 1, volumeMl: 100 })
    expect(order).toMatchObject({ finalPercent: 0.01, steps: [{ takeMl: 1, addDiluentMl: 99 }] })
  })
})

describe("preservative and stability (evidence: treatments/compounding.json)", () => {
  it.each(compounding.dilution_table)(
    "benzalkonium carried over into $target_percent %",
    ({ target_percent, carried_over_benzalkonium_percent }) => {
      const carried = benzalkoniumCarriedOver({ concentrationPercent: target_percent, stockPercent: 1 })
      expect(carried?.percent).toBeCloseTo(carried_over_benzalkonium_percent, 9)
    },
  )

  it("opened bottles were followed for the days that are said", () => {
    const opened = compounding.stability.find(({ study }) => study === "sriin2022")
    expect(opened?.result).toContain(`for ${OPENED_STUDIED_DAYS} d`)
  })

  it("every study that was read has its line with how it was read", () => {
    const lines = stabilityLines(readPart.stability, 0.01)
    expect(lines).toHaveLength(compounding.stability.length)
    for (const { study, how_obtained } of compounding.stability)
      expect(lines.join("\n")).toContain(`${study}, ${how_obtained}`)
  })
})

describe("limits of the pharmacopoeia (evidence: treatments/compounding.json)", () => {
  it("are those of the monograph for the solution", () => {
    const { lowPercentOfLabel, highPercentOfLabel } = uspSolutionLimits
    expect([lowPercentOfLabel, highPercentOfLabel]).toEqual(compounding.usp.monograph.assay_percent_of_label)
  })
})
