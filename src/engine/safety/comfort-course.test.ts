import { describe, expect, it } from "vitest"
import type { Course, EyeExamination } from "../course.js"
import { comfortCourse } from "./comfort-course.js"

const START = "2025-01-10"
const both = (date: string, eye: EyeExamination) => ({ date, right: eye, left: eye })
const course = (...visits: Course["visits"]): Course => ({
  lengthwise: 1,
  child: { born: "2016-05-02", sex: "female" },
  visits,
  treatments: [{ kind: "atropine", concentrationPercent: 0.05, from: START }],
})
const lineOf = (measure: string, ...visits: Course["visits"]) =>
  comfortCourse({ course: course(...visits), today: "2025-12-01" }).lines.find(
    (line) => line.measure === measure,
  )

describe("the course of a value against the child's own", () => {
  it("has the change from the last value before the drops, for the same eye", () => {
    const line = lineOf(
      "photopic-pupil",
      both(START, { pupil: { photopic: 3.5 } }),
      both("2025-02-10", { pupil: { photopic: 4.25 } }),
    )
    expect(line?.points.map(({ eye, date, change, isBaseline }) => [eye, date, change, isBaseline])).toEqual([
      ["right", START, null, true],
      ["right", "2025-02-10", 0.75, false],
      ["left", START, null, true],
      ["left", "2025-02-10", 0.75, false],
    ])
  })

  it("compares accommodation within one stated method only", () => {
    const line = lineOf(
      "accommodation",
      both(START, { accommodation: { dioptres: 12, method: "push-up" } }),
      both("2025-02-10", { accommodation: { dioptres: 7, method: "retinoscopy" } }),
      both("2025-03-10", { accommodation: { dioptres: 9, method: "push-up" } }),
      both("2025-04-10", { accommodation: { dioptres: 9 } }),
    )
    const right = line?.points.filter(({ eye }) => eye === "right")
    expect(right?.map(({ change }) => change)).toEqual([null, null, -3, null])
  })

  it("leaves out what was never measured, and visits of others", () => {
    const elsewhere = { ...both("2024-06-01", { pupil: { photopic: 3 } }), from: "referring practice" }
    const comfort = comfortCourse({
      course: course(elsewhere, both(START, { acuity: { nearLogMAR: 0 } })),
      today: "2025-12-01",
    })
    expect(comfort.lines.map(({ measure }) => measure)).toEqual(["near-acuity"])
  })

  it("has no change where no drops were begun", () => {
    const untreated = { ...course(both(START, { pupil: { photopic: 3 } })), treatments: [] }
    const comfort = comfortCourse({ course: untreated, today: "2025-12-01" })
    expect(comfort.begun).toBeNull()
    expect(comfort.lines[0]?.points.every(({ change }) => change === null)).toBe(true)
  })
})
