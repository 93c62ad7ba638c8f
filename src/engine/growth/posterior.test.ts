import { describe, expect, it } from "vitest"
import { steadyCourse, studyOf } from "../../../test/steady-child.js"
import { growthParameters as parameters } from "../../evidence/index.js"
import { type Mixture, mixtureMean, mixtureSd } from "../numeric/mixture.js"
import { distributionOf, factored, paceMultiple, posterior, withheldPrior } from "./posterior.js"

const born = "2015-12-15"
const course = steadyCourse({ born, months: [-18, -12, -6, 0, 6, 12, 18], shareAfter: 0.5 })
const child = studyOf(course)
const alone = studyOf(steadyCourse({ born, months: [0], shareAfter: 1 }))
const lengthAt = (study: typeof child, ageYears: number, endsAge?: number): Mixture =>
  distributionOf(
    study.posterior,
    [{ eye: 0, ageYears, coefficient: 1 }],
    endsAge === undefined ? {} : { scenario: { treatmentEndsAge: endsAge } },
  )
const paceOf = ({ posterior: { nodes } }: typeof child) =>
  nodes.reduce((sum, { weight, multiple }) => sum + weight * multiple, 0)

describe("what a child's figures say", () => {
  it("is the prior of the pace, mean 1, while there is one length only", () => {
    expect(paceOf(alone)).toBeCloseTo(1, 3)
  })

  it("is a slower pace for a child who grows slower than natural", () => {
    const slow = studyOf(
      steadyCourse({ born, months: [-24, -12, 0, 12], shareBefore: 0.5, shareAfter: 0.5, treatments: [] }),
    )
    expect(paceOf(slow)).toBeLessThan(0.75)
  })

  it("has weights that sum to 1", () => {
    expect(child.posterior.nodes.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 6)
  })

  it("puts the length of the first visit within its own noise of what was measured", () => {
    const found = lengthAt(alone, alone.model.originAge)
    expect(mixtureMean(found)).toBeCloseTo(24.1, 4)
    expect(mixtureSd(found)).toBeCloseTo(Math.sqrt(alone.lengths[0]?.ownVariance as number), 4)
  })

  it("has no doubt about a difference of a length with itself", () => {
    const term = { eye: 0, ageYears: 9, coefficient: 1 } as const
    const nothing = distributionOf(child.posterior, [term, { ...term, coefficient: -1 }])
    expect(Math.abs(mixtureMean(nothing))).toBeLessThan(1e-9)
    expect(mixtureSd(nothing)).toBeLessThan(1e-6)
  })

  it("from the first figures alone is what was known then", () => {
    const then = studyOf({ ...course, visits: course.visits.slice(0, 5) })
    const early = posterior(child.factored, withheldPrior(child.model), {
      rows: then.model.observations.length,
    })
    expect(early.logEvidence).toBeCloseTo(then.posterior.logEvidence, 9)
  })

  it("forecasts a longer eye when the treatment ends than when it goes on", () => {
    const [ended, goesOn] = [lengthAt(child, 16, child.ageYears), lengthAt(child, 16)]
    expect(mixtureMean(ended)).toBeGreaterThan(mixtureMean(goesOn) + 0.2)
  })

  it("is less sure the further ahead", () => {
    const sds = [0, 1, 2, 5].map((years) => mixtureSd(lengthAt(child, child.ageYears + years)))
    expect(sds).toEqual(sds.toSorted((a, b) => a - b))
  })
})

describe("nodes of dioptres per mm", () => {
  const nodesOf = (from: typeof course) => factored(studyOf(from).model, parameters).parts.length
  const glasses = { refraction: { sphere: -1.5, method: "subjective" } } as const

  it("is one until an eye has two refractions", () => {
    expect(nodesOf(course)).toBe(1)
    expect(nodesOf({ ...course, visits: [{ date: "2022-12-20", left: glasses }, ...course.visits] })).toBe(5)
  })
})

describe("pace", () => {
  it("has a prior mean of 1 and its median below", () => {
    const sd = parameters.values.logPaceSd.value
    expect(paceMultiple(0, sd)).toBeCloseTo(Math.exp((-sd * sd) / 2), 12)
    let [mean, total] = [0, 0]
    for (let z = -8; z <= 8; z += 0.01) {
      mean += Math.exp((-z * z) / 2) * paceMultiple(z, sd)
      total += Math.exp((-z * z) / 2)
    }
    expect(mean / total).toBeCloseTo(1, 9)
  })
})

describe("prior of the withheld shares", () => {
  it("fixes the one that is taken to do nothing at 0", () => {
    expect(withheldPrior(child.model, "atropine 0.05 %")).toEqual({ mean: [0], sd: [0] })
    expect(withheldPrior(child.model).mean[0]).toBeGreaterThan(0)
  })
})
