import { describe, expect, it } from "vitest"
import type { Assessment, Finding } from "../../engine/assessment.js"
import { EMPTY_ROW, effectInWords, isEmptyRow, readGlasses } from "./glasses.js"

describe("earlier glasses as typed", () => {
  it("become visits with nothing but refractions", () => {
    const { visits, faults } = readGlasses([
      { date: "2024-03-01", right: "-1.25 -0.50 x 180", left: "-1.00", from: " school " },
      EMPTY_ROW,
    ])
    expect(faults).toEqual([])
    expect(visits).toEqual([
      {
        date: "2024-03-01",
        right: { refraction: { sphere: -1.25, cylinder: -0.5, axis: 180, method: "subjective" } },
        left: { refraction: { sphere: -1, method: "subjective" } },
        from: "school",
      },
    ])
  })
  it("name every fault of a row at its field, and are then left out", () => {
    const { visits, faults } = readGlasses([{ ...EMPTY_ROW, right: "-1.00 -0.50" }])
    expect(visits).toEqual([])
    expect(faults.map(({ row, field }) => `${row} ${field}`)).toEqual(["0 date", "0 right"])
  })
  it("need one eye at least", () => {
    expect(readGlasses([{ ...EMPTY_ROW, date: "2024-03-01" }]).faults[0]?.field).toBe("right")
  })
  it("count as empty although where they come from is filled in", () => {
    expect(isEmptyRow({ ...EMPTY_ROW, from: "old glasses" })).toBe(true)
  })
})

describe("what they add, in words", () => {
  const assessment = (state: Finding["state"], ifItWorks: number): Assessment =>
    ({
      finding: { state },
      chances: [{ review: "2027-09-08", step: "review", ifItWorks, ifNot: 0.1 }],
    }) as unknown as Assessment
  it("says the chance before and after", () => {
    expect(effectInWords(assessment("cannot-tell-yet", 0.31), assessment("cannot-tell-yet", 0.44))).toBe(
      "With these glasses the chance of an answer by Sep 2027 goes from 31 % to 44 % if it works, and stays at 10 % if not.",
    )
  })
  it("says when the answer itself changes", () => {
    expect(effectInWords(assessment("cannot-tell-yet", 0.31), assessment("slowed", 1))).toContain(
      "changes at once",
    )
  })
  it("says when there was an answer already", () => {
    expect(effectInWords(assessment("slowed", 1), assessment("slowed", 1))).toContain("an answer already")
  })
})
