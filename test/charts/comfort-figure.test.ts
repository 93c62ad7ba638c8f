import { describe, expect, it } from "vitest"
import { comfortFigure } from "../../src/chart/comfort-figure.js"
import type { Course, EyeExamination } from "../../src/engine/course.js"
import { comfortCourse } from "../../src/engine/safety/comfort-course.js"
import { expectFigure } from "./snapshot.js"

// An invented child: nobody's measurements.
const eye = (photopic: number, dioptres: number, nearLogMAR: number): EyeExamination => ({
  pupil: { photopic },
  accommodation: { dioptres, method: "push-up" },
  acuity: { nearLogMAR },
})
const course: Course = {
  lengthwise: 1,
  child: { born: "2016-05-02", sex: "female" },
  visits: [
    { date: "2025-01-10", right: eye(3.8, 12.5, 0), left: eye(3.9, 12, 0.02) },
    { date: "2025-02-10", right: eye(5.1, 9.5, 0.1), left: eye(5.2, 9, 0.1) },
    { date: "2025-07-10", right: eye(4.6, 11, 0.02), left: eye(4.5, 10.5, 0.04) },
  ],
  treatments: [{ kind: "atropine", concentrationPercent: 0.05, from: "2025-01-10" }],
}
const drawn = (changed: Partial<Course> = {}) =>
  comfortFigure(comfortCourse({ course: { ...course, ...changed }, today: "2025-12-01" }), {
    width: 720,
    colours: "plain",
  })

describe("pupil, accommodation and near acuity are drawn as they were looked at and accepted", () => {
  it("comfort", () => expectFigure("comfort", drawn() ?? ""))

  it("comfort-untreated", () => {
    const visits = course.visits.slice(0, 1)
    expectFigure("comfort-untreated", drawn({ treatments: [], visits }) ?? "")
  })
})

describe("the figure", () => {
  it("says the last change of each value in words", () => {
    expect(drawn()).toContain(
      "Pupil in daylight: right 4.6 mm on 10 Jul 2025, +0.8 mm against before the drops.",
    )
  })

  it("is none when nothing of it was measured", () => {
    expect(drawn({ visits: [{ date: "2025-01-10" }] })).toBeNull()
  })
})
