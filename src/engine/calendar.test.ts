import fc from "fast-check"
import { describe, expect, it } from "vitest"
import {
  addDays,
  addMonths,
  ageYears,
  calendarDate,
  completedMonths,
  dayNumber,
  dayNumberOrNull,
  yearsBetween,
} from "./calendar.js"

/** 0001-01-01 to 9999-12-31. */
const anyDay = fc.integer({ min: -719_162, max: 2_932_896 })
const property = (holds: (day: number, months: number) => void) =>
  fc.assert(fc.property(anyDay, fc.integer({ min: 0, max: 400 }), holds), { seed: 11, numRuns: 3000 })

describe("completed months", () => {
  it("are complete on the same day of the month", () => {
    const from = "2026-01-15"
    expect(["2026-03-14", "2026-03-15"].map((to) => completedMonths({ from, to }))).toEqual([1, 2])
  })
  it("are less than none for an earlier day", () => {
    expect(completedMonths({ from: "2026-03-15", to: "2026-01-15" })).toBe(-2)
  })
})

describe("day numbers", () => {
  it("count from the first day of 1970", () => {
    expect([dayNumber("1970-01-01"), dayNumber("1970-01-02"), dayNumber("1969-12-31")]).toEqual([0, 1, -1])
  })

  it("come back as the date they were made from", () => {
    property((day) => {
      expect(dayNumber(calendarDate(day))).toBe(day)
    })
  })

  // The calendar of the language is an implementation that is not ours.
  it("agree with the calendar built into the language", () => {
    property((day) => {
      expect(calendarDate(day)).toBe(new Date(day * 86_400_000).toISOString().slice(0, 10))
    })
  })

  it("order dates as their text does", () => {
    property((day) => {
      if (day < 2_932_896) expect(calendarDate(day) < calendarDate(day + 1)).toBe(true)
    })
  })
})

describe("what is not a date", () => {
  it.each([
    "2025-02-29",
    "1900-02-29",
    "2025-04-31",
    "2025-13-01",
    "2025-00-10",
    "2025-01-00",
    "2025-1-1",
    "25-01-01",
    "2025-01-01T00:00",
    " 2025-01-01",
    "",
  ])("%j is none", (text) => {
    expect(dayNumberOrNull(text)).toBeNull()
  })

  it("is a fault of ours once dates were validated", () => {
    expect(() => dayNumber("2025-02-29")).toThrow("not a calendar date: 2025-02-29")
  })

  it.each(["2024-02-29", "2000-02-29"])("%s is a leap day", (text) => {
    expect(calendarDate(dayNumber(text))).toBe(text)
  })
})

describe("months later", () => {
  it.each([
    ["2025-08-31", 6, "2026-02-28"],
    ["2023-08-31", 6, "2024-02-29"],
    ["2024-02-29", 12, "2025-02-28"],
    ["2024-02-29", 48, "2028-02-29"],
    ["2025-01-31", 1, "2025-02-28"],
    ["2025-10-31", 1, "2025-11-30"],
    ["2025-12-15", 1, "2026-01-15"],
    ["2025-01-15", -1, "2024-12-15"],
    ["2025-03-31", -1, "2025-02-28"],
    ["2025-05-10", 0, "2025-05-10"],
  ])("%s and %i months is %s", (date, months, later) => {
    expect(addMonths(date, months)).toBe(later)
  })

  it("keep the day of the month, or take the last day of a shorter month", () => {
    property((day, months) => {
      const date = calendarDate(day)
      if (date > "9950-01-01") return
      const later = addMonths(date, months)
      const isLastOfMonth = addDays(later, 1).endsWith("-01")
      expect(later.slice(8) === date.slice(8) || (isLastOfMonth && later.slice(8) < date.slice(8))).toBe(true)
    })
  })

  it("move by exactly that many months", () => {
    property((day, months) => {
      const date = calendarDate(day)
      if (date > "9950-01-01") return
      const index = (text: string) => Number(text.slice(0, 4)) * 12 + Number(text.slice(5, 7))
      expect(index(addMonths(date, months)) - index(date)).toBe(months)
    })
  })
})

describe("ages and intervals", () => {
  it("are days divided by 365.25", () => {
    expect(ageYears({ born: "2017-03-14", on: "2025-03-14" })).toBe(8)
    expect(ageYears({ born: "2017-03-14", on: "2018-03-14" })).toBe(365 / 365.25)
  })

  it("are negative when the second date is earlier", () => {
    expect(yearsBetween({ from: "2025-01-02", to: "2025-01-01" })).toBe(-1 / 365.25)
  })

  it("add and take away days across a leap day", () => {
    expect([addDays("2024-02-28", 1), addDays("2024-03-01", -1), addDays("2025-02-28", 1)]).toEqual([
      "2024-02-29",
      "2024-02-29",
      "2025-03-01",
    ])
  })
})
