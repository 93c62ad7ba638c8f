import { addMonths } from "../calendar.js"
import type { CalendarDate, Course } from "../course.js"
import type { Protocol } from "../protocol/protocol.js"
import { currentTreatmentCourse } from "../protocol/treatment-course.js"

interface Asked {
  readonly protocol: Protocol
  readonly course: Pick<Course, "treatments" | "decisions">
  readonly today: CalendarDate
}

/** Months from the start of a course to its planned decision to stop; null where the protocol plans none. */
export function plannedMonths(protocol: Protocol, isLater: boolean): number | null {
  const planned = protocol.steps.filter(({ kind, decides }) => kind === "decision" && decides === "stop")
  const ofLater = isLater ? planned.filter(({ anchor }) => anchor === "restart") : []
  const counted = ofLater.length > 0 ? ofLater : planned.filter(({ anchor }) => anchor === "start")
  return counted.length === 0 ? null : Math.min(...counted.map(({ offsetMonths }) => offsetMonths))
}

/** Months of a course that would begin today, and whether another one was lived through before. */
export function monthsFromToday({ protocol, course, today }: Asked): number | null {
  const current = currentTreatmentCourse({ course, today, longestPauseDays: protocol.longestPauseDays })
  const isLater = current !== null && current.stop !== null && current.stop <= today
  return plannedMonths(protocol, isLater)
}

/** Day on which the running course is planned to stop; null when that day has passed or none is planned. */
export function plannedStopAsNow({ protocol, course, today }: Asked): CalendarDate | null {
  const current = currentTreatmentCourse({ course, today, longestPauseDays: protocol.longestPauseDays })
  if (current === null) return null
  const months = plannedMonths(protocol, current.isLater)
  if (months === null) return null
  const stop = addMonths(current.start, months)
  return stop > today ? stop : null
}
