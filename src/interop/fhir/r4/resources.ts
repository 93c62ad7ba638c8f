import type { FhirResource } from "fhir/r4.js"
import type { Course } from "../../../engine/course.js"
import type { FhirContext } from "../context.js"

/** Everything of a course, in R4. */
export function r4Resources(course: Course, about: FhirContext): readonly FhirResource[] {
  const { born, sex } = course.child
  return [
    { resourceType: "Patient", id: about.id ?? course.child.id ?? "child", gender: sex, birthDate: born },
  ]
}
