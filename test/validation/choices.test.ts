import { readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { choices } from "../../src/engine/choices/choices.js"
import type { Ancestry, Course, Sex } from "../../src/engine/course.js"
import { noRules } from "../../src/engine/practice-rules.js"
import { evidence } from "../../src/evidence/index.js"
import * as treatmentEvidence from "../../src/evidence/treatments.js"

/**
 * Growth withheld in a year from a child of whom nothing but one visit is known, against the published documents read
 * afresh: share of the trials (treatments/priors.json) times natural growth (the table of expected growth in
 * progression/growth_model.json, printed to 0.001 mm, without sex). Girls grow 1.03, boys 0.97 of it.
 */
const read = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../src/evidence/tables/${name}.json`, import.meta.url), "utf8"))
const priors: readonly { readonly class: string; readonly fraction_avoided: number }[] =
  read("treatments/priors").priors
const expected: readonly Readonly<Record<string, number>>[] = read("progression/growth_model").expected_table

const CLASSES: Readonly<Record<string, string>> = {
  "atropine-0.01": "atropine 0.01%",
  "atropine-0.02": "atropine 0.02%",
  "atropine-0.025": "atropine 0.025%",
  "atropine-0.05": "atropine 0.05%",
  "atropine-0.1": "atropine 0.1%",
  "atropine-0.5": "atropine 0.5%",
  "atropine-1": "atropine 1%",
  "defocus-spectacles": "spectacles, multi-segment peripheral defocus",
  "lenslet-spectacles": "spectacles, highly aspherical lenslets",
  "dual-focus-lens": "soft lens, dual-focus",
  "multifocal-lens": "soft lens, multifocal high add",
  orthokeratology: "orthokeratology",
  "atropine-0.01+orthokeratology": "combination: atropine 0.01% + orthokeratology",
}
const AGES = [6, 8, 10, 12, 14, 16]

function firstVisit(child: { sex: Sex; ancestry: Ancestry; ageYears: number }): {
  course: Course
  asOf: string
} {
  const { sex, ancestry, ageYears } = child
  // Ages on a leap day's rhythm, so that the decimal age is the whole number of the table: 1461 days are 4 years.
  const born = new Date(Date.UTC(2026, 5, 15) - Math.round(ageYears * 365.25) * 86_400_000)
  const asOf = "2026-06-15"
  const eye = {
    axialLength: { mm: 24, method: "optical-biometry" as const },
    refraction: { sphere: -2, method: "autorefraction" as const, cycloplegic: true },
  }
  const course: Course = {
    lengthwise: 1,
    child: { born: born.toISOString().slice(0, 10), sex, ancestry },
    visits: [{ date: asOf, right: eye, left: eye }],
  }
  return { course, asOf }
}

const told = (child: Parameters<typeof firstVisit>[0]) =>
  choices({ ...firstVisit(child), evidence, treatmentEvidence, rules: noRules, withStrong: true })

describe.each([
  ["girl", "female", "east-asian", 1.03, "east_asian_1y_mm"],
  ["boy", "male", "east-asian", 0.97, "east_asian_1y_mm"],
  ["girl", "female", "european", 1.03, "non_east_asian_1y_mm"],
  ["boy", "male", "european", 0.97, "non_east_asian_1y_mm"],
] as const)("growth withheld in a year of an average %s (%s, %s)", (_, sex, ancestry, factor, column) => {
  it.each(AGES)(
    "of %i years is the share of the trials times the natural growth of the table",
    (ageYears) => {
      const natural = (expected.find(({ age_start }) => age_start === ageYears)?.[column] as number) * factor
      const { options } = told({ sex, ancestry, ageYears })
      const treatments = options.filter(({ kind }) => kind === "treatment")
      expect(treatments.map(({ id }) => id).toSorted()).toEqual(Object.keys(CLASSES).toSorted())
      for (const { id, figures } of treatments) {
        const fraction = priors.find((prior) => prior.class === CLASSES[id])?.fraction_avoided as number
        const withheld = "refused" in figures ? null : figures.withheldNextYearMm
        // Half a thousandth of the table's rounding; ages are whole days, off by up to half a day of growth.
        expect(withheld?.mm).toBeGreaterThan(fraction * (natural - 0.0015))
        expect(withheld?.mm).toBeLessThan(fraction * (natural + 0.0015))
      }
    },
  )
})

it("a girl of 8, East Asian, on 0.05 %: 0.45 x 0.427 x 1.03 = 0.198 mm, worked by hand", () => {
  const { options } = told({ sex: "female", ancestry: "east-asian", ageYears: 8 })
  const { figures } = options.find(({ id }) => id === "atropine-0.05") ?? {}
  if (!figures || "refused" in figures) throw new Error("no figures")
  expect(figures.withheldNextYearMm?.mm).toBeCloseTo(0.198, 3)
})

it("without treatment she is expected to grow 0.427 x 1.03 = 0.440 mm", () => {
  const { untreatedNextYearMm } = told({ sex: "female", ancestry: "east-asian", ageYears: 8 })
  expect(untreatedNextYearMm).toBeCloseTo(0.44, 3)
})

it("0.01 % and 0.02 % may do nothing: their interval reaches over zero", () => {
  const { options } = told({ sex: "female", ancestry: "east-asian", ageYears: 8 })
  for (const id of ["atropine-0.01", "atropine-0.02"]) {
    const option = options.find((one) => one.id === id)
    const withheld = option && !("refused" in option.figures) ? option.figures.withheldNextYearMm : undefined
    expect(withheld?.low95).toBeLessThan(0)
    expect(option?.strength?.mayBeNil).toBe(true)
  }
})
