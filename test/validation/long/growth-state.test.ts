import { describe, expect, it } from "vitest"
import type { KnownGrowthState } from "../../../src/engine/assessment.js"
import { ageYears } from "../../../src/engine/calendar.js"
import { study } from "../../../src/engine/growth/study.js"
import { growthState } from "../../../src/engine/response/growth-state.js"
import { defaultSettings } from "../../../src/engine/settings.js"
import { measurementPlan } from "../../../src/engine/simulate/plan.js"
import { randomFrom } from "../../../src/engine/simulate/random.js"
import { virtualChild } from "../../../src/engine/simulate/virtual-child.js"
import { evidence } from "../../../src/evidence/index.js"

/** Of the virtual children told a state at a given certainty, that share must truly be in it. */
const CHILDREN = 6000
/** Three points, as the demand is put. */
const WITHIN = 0.03
const CERTAINTY_BANDS = [
  [0.8, 0.9],
  [0.9, 0.97],
  [0.97, 1.0001],
] as const

interface Told {
  readonly certainty: number
  readonly right: boolean
}

function toldChildren(visitMonths: readonly number[]): Told[] {
  const told: Told[] = []
  for (let i = 0; i < CHILDREN; i++) {
    const random = randomFrom(80_000 + i)
    const plan = measurementPlan({
      sex: random.pick(["female", "male"] as const),
      ancestry: random.pick(["east-asian", "european"] as const),
      startAgeYears: 6.5 + 6 * random.uniform(),
      treatment: { kind: "atropine", concentrationPercent: random.pick([0.01, 0.05]) },
      visitMonths,
    })
    const child = virtualChild({ plan, evidence, random })
    const visits = child.course.visits
    const asOf = visits.at(-1)?.date ?? ""
    const known = study({ course: child.course, asOf, evidence, settings: defaultSettings })
    const verdict = growthState(known)
    if (verdict.state === "unclear" || !verdict.probabilities) continue
    const from = visits.findIndex((visit) => visit.date === verdict.from)
    const to = visits.findIndex((visit) => visit.date === verdict.to)
    const grown = [child.trueMm.right, child.trueMm.left].reduce(
      (sum, mm) => sum + ((mm[to] as number) - (mm[from] as number)) / 2,
      0,
    )
    const years = ageYears({ born: verdict.from as string, on: verdict.to as string })
    const [e, n] = [verdict.emmetropicMmPerYear as number, verdict.naturalMmPerYear as number]
    const f = (grown / years - e) / (n - e)
    const { nearNormal, slowed, asUntreated } = defaultSettings.cuts
    const truth: KnownGrowthState =
      f < nearNormal
        ? "near-normal"
        : f < slowed
          ? "slowed-growth"
          : f < asUntreated
            ? "as-untreated"
            : "faster"
    told.push({ certainty: verdict.probabilities[verdict.state], right: truth === verdict.state })
  }
  return told
}

describe("the growth state is right as often as it claims", () => {
  it.each([
    ["after a year of half-yearly visits", [0, 6, 12]],
    ["after two years", [0, 6, 12, 18, 24]],
    ["after a year with two visits", [0, 12]],
  ] as const)("%s", (_, months) => {
    const told = toldChildren(months)
    expect(told.length).toBeGreaterThan(CHILDREN / 10)
    for (const [low, high] of CERTAINTY_BANDS) {
      const band = told.filter(({ certainty }) => certainty >= low && certainty < high)
      if (band.length < 300) continue
      const claimed = band.reduce((sum, { certainty }) => sum + certainty, 0) / band.length
      const right = band.filter((one) => one.right).length / band.length
      expect(Math.abs(right - claimed)).toBeLessThan(WITHIN)
    }
  })
})
