import { describe, expect, it } from "vitest"
import { intervalInWords, inWords, monthAndYear, sentence, signed, withMinusSigns } from "./format.js"

describe("figures", () => {
  it("never writes a negative zero", () => {
    expect(signed(-0.001, 2)).toBe("0.00")
    expect(signed(0.001, 2)).toBe("0.00")
  })
  it("writes the sign of a change", () => {
    expect(signed(0.06, 2)).toBe("+0.06")
    expect(signed(-0.06, 2)).toBe("−0.06")
  })
  it("turns only hyphens before a digit into minus signs", () => {
    expect(withMinusSigns("-2.25 -0.50 x 180, push-up")).toBe("−2.25 −0.50 x 180, push-up")
  })
})

describe("a phrase of the engine", () => {
  it("becomes a sentence with its dates in words", () => {
    expect(sentence("the eye has -2.00 D on 2026-03-10, 6-month review")).toBe(
      "The eye has −2.00 D on 10 Mar 2026, 6-month review.",
    )
  })
  it("keeps a date that is part of a name", () => {
    expect(inWords("parameters growth-2026-11-25 of 2026-11-25")).toBe(
      "parameters growth-2026-11-25 of 25 Nov 2026",
    )
  })
  it("keeps its own question mark", () => {
    expect(sentence("is a sign lost?")).toBe("Is a sign lost?")
  })
})

describe("dates", () => {
  it("says a month and its year", () => {
    expect(monthAndYear("2026-03-09")).toBe("Mar 2026")
  })
  it("says a short interval in weeks", () => {
    expect(intervalInWords({ from: "2026-01-01", to: "2026-01-22" })).toBe("3 weeks")
    expect(intervalInWords({ from: "2025-01-01", to: "2026-01-01" })).toBe("12 months")
  })
})
