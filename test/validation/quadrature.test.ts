import { describe, expect, it } from "vitest"
import { ageYears } from "../../src/engine/calendar.js"
import type { Course, Visit } from "../../src/engine/course.js"
import {
  distributionOf,
  factored,
  type Nodes,
  posterior,
  usualNodes,
  withheldPrior,
} from "../../src/engine/growth/posterior.js"
import { type Study, study } from "../../src/engine/growth/study.js"
import { mixtureCdf, mixtureQuantile } from "../../src/engine/numeric/mixture.js"
import { growthState } from "../../src/engine/response/growth-state.js"
import { growthWindow } from "../../src/engine/response/growth-window.js"
import { defaultSettings } from "../../src/engine/settings.js"
import { measurementPlan, type PlanInput } from "../../src/engine/simulate/plan.js"
import { randomFrom } from "../../src/engine/simulate/random.js"
import { virtualChild } from "../../src/engine/simulate/virtual-child.js"
import { evidence } from "../../src/evidence/index.js"

/*
 * Is the quadrature fine enough? The answers with the usual nodes against those with twice as many over pace and over
 * dioptres per mm, for children of many kinds. A screen shows hundredths of a millimetre and whole per cent.
 */
const doubled: Nodes = { stepsPerSd: 2 * usualNodes.stepsPerSd, kappa: 2 * usualNodes.kappa }

const months = (last: number, step = 6) => Array.from({ length: last / step + 1 }, (_, i) => i * step)
const girl: PlanInput = {
  sex: "female",
  ancestry: "east-asian",
  startAgeYears: 8.5,
  latitude: 51.5,
  treatment: { kind: "atropine", concentrationPercent: 0.05 },
  visitMonths: months(24),
}
const plans: readonly (PlanInput & { readonly change?: (course: Course) => Course })[] = [
  girl,
  { ...girl, earlierGlasses: [-24, -12] },
  { ...girl, earlierGlasses: [-18], visitMonths: [0] },
  { ...girl, earlierGlasses: [-24, -18, -12, -6], earlierLengths: [-12], visitMonths: months(48) },
  { ...girl, startAgeYears: 6.2, visitMonths: months(132, 6), earlierLengths: [] },
  { ...girl, startAgeYears: 12.5, ancestry: "european", sex: "male", earlierGlasses: [-36, -24, -12] },
  { ...girl, method: "ultrasound", earlierGlasses: [-24, -12] },
  { ...girl, readings: 20, visitMonths: months(36, 3), earlierLengths: [-12, -9, -6, -3] },
  {
    ...girl,
    treatment: { kind: "atropine", concentrationPercent: 0.01 },
    stopMonth: 12,
    visitMonths: months(30),
  },
  {
    ...girl,
    treatment: { kind: "multifocal-lens" },
    latitude: -33.9,
    earlierGlasses: [-10],
    jitterDays: (i) => 17 * i,
  },
  { ...girl, change: withSecondStrength, visitMonths: months(36), earlierGlasses: [-24, -12] },
  { ...girl, change: rightEyeOnly, earlierGlasses: [-14] },
  { ...girl, change: dryRefractions, earlierGlasses: [-24, -12] },
]
const children = plans.flatMap(({ change = (course) => course, ...plan }, p) =>
  [1, 2, 3].map((seed) => {
    const { course } = virtualChild({
      plan: change(measurementPlan(plan)),
      evidence,
      random: randomFrom(1000 * p + seed),
    })
    const asOf = course.visits
      .map((visit) => visit.date)
      .sort()
      .at(-1) as string
    return study({ course, asOf, evidence, settings: defaultSettings })
  }),
)

function withSecondStrength(course: Course): Course {
  const [first] = course.treatments ?? []
  const change = course.visits.at(-4)?.date as string
  return {
    ...course,
    treatments: first
      ? [
          { ...first, concentrationPercent: 0.01, to: change },
          { ...first, from: change },
        ]
      : [],
  }
}
function rightEyeOnly(course: Course): Course {
  return { ...course, visits: course.visits.map(({ left: _, ...visit }): Visit => visit) }
}
function dryRefractions(course: Course): Course {
  const dry = ({ right, left, ...visit }: Visit): Visit => {
    const refraction = { sphere: 0, method: "autorefraction" } as const
    return { ...visit, right: { ...right, refraction }, left: { ...left, refraction } }
  }
  return { ...course, visits: course.visits.map(dry) }
}

