import { describe, expect, it } from "vitest"
import { type SteadyChild, steadyCourse, studyOf } from "../../../test/steady-child.js"
import { growthState } from "./growth-state.js"

const yearly = [-24, -18, -12, -6, 0, 6, 12, 18, 24]
const stateOf = (child: Partial<SteadyChild>) =>
  growthState(studyOf(steadyCourse({ born: "2015-12-15", months: yearly, shareAfter: 1, ...child })))

describe("is this eye growing slowly enough?", () => {
  it.each([
    { share: 0.25, state: "near-normal" },
    { share: 1, state: "as-untreated" },
    { share: 1.9, state: "faster" },
  ] as const)("$state, for a child at $share of natural growth", ({ share, state }) => {
    const verdict = stateOf({ shareBefore: share, shareAfter: share, treatments: [] })
    expect(verdict.state).toBe(state)
    expect(verdict.probabilities?.[state]).toBeGreaterThanOrEqual(0.8)
  })

  it("has probabilities that sum to 1", () => {
    const { probabilities } = stateOf({})
    expect(Object.values(probabilities ?? {}).reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 12)
  })

  it("shows the growth of the last twelve months with its interval and both published lines", () => {
    const {
      mmPerYear,
      low95 = 0,
      high95 = 0,
      naturalMmPerYear = 0,
      emmetropicMmPerYear = 0,
      from,
      to,
    } = stateOf({})
    expect([from, to]).toEqual(["2025-06-15", "2026-06-15"])
    expect(low95).toBeLessThan(mmPerYear as number)
    expect(high95).toBeGreaterThan(mmPerYear as number)
    expect(mmPerYear).toBeCloseTo(naturalMmPerYear, 1)
    expect(emmetropicMmPerYear).toBeLessThan(naturalMmPerYear)
  })

  it("is unclear, and says how sure the likeliest state is, when none is sure enough", () => {
    const { state, probabilities, reasons } = stateOf({ months: [0, 6], shareAfter: 0.75 })
    expect(state).toBe("unclear")
    expect(Math.max(...Object.values(probabilities ?? {}))).toBeLessThan(0.8)
    expect(reasons.join()).toMatch(/only \d\d % certain; 80 % is asked for/)
  })

  it("is unclear with one length", () => {
    const verdict = stateOf({ months: [0] })
    expect(verdict).toMatchObject({ state: "unclear", probabilities: null, mmPerYear: null })
  })

  it("is unclear by ultrasound over half a year, because the instrument is too coarse", () => {
    const { state, reasons } = stateOf({ months: [0, 6], method: "ultrasound" })
    expect(state).toBe("unclear")
    expect(reasons.join()).toMatch(/too early or too coarse/)
  })

  it("is unclear at 17 because growth is ending", () => {
    const { state, reasons } = stateOf({ born: "2008-06-15", months: [0, 6] })
    expect(state).toBe("unclear")
    expect(reasons.join()).toMatch(/^growth is ending/)
  })

  it("gives a child without myopia its rate and the emmetropic line, and no state against untreated myopia", () => {
    const verdict = stateOf({ sphereD: 0.5, treatments: [] })
    expect(verdict).toMatchObject({ state: "unclear", probabilities: null })
    expect(verdict.mmPerYear).not.toBeNull()
    expect(verdict.naturalMmPerYear).toBeUndefined()
  })
})
