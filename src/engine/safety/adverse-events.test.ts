import { describe, expect, it } from "vitest"
import type { Course } from "../course.js"
import { adverseEvents, adverseEventTable } from "./adverse-events.js"

const course: Course = {
  lengthwise: 1,
  child: { born: "2016-05-02", sex: "female" },
  visits: [],
  treatments: [
    { from: "2025-01-10", to: "2025-06-01", kind: "atropine", concentrationPercent: 0.05 },
    { from: "2025-06-01", kind: "atropine", concentrationPercent: 0.025 },
    { from: "2025-01-10", kind: "dual-focus-lens" },
  ],
  supplies: [
    { opened: "2025-02-12", lot: "B", beyondUse: "2025-03-12" },
    { opened: "2025-01-12", lot: "A", pharmacy: "North" },
    { dispensed: "2025-02-20", lot: "C" },
  ],
  concerns: [
    { opened: "2025-07-01", kind: "headache", what: "later", adverseEvent: true },
    { opened: "2025-02-01", kind: "redness", what: "first", adverseEvent: true, seriousness: "mild" },
    { opened: "2025-02-15", kind: "pupil", what: "no adverse event" },
  ],
}
const child = { number: "E-7" }
const events = adverseEvents({ course, child })

describe("adverse events", () => {
  it("are the concerns kept as such, oldest first", () => {
    expect(events.map(({ kind }) => kind)).toEqual(["redness", "headache"])
  })

  it("have every treatment in use that day, and the strength of the drops", () => {
    expect(events.map(({ treatment, concentrationPercent }) => [treatment, concentrationPercent])).toEqual([
      ["atropine 0.05 %, dual-focus lenses", 0.05],
      ["dual-focus lenses, atropine 0.025 %", 0.025],
    ])
  })

  it("have the lot of the last bottle opened by that day", () => {
    expect(events.map(({ lot }) => lot)).toEqual(["A", "B"])
  })

  it("show when that bottle was past its date", () => {
    expect(events[1]).toMatchObject({ opened: "2025-07-01", bottleBeyondUse: "2025-03-12" })
  })

  it("have no lot where no drops were in use", () => {
    const untreated = { ...course, treatments: [] }
    expect(adverseEvents({ course: untreated, child })[0]).toMatchObject({ treatment: null, lot: null })
  })

  it("are those opened from one day to another, both included", () => {
    expect(adverseEvents({ course, child, from: "2025-02-01", to: "2025-02-01" })).toHaveLength(1)
    expect(adverseEvents({ course, child, from: "2025-02-02", to: "2025-06-30" })).toHaveLength(0)
  })
})

describe("their table", () => {
  it("has a column for the name only when names were asked for", () => {
    expect(adverseEventTable(events).header).not.toContain("name")
    const named = adverseEvents({ course, child: { ...child, name: "Mira" } })
    expect(adverseEventTable(named).rows[0]?.slice(0, 2)).toEqual(["E-7", "Mira"])
  })

  it("leaves a cell empty for what is not known", () => {
    const { header, rows } = adverseEventTable(events)
    expect(rows[0]?.[header.indexOf("relatedness")]).toBe("")
    expect(rows[0]?.[header.indexOf("seriousness")]).toBe("mild")
  })
})
