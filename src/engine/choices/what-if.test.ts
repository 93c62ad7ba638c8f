import { describe, expect, it } from "vitest"
import { steadyCourse, studyOf } from "../../../test/steady-child.js"
import { evidence } from "../../evidence/index.js"
import type { Course, Treatment } from "../course.js"
import { forecast } from "../forecast.js"
import { distributionOf, factored, posterior, withheldPrior } from "../growth/posterior.js"
import { keyOf } from "../growth/prescribed.js"
import { treatmentPrior } from "../growth/treatment-prior.js"
import { mixtureQuantile } from "../numeric/mixture.js"
import { normalCdf, normalQuantile } from "../numeric/normal.js"
import { by18 } from "./outlook-figures.js"
import { outlooks } from "./what-if.js"

const treated = steadyCourse({ months: [-12, -6, 0, 6, 12], shareAfter: 0.6 })
const asOf = "2025-06-15"
const child = studyOf(treated)
const told = outlooks(child)

const futureOf = (treatment: Omit<Treatment, "from">, share = 1) => ({
  key: keyOf([treatment]),
  prior: treatmentPrior([{ ...treatment, from: asOf }], evidence.growth).prior,
  share,
  toAge: Number.POSITIVE_INFINITY,
})

/** The same question asked of the forecast: the course with the option recorded in it from that day. */
function recordedForecast(treatment: Omit<Treatment, "from"> | null) {
  const ended = (treated.treatments ?? []).map((one) => ({ ...one, to: asOf }))
  const course: Course = {
    ...treated,
    treatments: [...ended, ...(treatment ? [{ ...treatment, from: asOf }] : [])],
  }
  const { eyes, chance26mmBy18 } = forecast({ course, asOf, evidence, toAgeYears: 18 })
  return { median: eyes.right?.asTreated.p50.at(-1) as number, chance: chance26mmBy18?.asTreated as number }
}

describe("an outlook agrees with the forecast of a course that has the option recorded", () => {
  it.each([
    ["another strength", { kind: "atropine", concentrationPercent: 0.025 }],
    ["the strength that is in use", { kind: "atropine", concentrationPercent: 0.05 }],
    ["another treatment", { kind: "lenslet-spectacles" }],
  ] as const)("%s", (_, treatment) => {
    const outlook = told.under(futureOf(treatment))
    const { median, chance } = recordedForecast(treatment)
    expect(mixtureQuantile(outlook.lengthAt(0, 18), 0.5)).toBeCloseTo(median, 6)
    expect(by18(child, outlook).chance26mm.chance).toBeCloseTo(chance, 6)
  })

  it("no treatment", () => {
    const outlook = told.under(null)
    const { median, chance } = recordedForecast(null)
    expect(mixtureQuantile(outlook.lengthAt(0, 18), 0.5)).toBeCloseTo(median, 6)
    expect(by18(child, outlook).chance26mm.chance).toBeCloseTo(chance, 6)
  })

  it("going on as now", () => {
    const { chance26mmBy18 } = forecast({ course: treated, asOf, evidence, toAgeYears: 18 })
    const { chance } = by18(child, told.asNow(Number.POSITIVE_INFINITY)).chance26mm
    expect(chance).toBeCloseTo(chance26mmBy18?.asTreated as number, 9)
  })
})

describe("growth withheld", () => {
  const year = { fromAge: child.ageYears, toAge: child.ageYears + 1 }

  it("of no treatment is nothing", () => {
    const { means, sds } = told.under(null).withheld(year)
    expect(Math.max(...means.map(Math.abs), ...sds)).toBe(0)
  })

  it("is a share of the nights: half the nights, half of it", () => {
    const every = told.under(futureOf({ kind: "lenslet-spectacles" })).withheld(year)
    const half = told.under(futureOf({ kind: "lenslet-spectacles" }, 0.5)).withheld(year)
    expect(half.means[0]).toBeCloseTo((every.means[0] as number) / 2, 12)
  })

  it("ends with the treatment", () => {
    const stopped = told.under({ ...futureOf({ kind: "lenslet-spectacles" }), toAge: year.toAge })
    const after = stopped.withheld({ fromAge: year.toAge, toAge: year.toAge + 1 })
    expect(Math.max(...after.means.map(Math.abs))).toBe(0)
  })
})

describe("the interval of a chance", () => {
  /** Every pace by every share withheld, each with its weight: the chances they give, in order. */
  function bruteForce(prior: { mean: number; sd: number } | null): { low95: number; high95: number } {
    const blank = {
      key: "x",
      name: "x",
      label: "x",
      prior: { mean: 0, sd: 0 },
      effect: null,
      stretches: [],
      startAge: Number.POSITIVE_INFINITY,
      endAge: Number.POSITIVE_INFINITY,
      exposures: [{ fromAge: child.ageYears, toAge: Number.POSITIVE_INFINITY, share: 1 }],
      coverage: null,
    }
    const ended = child.model.columns.map((column) => ({
      ...column,
      exposures: column.exposures.map((exposure) => ({ ...exposure, toAge: child.ageYears })),
    }))
    const model = { ...child.model, columns: [...ended, blank] }
    const found = posterior(factored(model, evidence.growth), withheldPrior(model), {
      nodes: { stepsPerSd: 20, kappa: 1 },
    })
    const shares = 81
    const chances: { chance: number; weight: number }[] = []
    for (const node of found.nodes) {
      for (let i = 0; i < (prior ? shares : 1); i++) {
        const w = prior ? prior.mean + prior.sd * normalQuantile((i + 0.5) / shares) : 0
        const mean = [...node.mean]
        mean[mean.length - 1] = w
        // What was learned of the former treatment moves only where the eye stands today, by far less than a percent.
        const known = { ...node, weight: 1, mean, covariance: node.covariance.map(() => 0) }
        const { means, sds } = distributionOf({ ...found, nodes: [known] }, [
          { eye: 0, ageYears: 18, coefficient: 1 },
        ])
        const chance = 1 - normalCdf((26 - (means[0] as number)) / (sds[0] as number))
        chances.push({ chance, weight: node.weight / (prior ? shares : 1) })
      }
    }
    chances.sort((a, b) => a.chance - b.chance)
    const at = (p: number) => {
      let sum = 0
      for (const { chance, weight } of chances) {
        sum += weight
        if (sum >= p) return chance
      }
      return 1
    }
    return { low95: at(0.025), high95: at(0.975) }
  }

  it.each([
    ["lenslet spectacles", futureOf({ kind: "lenslet-spectacles" })],
    ["no treatment", null],
  ] as const)("of %s agrees with every pace by every share to a hundredth or so", (_, future) => {
    const { low95, high95 } = by18(child, told.under(future)).chance26mm
    const brute = bruteForce(future?.prior ?? null)
    expect(Math.abs(low95 - brute.low95)).toBeLessThan(0.015)
    expect(Math.abs(high95 - brute.high95)).toBeLessThan(0.015)
  })
})
