import { describe, expect, it } from "vitest"
import type { Belief } from "../../../src/engine/assessment.js"
import { asked, drops, halfYearly, lengths } from "./child.js"

// So that nobody mistakes what the trials report for what this child has shown.
const beliefsOf = (leftMm: readonly number[]): [pace: Belief, withheld: Belief] => {
  const { beliefs } = asked({ visits: halfYearly("2022-06-15", leftMm), treatments: [drops(0.05)] })
  return beliefs as unknown as [Belief, Belief]
}
const before = [23, 23.27, 23.53, 23.77, 24]

describe("What was believed before this child is shown beside what is believed now", () => {
  it("of its pace and of each treatment, by name", () => {
    expect(beliefsOf(before).map(({ what }) => what)).toEqual([
      "pace, multiple of natural growth",
      "share of natural growth withheld by atropine 0.05 %",
    ])
  })

  it("from one length nothing is learnt: both are as before", () => {
    const { beliefs } = asked({ visits: [lengths("2024-06-15", 24)], treatments: [drops(0.05)] })
    for (const { prior, posterior } of beliefs) {
      expect(posterior.mean).toBeCloseTo(prior.mean, 4)
      expect(posterior.sd).toBeCloseTo(prior.sd, 3)
    }
  })

  it("two years before treatment narrow the pace and say nothing of the drops", () => {
    const [pace, withheld] = beliefsOf(before)
    expect(pace.posterior.sd).toBeLessThan(0.6 * pace.prior.sd)
    expect(withheld.posterior.mean).toBeCloseTo(withheld.prior.mean, 6)
    expect(withheld.posterior.sd).toBeCloseTo(withheld.prior.sd, 6)
  })

  it("two years on the drops move their share, up or down, and narrow it", () => {
    const [, slowed] = beliefsOf([...before, 24.07, 24.14, 24.2, 24.26])
    const [, untouched] = beliefsOf([...before, 24.24, 24.46, 24.67, 24.86])
    expect(slowed.posterior.mean).toBeGreaterThan(slowed.prior.mean)
    expect(untouched.posterior.mean).toBeLessThan(0.5 * untouched.prior.mean)
    for (const { prior, posterior } of [slowed, untouched]) expect(posterior.sd).toBeLessThan(prior.sd)
  })

  it("the prior is the same whatever the child did", () => {
    expect(beliefsOf([...before, 24.07])[1].prior).toEqual(beliefsOf([...before, 24.3])[1].prior)
  })
})
