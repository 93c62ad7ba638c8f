import { describe, expect, it } from "vitest"
import { bottles } from "./bench.js"

describe("How many bottles", () => {
  it("5 mL for both eyes: drops of 63.4 microlitres last 39 nights, 40.8 drops a millilitre last 102", () => {
    // 5000 / 63.4 / 2 = 39.4 (german1999); 5 x 40.8 / 2 = 102 (moore2017); both read in the abstract.
    expect(bottles().nightsByDrops).toEqual({ low: 39, high: 102 })
  })

  it("thrown away after a month the date ends each bottle, and two years need 24 or 25 (common practice, no source)", () => {
    // 730 / 30 = 24.3, so 25; 730 / 31 = 23.5, so 24.
    expect(bottles()).toMatchObject({ binding: "beyond-use", bottles: { low: 25, high: 25 } })
    expect(bottles({ daysAfterOpening: 31 }).bottles).toEqual({ low: 24, high: 24 })
  })

  it("2.5 mL for both eyes: with large drops the bottle is empty after 19 nights, with small ones the date ends it", () => {
    // 730 / 30 = 24.3, so 25 at the least; 730 / 19 = 38.4, so 39 to be safe.
    expect(bottles({ volumeMl: 2.5 })).toMatchObject({
      binding: "either",
      nightsPerBottle: { low: 19, high: 30 },
      bottles: { low: 25, high: 39 },
    })
  })

  it("5 mL used for six months after opening: the drops end it", () => {
    // 730 / 102 = 7.2, so 8; 730 / 39 = 18.7, so 19.
    expect(bottles({ daysAfterOpening: 180 })).toMatchObject({
      binding: "drops",
      bottles: { low: 8, high: 19 },
    })
  })

  it("one eye uses half the drops, and no fewer bottles while the date decides", () => {
    expect(bottles({ eyes: 1 })).toMatchObject({
      nightsByDrops: { low: 78, high: 204 },
      bottles: { high: 25 },
    })
  })

  it("a taper of three nights a week makes the drops last longer, and the date as long as ever", () => {
    // 5000 / 63.4 / 2 = 39.4 nights with a drop, 39.4 x 7 / 3 = 92 nights of the calendar.
    expect(bottles({ nightsPerWeek: 3 })).toMatchObject({ nightsByDrops: { low: 92 }, bottles: { high: 25 } })
  })
})
