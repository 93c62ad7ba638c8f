import { describe, expect, it } from "vitest"
import { coverageStrip } from "../../src/chart/coverage-strip.js"
import type { Run } from "../../src/engine/supply/covered-days.js"
import { expectFigure } from "./snapshot.js"

const nights: readonly Run[] = [
  { from: "2025-01-12", to: "2025-02-11", nights: 31, state: "covered" },
  { from: "2025-02-12", to: "2025-03-01", nights: 18, state: "not-covered" },
  { from: "2025-03-02", to: "2025-06-30", nights: 121, state: "covered" },
  { from: "2025-07-01", to: "2025-08-31", nights: 62, state: "not-prescribed" },
  { from: "2025-09-01", to: "2025-10-15", nights: 45, state: "not-recorded" },
  { from: "2025-10-16", to: "2025-12-31", nights: 77, state: "covered" },
]
const bottles = [
  { date: "2025-01-12", isOpeningRecorded: true },
  { date: "2025-03-02", isOpeningRecorded: false },
  { date: "2025-10-16", isOpeningRecorded: true },
]
const missed = [{ from: "2025-05-01", to: "2025-05-31", nights: 9 }]
const full = { nights, bottles, missed, proportion: 0.93 }

describe("the strip of covered nights is drawn as it was looked at and accepted", () => {
  it("coverage-strip", () => expectFigure("coverage-strip", coverageStrip(full)))
  it("coverage-strip-narrow", () =>
    expectFigure("coverage-strip-narrow", coverageStrip(full, { width: 480 })))
  it("coverage-strip-one-night", () =>
    expectFigure(
      "coverage-strip-one-night",
      coverageStrip({
        nights: [{ from: "2025-01-12", to: "2025-01-12", nights: 1, state: "not-covered" }],
        bottles: [],
        missed: [],
        proportion: 0,
      }),
    ))
})

describe("the strip in words", () => {
  it("names the share, the gaps and what the family told", () => {
    const words = /<desc>(.*)<\/desc>/.exec(coverageStrip(full))?.[1]
    expect(words).toBe(
      "From 12 Jan 2025 to 31 Dec 2025. 93 % of nights had a bottle in date. 18 nights without one: 12 Feb 2025 to " +
        "1 Mar 2025. Missed nights told of: 9 from 1 May 2025 to 31 May 2025.",
    )
  })

  it("is nothing without a night", () => {
    expect(() => coverageStrip({ ...full, nights: [] })).toThrow(RangeError)
  })
})
