import type { Course } from "../../engine/course.js"
import { courseSchema } from "./schema.js"

/**
 * The text of a course file. Stable: fields stand in the order of the schema, visits by date, so that two equal courses
 * give the same bytes. Throws on a course that breaks the schema, since that is a fault of ours.
 */
export function writeCourse(course: Course): string {
  const visits = course.visits.toSorted((a, b) => (a.date < b.date ? -1 : 1))
  return `${JSON.stringify(courseSchema.parse({ ...course, visits }), null, 2)}\n`
}
