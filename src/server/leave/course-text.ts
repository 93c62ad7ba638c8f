import type { Course } from "../../engine/course.js"
import { writeCourse } from "../../interop/course/write-course.js"

/**
 * A course as the text of a course file. One that was recorded under older rules and no longer fits the schema is
 * written as it is: a practice that leaves takes all of it along.
 */
export function courseText(course: Course): string {
  try {
    return writeCourse(course)
  } catch {
    return `${JSON.stringify(course, null, 2)}\n`
  }
}
