import { addMonths } from "../calendar.js"
import type { CalendarDate, Course } from "../course.js"
import type { PracticeRules } from "../practice-rules.js"
import { protocolFor } from "../protocol/choose-protocol.js"
import { currentTreatmentCourse } from "../protocol/treatment-course.js"

/**
 * The day on which a course is planned to stop by the protocol that it follows. Null where that day has passed or is
 * recorded already, and where the protocol plans no stop.
 */
export function plannedStop({
  course,
  today,
  rules,
}: {
  readonly course: Course
  readonly today: CalendarDate
  readonly rules: Pick<PracticeRules, "protocols">
}): CalendarDate | null {
  const { steps, longestPauseDays } = protocolFor({ course, today, rules })
  const current = currentTreatmentCourse({ course, today, longestPauseDays })
  if (current === null || current.stop !== null) return null
  const planned = steps.filter(({ kind, decides }) => kind === "decision" && decides === "stop")
  const ofLater = current.isLater ? planned.filter(({ anchor }) => anchor === "restart") : []
  const counted = ofLater.length > 0 ? ofLater : planned.filter(({ anchor }) => anchor === "start")
  const stops = counted.map(({ offsetMonths }) => addMonths(current.start, offsetMonths))
  return stops.filter((stop) => stop > today).toSorted()[0] ?? null
}
