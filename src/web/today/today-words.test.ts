import { describe, expect, it } from "vitest"
import { countsInWords, dayInWords, timing } from "./today-words.js"

const row = {
  child: { id: "1", name: "Mira", number: null, born: "2017-01-01" },
  group: "see",
  what: "6-month review",
  why: "",
  since: "2026-11-01",
  due: "2026-11-20",
  closes: "2026-12-20",
  state: "open",
  role: "front-desk",
  action: "visit",
} as const

describe("words of the day's list", () => {
  it("names the weekday", () => {
    expect(dayInWords("2026-11-25")).toBe("Wednesday, 25 Nov 2026")
    expect(dayInWords("1969-12-31")).toBe("Wednesday, 31 Dec 1969")
  })

  it("counts things and children", () => {
    expect(countsInWords({ things: 0, children: 0 })).toBe("nothing is owed")
    expect(countsInWords({ things: 1, children: 1 })).toBe("1 thing owed to 1 child")
    expect(countsInWords({ things: 13, children: 9 })).toBe("13 things owed to 9 children")
  })

  it("says how late what is overdue is, until when a window is open, and since when something waits", () => {
    expect(timing({ ...row, state: "overdue" }, "2026-11-25")).toBe("5 days late")
    expect(timing({ ...row, state: "overdue" }, "2026-11-21")).toBe("1 day late")
    expect(timing(row, "2026-11-15")).toBe("due 20 Nov 2026, window closes 20 Dec 2026")
    expect(timing({ ...row, due: null }, "2026-11-15")).toBe("since 1 Nov 2026")
  })
})
