import type { CalendarDate, Course, Treatment, TreatmentChoice } from "../course.js"
import { isInUse } from "../protocol/treatment-course.js"

export interface PlannedCourse {
  readonly course: Course
  /** `as-recorded` when the option is what the child already has, or is planned to begin. */
  readonly kind: "as-recorded" | "from-today"
}

/**
 * The course if an option were taken up today: what is in use is then ended, and what had been planned falls away. An
 * option already in use leaves the course as it is recorded, whatever else is used beside it. Null is observation.
 */
export function plannedCourse({
  course,
  treatment,
  today,
}: {
  readonly course: Course
  readonly treatment: TreatmentChoice | null
  readonly today: CalendarDate
}): PlannedCourse {
  const all = course.treatments ?? []
  const option = treatment?.kind === "none" ? null : treatment
  const going = all.filter(({ kind, to }) => kind !== "none" && (to == null || to > today))
  const isChosen = (one: Treatment) =>
    option !== null && one.kind === option.kind && one.concentrationPercent === option.concentrationPercent
  const isAsRecorded = option === null ? going.length === 0 : going.some(isChosen)
  if (isAsRecorded) return { course, kind: "as-recorded" }
  const past = all
    .filter(({ from }) => from < today)
    .map((one) => (isInUse(one, today) ? { ...one, to: today } : one))
  const chosen = option === null ? [] : [{ ...option, from: today }]
  return { course: { ...course, treatments: [...past, ...chosen] }, kind: "from-today" }
}
