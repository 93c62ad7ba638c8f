import type { CalendarDate, Course, Treatment } from "../engine/course.js"
import { isInUse, realTreatments } from "../engine/protocol/treatment-course.js"

/** The treatments in use on a day; the day of the stop is the first without. */
export function treatmentsOn(course: Pick<Course, "treatments">, day: CalendarDate): readonly Treatment[] {
  return realTreatments(course).filter((treatment) => isInUse(treatment, day))
}
