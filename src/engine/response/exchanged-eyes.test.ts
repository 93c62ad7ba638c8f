import { describe, expect, it } from "vitest"
import { steadyCourse, studyOf } from "../../../test/steady-child.js"
import type { Course } from "../course.js"
import { exchangedEyes } from "./exchanged-eyes.js"

const months = [0, 6, 12, 18, 24]
const apartBy = (mm: number) =>
  steadyCourse({ months, shareAfter: 0.5, startMm: { right: 24 + mm, left: 24 } })
const exchangedAt = (course: Course, place: number): Course => ({
  ...course,
  visits: course.visits.map((visit, i) =>
    i === place ? { ...visit, right: visit.left, left: visit.right } : visit,
  ),
})
const paths = (course: Course) => exchangedEyes(studyOf(course)).map(({ path }) => path)

describe("right and left exchanged", () => {
  it.each([2, 3, 4])("is noticed at visit %i of eyes 0.3 mm apart, and only there", (place) => {
    expect(paths(exchangedAt(apartBy(0.3), place))).toEqual([`visits[${place}]`])
  })

  it("names the date and how much better the lengths fit", () => {
    const [check] = exchangedEyes(studyOf(exchangedAt(apartBy(0.5), 3)))
    expect(check?.why).toMatch(/2025-12-15.*times better the other way round/)
  })

  it("is not said of eyes as they should be, however far apart", () => {
    for (const mm of [0, 0.1, 0.3, 1]) expect(paths(apartBy(mm))).toEqual([])
  })

  it("is not said of eyes so alike that it cannot be seen", () => {
    expect(paths(exchangedAt(apartBy(0.03), 3))).toEqual([])
  })

  it("is not said when the lengths fit less than 500 times better exchanged", () => {
    expect(paths(exchangedAt(apartBy(0.1), 3))).toHaveLength(1)
    expect(paths(exchangedAt(apartBy(0.07), 3))).toEqual([])
  })

  it("is not asked before two earlier visits have both eyes", () => {
    const course = exchangedAt(apartBy(0.5), 1)
    expect(paths({ ...course, visits: course.visits.slice(0, 2) })).toEqual([])
  })

  it("is not asked of a visit with one eye", () => {
    const course = apartBy(0.5)
    const visits = course.visits.map((visit, i) =>
      i === 4 ? { date: visit.date, right: visit.left } : visit,
    )
    expect(paths({ ...course, visits })).toEqual([])
  })
})
