import { describe, expect, it } from "vitest"
import { ageInWords, dateInWords, paragraph, section } from "./words.js"

describe("words of a terminal", () => {
  it("counts completed months of age", () => {
    expect(ageInWords({ born: "2017-03-14", on: "2026-04-13" })).toBe("9 years and 0 months")
    expect(ageInWords({ born: "2017-03-14", on: "2026-04-14" })).toBe("9 years and 1 month")
    expect(ageInWords({ born: "2017-12-14", on: "2026-01-14" })).toBe("8 years and 1 month")
  })

  it("says a date as it is spoken", () => {
    expect(dateInWords("2026-01-09")).toBe("9 January 2026")
  })

  it("says the days within a sentence as they are spoken, and leaves the name of a file alone", () => {
    expect(paragraph("good until 2025-04-01.", 0)).toBe("good until 1 April 2025.\n")
    expect(paragraph("2025-04-01.json and /x/2025-04-01: read", 0)).toBe(
      "2025-04-01.json and /x/2025-04-01: read\n",
    )
  })

  it("breaks lines at a hundred columns and indents each", () => {
    const lines = paragraph("word ".repeat(60)).trimEnd().split("\n")
    expect(lines.length).toBeGreaterThan(2)
    expect(lines.every((line) => line.length <= 100 && line.startsWith("  word"))).toBe(true)
  })

  it("has no heading without paragraphs", () => {
    expect(section("Concerns", [])).toBe("")
  })
})
