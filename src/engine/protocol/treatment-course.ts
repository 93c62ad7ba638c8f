import { dayNumber } from "../calendar.js"
import type { CalendarDate, Course, Treatment } from "../course.js"

/** One course of treatment: everything used from a start to a stop, overlaps and pauses included. */
export interface TreatmentCourse {
  readonly start: CalendarDate
  /** First day without any treatment, also when it is still to come; null while no end is recorded. */
  readonly stop: CalendarDate | null
  /** In order of their start. */
  readonly treatments: readonly Treatment[]
  /** True when an earlier course was stopped before this one began. */
  readonly isLater: boolean
}

/**
 * The course that counts today: the latest one begun, or a planned one when none has begun.
 * Treatments belong together until a gap longer than the longest pause; entries of kind `none` treat nothing.
 */
export function currentTreatmentCourse({
  course,
  today,
  longestPauseDays,
}: {
  course: Course
  today: CalendarDate
  longestPauseDays: number
}): TreatmentCourse | null {
  const all = realTreatments(course)
  const begun = all.filter((treatment) => treatment.from <= today)
  const courses = splitAtStops(begun.length > 0 ? begun : all, longestPauseDays)
  const last = courses.at(-1)
  if (!last) return null
  return {
    start: last[0]!.from,
    stop: endOf(last),
    treatments: last,
    isLater: courses.length > 1,
  }
}

/** Treatments that treat, in order of their start. */
export function realTreatments(course: Pick<Course, "treatments">): readonly Treatment[] {
  return (course.treatments ?? [])
    .filter((treatment) => treatment.kind !== "none")
    .toSorted((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0))
}

/** Whether a treatment is in use on a day: from its first day until the day before `to`. */
export function isInUse(treatment: Treatment, on: CalendarDate): boolean {
  return treatment.from <= on && (treatment.to == null || on < treatment.to)
}

/** Days within the course on which atropine was begun or its strength changed, the course's own first day left out. */
export function changesOfStrength({ start, treatments }: TreatmentCourse): readonly CalendarDate[] {
  const drops = treatments.filter(({ kind }) => kind === "atropine")
  const changes = drops.filter((drop, index) => {
    if (drop.from === start) return false
    const before = drops[index - 1]
    return before === undefined || before.concentrationPercent !== drop.concentrationPercent
  })
  return [...new Set(changes.map(({ from }) => from))]
}

function splitAtStops(
  treatments: readonly Treatment[],
  longestPauseDays: number,
): readonly (readonly Treatment[])[] {
  const courses: Treatment[][] = []
  for (const treatment of treatments) {
    const current = courses.at(-1)
    const end = current && endOf(current)
    const isNew =
      current === undefined || (end != null && dayNumber(treatment.from) - dayNumber(end) > longestPauseDays)
    if (isNew) courses.push([treatment])
    else current.push(treatment)
  }
  return courses
}

function endOf(treatments: readonly Treatment[]): CalendarDate | null {
  let last: CalendarDate | null = null
  for (const { to } of treatments) {
    if (to == null) return null
    if (last === null || to > last) last = to
  }
  return last
}
