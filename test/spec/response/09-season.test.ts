import { describe, expect, it } from "vitest"
import { asked, drops, halfYearly, lengths } from "./child.js"

// Eyes grow faster in winter. From 22 September to 21 March this girl would grow 0.24 mm untreated in London, 0.21 mm
// if there were no seasons.
const winter = (latitude?: number) =>
  asked({
    visits: [...halfYearly("2022-09-22", [23.12, 23.4, 23.62, 23.88, 24.08]), lengths("2025-03-21", 24.215)],
    treatments: [drops(0.05, "2024-09-22")],
    ...(latitude === undefined ? {} : { latitude }),
  })

describe("At latitude 51.5 a half-year in winter is set against a winter's growth", () => {
  it("natural growth over the same dates is faster than without seasons, by about a sixth", () => {
    const ratio =
      (winter(51.5).growth.naturalMmPerYear as number) / (winter().growth.naturalMmPerYear as number)
    expect(ratio).toBeGreaterThan(1.12)
    expect(ratio).toBeLessThan(1.2)
  })

  it("so 0.27 mm a year in winter speaks for the drops more than it would without seasons", () => {
    expect(winter(51.5).finding.likelihoodRatio).toBeGreaterThan(winter().finding.likelihoodRatio as number)
  })

  it("and a first winter at natural growth is no failure of the drops", () => {
    const answer = asked({
      visits: [lengths("2024-09-22", 24), lengths("2025-03-21", 24.24)],
      treatments: [drops(0.05, "2024-09-22")],
      latitude: 51.5,
    })
    expect(answer.finding).toMatchObject({ state: "cannot-tell-yet", lean: null })
    expect(answer.growth.state).not.toBe("faster")
  })
})

describe("The season", () => {
  const halfYear = (from: string, to: string, latitude: number) =>
    asked({ visits: [lengths(from, 24), lengths(to, 24.2)], latitude }).growth.naturalMmPerYear as number

  it("is turned round south of the equator", () => {
    const [north, south] = [51.5, -51.5].map((latitude) => halfYear("2024-09-22", "2025-03-21", latitude))
    expect(north).toBeGreaterThan(1.3 * (south as number))
  })

  it("does not exist near the equator", () => {
    expect(halfYear("2024-09-22", "2025-03-21", 1.3)).toBe(halfYear("2024-09-22", "2025-03-21", -1.3))
  })

  it("leaves a whole year as it is", () => {
    const [with_, without] = [51.5, 0].map((latitude) => halfYear("2024-06-15", "2025-06-15", latitude))
    expect(with_).toBeCloseTo(without as number, 2)
  })
})
