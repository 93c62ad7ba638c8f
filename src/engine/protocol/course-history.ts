import type { Duty } from "../assessment.js"
import { addDays } from "../calendar.js"
import type { CalendarDate } from "../course.js"
import { duties } from "./duties.js"
import type { SituationInput } from "./situation.js"
import { type TreatmentCourse, treatmentCourses } from "./treatment-course.js"

/** An earlier course of treatment, with its duties as they stood on its last day. */
export interface PastCourse extends TreatmentCourse {
  /** The day before the next course began. */
  readonly until: CalendarDate
  readonly duties: readonly Duty[]
}

/**
 * The courses before the current one, in order: what was done in each and what was missed. `duties` lists the current one.
 *
 * @example
 * courseHistory({ course, protocol: standardProtocol, today: "2028-03-01" })
 */
export function courseHistory(input: SituationInput): readonly PastCourse[] {
  const { course, protocol, today } = input
  const courses = treatmentCourses({ course, today, longestPauseDays: protocol.longestPauseDays })
  return courses.slice(0, -1).map((past, index) => {
    const until = addDays(courses[index + 1]!.start, -1)
    const known = { ...course, treatments: course.treatments?.filter(({ from }) => from <= until) }
    return { ...past, until, duties: duties({ ...input, course: known, today: until }) }
  })
}
