import { describe, expect, it } from "vitest"
import { posterior, withheldPrior } from "../../../src/engine/growth/posterior.js"
import { study } from "../../../src/engine/growth/study.js"
import { finding, waldLimits, weighing } from "../../../src/engine/response/finding.js"
import { defaultSettings } from "../../../src/engine/settings.js"
import { measurementPlan } from "../../../src/engine/simulate/plan.js"
import { randomFrom } from "../../../src/engine/simulate/random.js"
import { virtualChild } from "../../../src/engine/simulate/virtual-child.js"
import { evidence } from "../../../src/evidence/index.js"

/**
 * Wald 1945: of children for whom the treatment does nothing, at most alpha / (1 - beta) are ever told `slowed`, and
 * of children for whom it works at most beta / (1 - alpha) are ever told `not-slowed`, however often one looks.
 */
const CHILDREN = 5000
const LOOKS = [6, 12, 18, 24, 30, 36, 42, 48]

interface Case {
  readonly name: string
  readonly percent: number
  readonly startAgeYears: number
  readonly earlierGlasses?: readonly number[]
}

const cases: readonly Case[] = [
  { name: "0.05 %, from 8.5 years", percent: 0.05, startAgeYears: 8.5 },
  { name: "0.05 %, from 7 years, old glasses", percent: 0.05, startAgeYears: 7, earlierGlasses: [-24, -12] },
  { name: "1 %, from 8.5 years", percent: 1, startAgeYears: 8.5 },
]

/** Shares of children ever told each finding over the looks. */
function everTold({ percent, startAgeYears, earlierGlasses }: Case, works: boolean) {
  const { upper, lower } = waldLimits(defaultSettings)
  const plan = measurementPlan({
    sex: "female",
    ancestry: "east-asian",
    startAgeYears,
    treatment: { kind: "atropine", concentrationPercent: percent },
    visitMonths: [0, ...LOOKS],
    ...(earlierGlasses ? { earlierGlasses } : {}),
  })
  const asOf = plan.visits.at(-1)?.date ?? ""
  const key = `atropine ${percent} %`
  const told = { slowed: 0, notSlowed: 0 }
  for (let i = 0; i < CHILDREN; i++) {
    const random = randomFrom(20_000 + i)
    const child = virtualChild({
      plan,
      evidence,
      random,
      fixed: works ? {} : { withheld: { [key]: 0 } },
    })
    const all = study({ course: child.course, asOf, evidence, settings: defaultSettings })
    const figures = all.model.observations
    const doesNothing = withheldPrior(all.model, key)
    const trials = withheldPrior(all.model)
    for (const month of LOOKS) {
      const date = plan.visits[plan.visits.length - LOOKS.length + LOOKS.indexOf(month)]?.date
      const rows = figures.filter(
        (figure) => (child.course.visits[figure.visit]?.date ?? "") <= (date ?? ""),
      ).length
      const ratio = Math.exp(
        posterior(all.factored, trials, { rows }).logEvidence -
          posterior(all.factored, doesNothing, { rows }).logEvidence,
      )
      if (ratio >= upper) {
        told.slowed++
        break
      }
      if (ratio <= lower) {
        told.notSlowed++
        break
      }
    }
  }
  return { slowed: told.slowed / CHILDREN, notSlowed: told.notSlowed / CHILDREN }
}

/** Three sampling SDs above the bound. */
const allowed = (bound: number) => bound + 3 * Math.sqrt((bound * (1 - bound)) / CHILDREN)

describe("the two errors of the test stay within Wald's bounds", () => {
  const { alpha, beta } = defaultSettings
  it.each(cases)("$name: told `slowed` though it does nothing", (one) => {
    const told = everTold(one, false)
    expect(told.slowed).toBeLessThan(allowed(alpha / (1 - beta)))
    // The test must be able to answer at all, or the bound says nothing.
    expect(told.notSlowed).toBeGreaterThan(0.1)
  })
  it.each(cases)("$name: told `not-slowed` though it works", (one) => {
    const told = everTold(one, true)
    expect(told.notSlowed).toBeLessThan(allowed(beta / (1 - alpha)))
    expect(told.slowed).toBeGreaterThan(0.1)
  })
})

describe("an instrument that cannot see it gives no answer", () => {
  const share = (method: "optical-biometry" | "ultrasound") => {
    const plan = measurementPlan({
      sex: "female",
      ancestry: "east-asian",
      startAgeYears: 8,
      treatment: { kind: "atropine", concentrationPercent: 0.05 },
      visitMonths: [0, 6, 12, 18, 24],
      earlierLengths: [-12, -6],
      method,
    })
    const asOf = plan.visits.at(-1)?.date ?? ""
    let answered = 0
    for (let i = 0; i < 1000; i++) {
      const { course } = virtualChild({ plan, evidence, random: randomFrom(40_000 + i) })
      const known = study({ course, asOf, evidence, settings: defaultSettings })
      if (finding(known, weighing(known)).state !== "cannot-tell-yet") answered++
    }
    return answered / 1000
  }
  it("a child measured by ultrasound stays `cannot-tell-yet` far longer", () => {
    const [optical, ultrasound] = [share("optical-biometry"), share("ultrasound")]
    expect(optical).toBeGreaterThan(0.35)
    expect(ultrasound).toBeLessThan(0.45 * optical)
  })
})

describe("a half-year in winter is not called a failure", () => {
  const told = (start: string, latitude: number | undefined) => {
    const plan = measurementPlan({
      sex: "female",
      ancestry: "east-asian",
      startAgeYears: 8,
      start,
      treatment: { kind: "atropine", concentrationPercent: 0.05 },
      visitMonths: [0, 6],
      earlierLengths: [-12],
      latitude: 51.5,
    })
    const asOf = plan.visits.at(-1)?.date ?? ""
    let notSlowed = 0
    for (let i = 0; i < 3000; i++) {
      const child = virtualChild({ plan, evidence, random: randomFrom(60_000 + i) })
      const course =
        latitude === undefined
          ? {
              lengthwise: 1 as const,
              child: child.course.child,
              visits: child.course.visits,
              treatments: child.course.treatments,
            }
          : { ...child.course, practice: { latitude } }
      const known = study({ course, asOf, evidence, settings: defaultSettings })
      const found = finding(known, weighing(known))
      if (found.state === "not-slowed" || found.lean === "not-slowed") notSlowed++
    }
    return notSlowed / 3000
  }
  it("with the season known, winter is held against a treatment no more often than summer", () => {
    const [winter, summer] = [told("2024-09-21", 51.5), told("2024-03-21", 51.5)]
    expect(Math.abs(winter - summer)).toBeLessThan(0.03)
  })
  it("and without the season it would be, so the correction does something", () => {
    const [winter, summer] = [told("2024-09-21", undefined), told("2024-03-21", undefined)]
    expect(winter).toBeGreaterThan(summer + 0.02)
  })
})
