import { describe, expect, it } from "vitest"
import { centileInWords, counted, fixed, inDigits, odds, percent, sentence } from "./words.js"

describe("figures in words", () => {
  it("never say minus nothing", () => {
    expect(fixed(-0.001)).toBe("0.00")
    expect(fixed(-0.006)).toBe("-0.01")
  })
  it("have four digits that count", () => {
    expect([0.27249, 12, 1234.4].map(inDigits)).toEqual(["0.2725", "12", "1234"])
  })
  it("do not call a small chance none, nor a large one certain", () => {
    expect([0, 0.001, 0.5, 0.999, 1].map(percent)).toEqual(["0 %", "under 1 %", "50 %", "over 99 %", "100 %"])
  })
  it("write odds with the larger side first", () => {
    expect([2.31, 0.05, 0].map(odds)).toEqual(["2.3 : 1", "20 : 1", "over 1000 : 1"])
  })
  it("give a whole centile, one decimal near the ends, and the reference's own words beyond them", () => {
    expect([90.169, 99.73, 0.4, "below p3"].map(centileInWords)).toEqual(["90", "99.7", "0.4", "below p3"])
  })
  it("count one thing and several", () => {
    expect([counted(1, "month"), counted(6, "month")]).toEqual(["1 month", "6 months"])
  })
})

it("a sentence ends once", () => {
  expect(["too early", "Is a sign lost?"].map(sentence)).toEqual(["Too early.", "Is a sign lost?"])
})