interface Shown {
  readonly lengthsMm: readonly number[]
  readonly ratesMmPerYear: readonly number[]
  readonly chances: readonly number[]
  readonly likelihoodRatio: number
}
const LEVELS = [0.025, 0.05, 0.25, 0.5, 0.75, 0.95, 0.975]

function shown(child: Study, nodes: Nodes): Shown {
  const { model, course, evidence: given, asOf } = child
  const split = factored(model, given.growth, nodes)
  const works = posterior(split, withheldPrior(model), { nodes })
  const nothing = posterior(split, withheldPrior(model, child.tested?.key), { nodes })
  const with_ = { ...child, factored: split, posterior: works }
  const eyes = [...new Set(child.lengths.map((figure) => figure.eye))]
  const age = child.ageYears
  const levels = (...at: Parameters<typeof distributionOf>) => {
    const mixture = distributionOf(...at)
    return LEVELS.map((p) => mixtureQuantile(mixture, p))
  }
  const stops = [{}, { scenario: { treatmentEndsAge: age } }]
  const lengthsMm = eyes.flatMap((eye) =>
    [age, Math.min(age + 1, 18), 18].flatMap((at) =>
      stops.flatMap((options) => levels(works, [{ eye, ageYears: at, coefficient: 1 }], options)),
    ),
  )
  const long = eyes.flatMap((eye) =>
    stops.map(
      (options) =>
        1 - mixtureCdf(distributionOf(works, [{ eye, ageYears: 18, coefficient: 1 }], options), 26),
    ),
  )
  const window = growthWindow({ course, asOf })
  const verdict = growthState(with_)
  const rates = eyes.flatMap((eye) => {
    if (!window) return []
    const [from, to] = [window.from, window.to].map((on) => ageYears({ born: course.child.born, on })) as [
      number,
      number,
    ]
    const terms = [
      { eye, ageYears: to, coefficient: 1 / (to - from) },
      { eye, ageYears: from, coefficient: -1 / (to - from) },
    ]
    return levels(works, terms)
  })
  return {
    lengthsMm,
    ratesMmPerYear: [...rates, verdict.mmPerYear ?? 0, verdict.low95 ?? 0, verdict.high95 ?? 0],
    chances: [...long, ...Object.values(verdict.probabilities ?? {})],
    likelihoodRatio: Math.exp(works.logEvidence - nothing.logEvidence),
  }
}

const compared = children.map((child) => ({ usual: shown(child, usualNodes), fine: shown(child, doubled) }))
const furthest = (pick: (figures: Shown) => readonly number[]) =>
  Math.max(
    ...compared.flatMap(({ usual, fine }) =>
      pick(usual).map((value, i) => Math.abs(value - (pick(fine)[i] as number))),
    ),
  )

describe(`twice the nodes, ${children.length} virtual children`, () => {
  it("moves no length, now or at 18, by 0.005 mm", () => {
    expect(furthest(({ lengthsMm }) => lengthsMm)).toBeLessThan(0.005)
  })

  it("moves no rate by 0.005 mm a year", () => {
    expect(furthest(({ ratesMmPerYear }) => ratesMmPerYear)).toBeLessThan(0.005)
  })

  it("moves no chance by 0.005", () => {
    expect(furthest(({ chances }) => chances)).toBeLessThan(0.005)
  })

  it("moves no likelihood ratio, which is shown to two figures, by one per cent", () => {
    const moved = compared.map(({ usual, fine }) =>
      Math.abs(usual.likelihoodRatio / fine.likelihoodRatio - 1),
    )
    expect(Math.max(...moved)).toBeLessThan(0.01)
  })

  it("does notice nodes that are too few", () => {
    const coarse: Nodes = { stepsPerSd: 1, kappa: 1 }
    const moved = children.map((child, i) =>
      Math.abs(shown(child, coarse).likelihoodRatio / (compared[i]?.fine.likelihoodRatio as number) - 1),
    )
    expect(Math.max(...moved)).toBeGreaterThan(0.01)
  })
})
