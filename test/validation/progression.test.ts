import { describe, expect, it } from "vitest"
import type { Course, Sex } from "../../src/engine/course.js"
import { naturalGrowth } from "../../src/engine/growth/natural-growth.js"
import type { Observation } from "../../src/engine/growth/observations.js"
import { lengthSdMm } from "../../src/engine/growth/observations.js"
import { distributionOf } from "../../src/engine/growth/posterior.js"
import { study } from "../../src/engine/growth/study.js"
import { mixtureMean, mixtureSd } from "../../src/engine/numeric/mixture.js"
import { refractionChangeOfGrowth } from "../../src/engine/optics/growth-as-refraction.js"
import { detectableChangeMm } from "../../src/engine/response/detectable-change.js"
import { defaultSettings } from "../../src/engine/settings.js"
import { evidence, type GrowthParameters } from "../../src/evidence/index.js"
import evidenceChecks from "../../src/evidence/tables/progression/checks.json" with { type: "json" }
import growthModel from "../../src/evidence/tables/progression/growth_model.json" with { type: "json" }

// Outside values: the worked checks c01 to c27 of the progression evidence. `published_value` is from the paper named in
// `source`; `model_value` is the evidence's own evaluation of its curve, written apart from the engine.
interface Row {
  readonly id: string
  readonly what: string
  readonly inputs: { readonly age?: number; readonly T?: number; readonly ea?: number }
  readonly model_value: number
  readonly published_value: number | null
  readonly source: string | null
  readonly tolerance: number
}
const rows: readonly Row[] = evidenceChecks.checks
const row = (id: string): Row => rows.find((candidate) => candidate.id === id) as Row
const named = (...ids: string[]) => ids.map(row)

const parameters = evidence.growth
const growthOf = (sex: Sex, ancestry: "east-asian" | "other") =>
  naturalGrowth({ child: { born: "2010-01-01", sex, ancestry }, parameters, settingFactor: 1 })
// The trials' arms hold both sexes, and the factors of the two average exactly 1.
const mixedSexes = (ancestry: "east-asian" | "other", ask: (growth: ReturnType<typeof growthOf>) => number) =>
  (ask(growthOf("female", ancestry)) + ask(growthOf("male", ancestry))) / 2
/** A group of which a share is East Asian: the factor is taken to that power, as in the fit. */
const mixedGroup = (eastAsianShare: number, ask: (growth: ReturnType<typeof growthOf>) => number) =>
  mixedSexes("other", ask) ** (1 - eastAsianShare) * mixedSexes("east-asian", ask) ** eastAsianShare
const grown = ({ age = 0, T = 1, ea = 0 }: Row["inputs"]) =>
  mixedGroup(ea, ({ cumulativeMm }) => cumulativeMm(age + T) - cumulativeMm(age))

function asWorkedOut(actual: number, { model_value }: Row) {
  expect(Math.abs(actual - model_value)).toBeLessThanOrEqual(0.000_051)
}
function asPublished(actual: number, { published_value, tolerance }: Row) {
  expect(Math.abs(actual - (published_value as number))).toBeLessThanOrEqual(tolerance)
}

const intervals = rows.filter(({ id }) => /^c(0[1-9]|1[0-5])/.test(id))

describe("growth of untreated myopes over an interval", () => {
  it("has seventeen rows in the evidence", () => expect(intervals).toHaveLength(17))

  it.each(intervals)("$id $what: the curve's value", (check) => {
    asWorkedOut(grown(check.inputs), check)
  })

  it.each(intervals.filter(({ id, published_value }) => published_value !== null && id !== "c15"))(
    "$id $what: as published ($source)",
    (check) => asPublished(grown(check.inputs), check),
  )

  // Known limit, kept in sight: a cohort of 1999 to 2002 measured by ultrasound grew 0.25 mm less in three years than
  // the curve, which is fitted to later arms measured optically. Should it ever pass, the curve has been changed.
  it("c15: misses the ultrasound cohort of 1999 to 2002, as the evidence says it must", () => {
    const check = row("c15")
    const over = grown(check.inputs) - (check.published_value as number)
    expect(over).toBeGreaterThan(check.tolerance)
    expect(over).toBeCloseTo(0.246, 2)
  })

  it.each(named("c16", "c17"))("$id $what", (check) => {
    const change = refractionChangeOfGrowth({
      growthMm: grown(check.inputs),
      dioptresPerMm: parameters.values.dioptresPerMm.value,
    })
    asWorkedOut(change, check)
    asPublished(change, check)
  })

  it("c18: the rate at 16.3 years, of a US cohort (hou2018)", () => {
    const check = row("c18")
    const { age = 0, ea = 0 } = check.inputs
    const rate = mixedGroup(ea, ({ rateMmPerYear }) => rateMmPerYear(age))
    asWorkedOut(rate, check)
    asPublished(rate, check)
  })

  it.each(growthModel.expected_table)(
    "one and two years from $age_start, as in the table of the fit",
    (cells) => {
      const from = { age: cells.age_start }
      const found = [
        grown({ ...from, T: 1, ea: 0 }),
        grown({ ...from, T: 1, ea: 1 }),
        grown({ ...from, T: 2, ea: 0 }),
        grown({ ...from, T: 2, ea: 1 }),
      ]
      const printed = [
        cells.non_east_asian_1y_mm,
        cells.east_asian_1y_mm,
        cells.non_east_asian_2y_mm,
        cells.east_asian_2y_mm,
      ]
      found.forEach((mm, i) => {
        expect(Math.abs(mm - (printed[i] as number))).toBeLessThanOrEqual(0.000_51)
      })
    },
  )
})

