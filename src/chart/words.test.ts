import { describe, expect, it } from "vitest"
import { textWidth, wrapped } from "./text-size.js"
import { ageWords, dateWords, dioptreWords, fixed, rangeWords } from "./words.js"

describe("figures in words", () => {
  it("an age is completed years and months", () => {
    const born = "2016-03-14"
    const dates = ["2025-09-12", "2025-09-14", "2026-03-13", "2026-03-14", "2017-01-01"]
    expect(dates.map((on) => ageWords({ born, on }))).toEqual([
      "9 y 5 m",
      "9 y 6 m",
      "9 y 11 m",
      "10 y 0 m",
      "0 y 9 m",
    ])
  })

  it("a date is day, month and year", () => {
    expect(dateWords("2026-11-05")).toBe("5 Nov 2026")
  })

  it("a negative number has a true minus, and what rounds to nothing has none", () => {
    expect([fixed(-1.5, 2), fixed(-0.001, 2)]).toEqual(["−1.50", "0.00"])
  })

  it("a refraction above nothing has its plus", () => {
    expect([1.25, -2, 0].map(dioptreWords)).toEqual(["+1.25 D", "−2.00 D", "0.00 D"])
  })

  it("a range names both ends", () => {
    expect(rangeWords({ low: -0.03, high: 0.131, digits: 2 })).toBe("−0.03 to 0.13")
  })
})

describe("room for words", () => {
  it("the width judged is in proportion to the size", () => {
    expect(textWidth("24.12 mm", { size: 24 })).toBeCloseTo(2 * textWidth("24.12 mm", { size: 12 }), 1)
  })

  it("lines are cut at spaces and a single word is never broken", () => {
    expect(wrapped("European, centiles 2.5 to 97.5", { width: 76, size: 12 })).toEqual([
      "European,",
      "centiles 2.5",
      "to 97.5",
    ])
    expect(wrapped("unbreakable", { width: 10, size: 12 })).toEqual(["unbreakable"])
  })
})
