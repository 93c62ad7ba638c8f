import { describe, expect, it } from "vitest"
import type { Course, Eye } from "../../../src/engine/course.js"
import { EYES } from "../../../src/engine/course.js"
import { eyeIndex } from "../../../src/engine/growth/observations.js"
import { distributionOf } from "../../../src/engine/growth/posterior.js"
import { study } from "../../../src/engine/growth/study.js"
import { mixtureCdf } from "../../../src/engine/numeric/mixture.js"
import { defaultSettings } from "../../../src/engine/settings.js"
import { measurementPlan } from "../../../src/engine/simulate/plan.js"
import { type Random, randomFrom } from "../../../src/engine/simulate/random.js"
import { virtualChild } from "../../../src/engine/simulate/virtual-child.js"
import { evidence } from "../../../src/evidence/index.js"

/**
 * Simulation-based calibration: children are drawn from the model with parameters from its own priors; what the engine
 * then says of the true length at the next review must cover as often as it claims.
 */
const CHILDREN = 4000
/** Two points, as the demand is put; with 4,000 children the sampling SD of a 50 % coverage is 0.8 points. */
const WITHIN = 0.02

type Shape = (random: Random) => { plan: Course; seen: number }

const halfYears = [0, 6, 12, 18, 24]

function someone(random: Random) {
  return {
    sex: random.pick(["female", "male"] as const),
    ancestry: random.pick(["east-asian", "european"] as const),
    startAgeYears: 6.5 + 5.5 * random.uniform(),
    latitude: random.pick([51.5, -34, 1]),
    treatment: random.pick([
      { kind: "atropine", concentrationPercent: 0.05 },
      { kind: "atropine", concentrationPercent: 0.01 },
      { kind: "orthokeratology" },
    ] as const),
  }
}

const shapes: Record<string, Shape> = {
  "two eyes, half-yearly": (random) => ({
    plan: measurementPlan({ ...someone(random), visitMonths: halfYears }),
    seen: 1 + Math.floor(4 * random.uniform()),
  }),
  "one visit only": (random) => ({
    plan: measurementPlan({ ...someone(random), visitMonths: [0, 6] }),
    seen: 1,
  }),
  "irregular dates and old glasses": (random) => ({
    plan: measurementPlan({
      ...someone(random),
      visitMonths: halfYears,
      earlierGlasses: [-20, -9],
      jitterDays: (i) => Math.round(80 * (random.uniform() - 0.5)) + (i === 2 ? 40 : 0),
    }),
    seen: 3 + Math.floor(4 * random.uniform()),
  }),
  "eyes missing at random": (random) => {
    const plan = measurementPlan({ ...someone(random), visitMonths: halfYears })
    const visits = plan.visits.map((visit, i) => {
      if (i === 0 || i === plan.visits.length - 1 || random.uniform() > 0.5) return visit
      const { right, left, ...rest } = visit
      return random.uniform() < 0.5 ? { ...rest, right } : { ...rest, left }
    })
    return { plan: { ...plan, visits } as Course, seen: 1 + Math.floor(4 * random.uniform()) }
  },
}

function coverage(shape: Shape): Record<50 | 90 | 95, number> {
  const hits = { 50: 0, 90: 0, 95: 0 }
  let asked = 0
  for (let i = 0; i < CHILDREN; i++) {
    const random = randomFrom(1000 + i)
    const { plan, seen } = shape(random)
    const child = virtualChild({ plan, evidence, random })
    const next = child.course.visits[seen]
    const last = child.course.visits[seen - 1]
    if (!next || !last) continue
    const known = study({ course: child.course, asOf: last.date, evidence, settings: defaultSettings })
    const age = (Date.parse(next.date) - Date.parse(child.course.child.born)) / 86_400_000 / 365.25
    // One eye a child, so that the children are independent of each other.
    const eye = EYES.find((e: Eye) => known.lengths.some((figure) => figure.eye === eyeIndex(e)))
    if (!eye) continue
    const said = distributionOf(known.posterior, [{ eye: eyeIndex(eye), ageYears: age, coefficient: 1 }])
    const at = mixtureCdf(said, child.trueMm[eye][seen] as number)
    asked++
    for (const level of [50, 90, 95] as const) {
      if (Math.abs(at - 0.5) <= level / 200) hits[level]++
    }
  }
  expect(asked).toBeGreaterThan(0.95 * CHILDREN)
  return { 50: hits[50] / asked, 90: hits[90] / asked, 95: hits[95] / asked }
}

describe("intervals for the length at the next review cover as often as they say", () => {
  it.each(Object.entries(shapes))("%s", (_, shape) => {
    const covered = coverage(shape)
    expect(Math.abs(covered[50] - 0.5)).toBeLessThan(WITHIN)
    expect(Math.abs(covered[90] - 0.9)).toBeLessThan(WITHIN)
    expect(Math.abs(covered[95] - 0.95)).toBeLessThan(WITHIN)
  })
})
