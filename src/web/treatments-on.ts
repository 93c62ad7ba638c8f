import type { CalendarDate, Course, Treatment } from "../engine/course.js"

/** The treatments in use on a day; the day of the stop is the first without. */
export function treatmentsOn(course: Pick<Course, "treatments">, day: CalendarDate): readonly Treatment[] {
  return (course.treatments ?? []).filter(
    ({ kind, from, to }) => kind !== "none" && from <= day && (to === null || to === undefined || to > day),
  )
}
