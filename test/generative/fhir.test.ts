import * as fc from "fast-check"
import { describe, expect, it } from "vitest"
import type { Course } from "../../src/engine/course.js"
import { demoCourses } from "../../src/engine/simulate/demo.js"
import { evidence } from "../../src/evidence/index.js"
import { readCourse } from "../../src/interop/course/read-course.js"
import { writeCourse } from "../../src/interop/course/write-course.js"
import { courseFromFhir } from "../../src/interop/fhir/course-from-fhir.js"
import { readFhir } from "../../src/interop/fhir/read-fhir.js"
import { fhirBundle, fhirLines, fhirResources } from "../../src/interop/fhir/write-fhir.js"
import { courseArbitrary } from "./course-arbitrary.js"
import { fullCourseArbitrary } from "./full-course-arbitrary.js"

const TODAY = "2026-11-25"

/** Through the text of a file, as another installation would get it. */
function thereAndBack(course: Course) {
  const text = JSON.stringify(fhirBundle(course))
  return courseFromFhir(JSON.parse(text), { file: "kim.json", id: "kim" })
}

/** As a course file holds it, where null and absent are one. */
function asRead(course: Course): Course {
  const read = readCourse(writeCourse(course))
  if ("problems" in read) throw new RangeError(read.problems[0]?.message)
  return read.course
}

describe("a course that goes out as FHIR and comes back", () => {
  it("is equal in every field, whatever it holds", () => {
    fc.assert(
      fc.property(fullCourseArbitrary, (course) => {
        const read = thereAndBack(course)
        expect(read.skipped).toEqual([])
        expect(read.wholes).toStrictEqual([course])
        expect(writeCourse(read.wholes[0] as Course)).toBe(writeCourse(course))
      }),
      { numRuns: 300 },
    )
  }, 240_000)

  it("is equal for every course that other tests make", () => {
    fc.assert(
      fc.property(courseArbitrary, (course) => {
        expect(thereAndBack(course).wholes).toStrictEqual([course])
      }),
      { numRuns: 50 },
    )
  }, 120_000)

  it("is equal for each child of the demo practice, line by line and as Bundle", async () => {
    for (const { course, name, number } of demoCourses({ today: TODAY, seed: 7, evidence })) {
      const resources = fhirResources(course, { identity: { name, number } })
      const asBundle = thereAndBack(course)
      const asLines = await readFhir({ file: "kim.ndjson", text: fhirLines(resources) })
      expect(asBundle.wholes).toStrictEqual([asRead(course)])
      expect(asLines.skipped).toEqual([])
      expect(asLines.fragments[0]?.course).toStrictEqual(asBundle.fragments[0]?.course)
      expect(asLines.fragments[0]?.identity).toMatchObject({ name, number, born: course.child.born })
    }
  }, 240_000)

  it("keeps a field that the course file does not have yet", () => {
    const sooner = { kind: "fit", later: { deeper: ["a", { b: 1 }] } }
    const course = {
      lengthwise: 1,
      child: { born: "2017-03-14", sex: "female" },
      visits: [{ date: "2025-01-02", right: { axialLength: { mm: 24, hereafter: sooner } } }],
    } as unknown as Course
    const length = fhirResources(course).find(({ resourceType }) => resourceType === "Observation")
    expect(JSON.stringify(length)).toContain("axial")
    expect(JSON.stringify(length)).toContain('"valueString":"hereafter"')
  })

  it("has the same text again, on any day and from any order of the visits", () => {
    fc.assert(
      fc.property(fullCourseArbitrary, (course) => {
        const turned = { ...course, visits: course.visits.toReversed() }
        expect(fhirBundle(turned)).toStrictEqual(fhirBundle(course))
      }),
      { numRuns: 50 },
    )
  }, 120_000)

  it("has logical ids that are valid and each used once, and references that are answered", () => {
    fc.assert(
      fc.property(fullCourseArbitrary, (course) => {
        const resources = fhirResources(course)
        const ids = resources.map(({ resourceType, id }) => `${resourceType}/${id}`)
        expect(new Set(ids).size).toBe(ids.length)
        for (const { id } of resources) expect(id).toMatch(/^[A-Za-z0-9\-.]{1,64}$/)
        for (const reference of referencesIn(resources)) expect(ids).toContain(reference)
      }),
      { numRuns: 100 },
    )
  }, 120_000)

  it("leaves SNOMED CT out where a practice may not use it, and comes back equal all the same", () => {
    fc.assert(
      fc.property(fullCourseArbitrary, (course) => {
        const text = JSON.stringify(fhirBundle(course, { snomed: false }))
        expect(text).not.toContain('"system":"http://snomed.info/sct"')
        expect(courseFromFhir(JSON.parse(text), { file: "f", id: "f" }).wholes).toStrictEqual([course])
      }),
      { numRuns: 50 },
    )
  }, 120_000)
})

function referencesIn(value: unknown): readonly string[] {
  if (typeof value !== "object" || value === null) return []
  const { reference } = value as { reference?: unknown }
  const own = typeof reference === "string" ? [reference] : []
  return [...own, ...Object.values(value).flatMap(referencesIn)]
}
