import { describe, expect, it } from "vitest"
import { courseFigure } from "../chart/index.js"
import type { Course } from "../engine/course.js"
import { courseCurves } from "../engine/course-curves.js"
import { noRules } from "../engine/practice-rules.js"
import { defaultSettings } from "../engine/settings.js"
import { evidence } from "../evidence/index.js"
import { readCourse, visitIndex, withVisit } from "./reading.js"

const course: Course = {
  lengthwise: 1,
  child: { born: "2017-03-14", sex: "female" },
  visits: [{ date: "2025-01-10" }, { date: "2026-01-10" }],
}

describe("a course with a visit put in", () => {
  it("keeps the order of dates", () => {
    const visits = withVisit(course, { date: "2025-07-01" }).visits.map((visit) => visit.date)
    expect(visits).toEqual(["2025-01-10", "2025-07-01", "2026-01-10"])
  })
  it("takes the place of the visit of that day", () => {
    const changed = withVisit(course, { date: "2025-01-10", from: "corrected" })
    expect(changed.visits).toEqual([{ date: "2025-01-10", from: "corrected" }, { date: "2026-01-10" }])
  })
  it("finds a visit by its date", () => {
    expect(visitIndex(course, "2026-01-10")).toBe(1)
    expect(visitIndex(course, "2026-01-11")).toBe(-1)
  })
})

describe("a reading", () => {
  it("can be drawn on the day a treatment starts with its first bottle", () => {
    const today = "2026-01-10"
    const started: Course = {
      ...course,
      treatments: [{ from: today, kind: "atropine", concentrationPercent: 0.05 }],
      supplies: [{ dispensed: today, opened: today, volumeMl: 5 }],
    }
    const reading = readCourse(started, { today, settings: defaultSettings, rules: noRules })
    expect(courseFigure(courseCurves({ ...reading, evidence })).svg).toContain("atropine 0.05 %")
  })
})
