import { dayNumber } from "../calendar.js"
import {
  type CalendarDate,
  type Course,
  EYES,
  type Eye,
  type Treatment,
  type TreatmentKind,
} from "../course.js"

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
 * Treatments belong together until a gap longer than the longest pause, or a discharge before a gap of any length;
 * entries of kind `none` treat nothing.
 */
export function currentTreatmentCourse(input: CoursesInput): TreatmentCourse | null {
  return treatmentCourses(input).at(-1) ?? null
}

export interface CoursesInput {
  readonly course: Pick<Course, "treatments" | "decisions">
  readonly today: CalendarDate
  readonly longestPauseDays: number
}

/** The courses begun by a day, in order; the planned one alone when none has begun. */
export function treatmentCourses({
  course,
  today,
  longestPauseDays,
}: CoursesInput): readonly TreatmentCourse[] {
  const all = realTreatments(course)
  const begun = all.filter((treatment) => treatment.from <= today)
  const discharges = (course.decisions ?? [])
    .filter(({ kind, date }) => kind === "discharge" && date <= today)
    .map(({ date }) => date)
  const courses = splitAtStops(begun.length > 0 ? begun : all, { longestPauseDays, discharges })
  return courses.map((treatments, index) => ({
    start: treatments[0]!.from,
    stop: endOf(treatments),
    treatments,
    isLater: index > 0,
  }))
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

/** A day on which one of some treatments was begun or its strength changed, and in which eyes. */
export interface Change {
  readonly date: CalendarDate
  readonly eyes: readonly Eye[]
}

/**
 * The changes within a course among treatments of these kinds, eye by eye; the course's own first day is none. The same
 * strength on fewer nights is no change.
 */
export function changesOf(
  { start, treatments }: TreatmentCourse,
  kinds: readonly TreatmentKind[],
): readonly Change[] {
  const eyesByDate = new Map<CalendarDate, Eye[]>()
  for (const eye of EYES) {
    const given = treatments.filter(
      (treatment) => kinds.includes(treatment.kind) && eyesOf(treatment).includes(eye),
    )
    for (const [index, { from, kind, concentrationPercent }] of given.entries()) {
      const before = given[index - 1]
      const isSame = before?.kind === kind && before.concentrationPercent === concentrationPercent
      const eyes = eyesByDate.get(from) ?? []
      if (from !== start && !isSame && !eyes.includes(eye)) eyesByDate.set(from, [...eyes, eye])
    }
  }
  return [...eyesByDate]
    .map(([date, eyes]) => ({ date, eyes }))
    .toSorted((a, b) => (a.date < b.date ? -1 : 1))
}

/** The eyes a treatment is given in: both where it names none. */
export const eyesOf = ({ eye }: Pick<Treatment, "eye">): readonly Eye[] => (eye === undefined ? EYES : [eye])

function splitAtStops(
  treatments: readonly Treatment[],
  {
    longestPauseDays,
    discharges,
  }: { readonly longestPauseDays: number; readonly discharges: readonly CalendarDate[] },
): readonly (readonly Treatment[])[] {
  const courses: Treatment[][] = []
  for (const treatment of treatments) {
    const current = courses.at(-1)
    const end = current && endOf(current)
    const begun = current?.at(-1)?.from
    const isNew =
      current === undefined ||
      (end != null && dayNumber(treatment.from) - dayNumber(end) > longestPauseDays) ||
      (end != null &&
        end < treatment.from &&
        discharges.some((date) => begun !== undefined && begun <= date && date < treatment.from))
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
