import type { CalendarDate, Course, Treatment } from "../engine/course.js"
import { isInUse, realTreatments } from "../engine/protocol/treatment-course.js"

/** The treatments that were decided on and begin after a day, the first to begin first. */
export function treatmentsAfter(course: Pick<Course, "treatments">, day: CalendarDate): readonly Treatment[] {
  return realTreatments(course)
    .filter(({ from }) => from > day)
    .toSorted((a, b) => (a.from < b.from ? -1 : 1))
}

/** The treatments in use on a day; the day of the stop is the first without. */
export function treatmentsOn(course: Pick<Course, "treatments">, day: CalendarDate): readonly Treatment[] {
  return realTreatments(course).filter((treatment) => isInUse(treatment, day))
}
