import * as fc from "fast-check"
import { describe, expect, it } from "vitest"
import { readCourse } from "../../src/interop/course/read-course.js"
import { writeCourse } from "../../src/interop/course/write-course.js"
import { courseArbitrary } from "./course-arbitrary.js"

describe("any sound course", () => {
  it("is read back from its text exactly as it was", () => {
    fc.assert(
      fc.property(courseArbitrary, (course) => {
        expect(readCourse(writeCourse(course))).toStrictEqual({
          course,
          notes: [],
          visitOrder: [...course.visits.keys()],
        })
      }),
      { numRuns: 300 },
    )
  })

  it("has one text, whatever the order of its visits and fields", () => {
    fc.assert(
      fc.property(courseArbitrary, (course) => {
        const turned = Object.fromEntries(
          Object.entries({ ...course, visits: course.visits.toReversed() }).reverse(),
        )
        expect(writeCourse(turned as unknown as typeof course)).toBe(writeCourse(course))
      }),
      { numRuns: 100 },
    )
  })

  it("never crashes the reader when one of its values is replaced by junk", () => {
    fc.assert(
      fc.property(courseArbitrary, fc.nat(), fc.jsonValue(), (course, at, junk) => {
        const read = readCourse(withOneValueReplaced({ value: course, at, junk }))
        expect("course" in read || read.problems.length > 0).toBe(true)
      }),
      { numRuns: 300 },
    )
  })
})

function withOneValueReplaced({ value, at, junk }: { value: unknown; at: number; junk: unknown }): string {
  let total = 0
  JSON.stringify(value, (_, item) => {
    total += 1
    return item
  })
  let count = -1
  return JSON.stringify(value, (_, item) => {
    count += 1
    return count === at % total ? junk : item
  })
}