describe("spread between children", () => {
  // Published mean change and interval of the arm (a_between_child_sd.csv), and the age SD that the row names. c22 names
  // none ("teenagers, narrow age band"), so none is added.
  const arms = [
    { ...row("c19"), meanMm: 0.41, years: 1, ageSdYears: 1.75 },
    { ...row("c20"), meanMm: 0.69, years: 2, ageSdYears: 1.2 },
    { ...row("c21"), meanMm: 0.81, years: 3, ageSdYears: 1.6 },
    { ...row("c22"), meanMm: 0.22, years: 0.83, ageSdYears: 0 },
  ]

  /** SD of the change of one eye that the engine expects of a child of 9 of whom only the first length is known. */
  function expectedSd({ meanMm, years }: { meanMm: number; years: number }) {
    const course: Course = {
      lengthwise: 1,
      child: { born: "2015-01-01", sex: "female", ancestry: "other" },
      visits: [{ date: "2024-01-01", right: { axialLength: { mm: 24 } } }],
    }
    const ask = (settingFactor: number) => {
      const child = study({
        course,
        asOf: "2024-01-01",
        evidence,
        settings: { ...defaultSettings, settingFactor },
      })
      const from = child.ageYears
      return distributionOf(child.posterior, [
        { eye: 0, ageYears: from + years, coefficient: 1 },
        { eye: 0, ageYears: from, coefficient: -1 },
      ])
    }
    // Natural growth is scaled to the arm's published mean, so that only the spread is judged.
    return mixtureSd(ask(meanMm / mixtureMean(ask(1))))
  }
  const noise = lengthSdMm({}, parameters)
  const withAgesAndNoise = (arm: (typeof arms)[number]) =>
    Math.sqrt(
      expectedSd(arm) ** 2 +
        (arm.meanMm * parameters.values.declineBefore13PerYear.value * arm.ageSdYears) ** 2 +
        2 * noise ** 2,
    )

  it.each(arms)("$id $what: as published ($source)", (arm) => {
    asPublished(withAgesAndNoise(arm), arm)
  })

  // The engine's eye may also depart from its child's pace (SD 0.114), which the evidence's own sum leaves out.
  it.each(arms.filter(({ id }) => id !== "c22"))(
    "$id $what: the evidence's sum, and at most 5 % more",
    (arm) => {
      const ratio = withAgesAndNoise(arm) / arm.model_value
      expect(ratio).toBeGreaterThan(1)
      expect(ratio).toBeLessThan(1.05)
    },
  )
})

describe("season", () => {
  // A curve that hardly falls with age, so that only the season is left.
  const flat: GrowthParameters = {
    ...parameters,
    values: {
      ...parameters.values,
      declineBefore13PerYear: { ...parameters.values.declineBefore13PerYear, value: 1e-5 },
    },
  }
  const born = "2010-06-21"
  const growth = naturalGrowth({
    child: { born, sex: "female" },
    latitudeDegrees: 51.5,
    parameters: flat,
    settingFactor: 1,
  })
  /** From a quarter before to a quarter after the solstice this many years after birth in June. */
  const halfYearAround = (age: number) => growth.cumulativeMm(age + 0.25) - growth.cumulativeMm(age - 0.25)

  it("c23: a winter half-year grows 1.38 times a summer half-year (cui2013: 1.29)", () => {
    const ratio = halfYearAround(8.5) / halfYearAround(8)
    expect(Math.abs(ratio - row("c23").model_value)).toBeLessThan(0.001)
    asPublished(ratio, row("c23"))
  })

  // The fall left in the curve (1e-5 a year) weighs the ends of the year apart by 4e-7.
  it("c24: a whole year has no season, wherever it begins", () => {
    const unseasoned = naturalGrowth({ child: { born, sex: "female" }, parameters: flat, settingFactor: 1 })
    const year = ({ cumulativeMm }: typeof growth, start: number) =>
      cumulativeMm(start + 1) - cumulativeMm(start)
    for (const start of [7, 7.1, 7.35, 7.8, 9.99]) {
      const factor = year(growth, start) / year(unseasoned, start)
      expect(Math.abs(factor - row("c24").model_value)).toBeLessThan(1e-6)
    }
  })
})

describe("smallest change told from noise", () => {
  const figure = (sd: number): Observation => ({
    kind: "length",
    eye: 0,
    ageYears: 9,
    value: 24,
    ownVariance: sd ** 2,
    sharedVariance: 0,
    visit: 0,
    group: -1,
    groupVariance: 0,
  })
  const changeOf = (sd: number) => detectableChangeMm({ first: figure(sd), last: figure(sd), parameters })

  it("c25: 0.05 mm at an SD of 0.018 within a session (jjo2007)", () => {
    asWorkedOut(changeOf(0.018), row("c25"))
    asPublished(changeOf(0.018), row("c25"))
  })

  it("c26: 0.069 mm at an SD of 0.025 between visits", () => asWorkedOut(changeOf(0.025), row("c26")))

  it("c27: the same factor makes 0.47 dioptres of an SD of 0.17 (rauscher2019: 0.50)", () => {
    expect(Math.abs(changeOf(0.17) - row("c27").model_value)).toBeLessThan(0.0005)
    asPublished(changeOf(0.17), row("c27"))
  })
})

const used = new Set([
  ...intervals.map(({ id }) => id),
  ...["c16", "c17", "c18", "c19", "c20", "c21", "c22", "c23", "c24", "c25", "c26", "c27"],
])
it("uses every row of the evidence", () => {
  expect(rows.map(({ id }) => id).filter((id) => !used.has(id))).toEqual([])
})
