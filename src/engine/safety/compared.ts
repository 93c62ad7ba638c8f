import { type CalendarDate, type Course, EYES, type Eye, type EyeExamination, type Visit } from "../course.js"
import { realTreatments } from "../protocol/treatment-course.js"

/** A value of one eye at a visit beside the same eye's own value before the first drop. */
export interface Compared<T> {
  readonly eye: Eye
  readonly now: T
  readonly on: CalendarDate
  readonly before: { readonly value: T; readonly on: CalendarDate } | null
}

/** The visit's values beside the last ones among the visits before. */
export function compared<T>({
  visit,
  before,
  value,
}: {
  readonly visit: Visit
  /** In order of date. */
  readonly before: readonly Visit[]
  readonly value: (eye: EyeExamination) => T | undefined
}): readonly Compared<T>[] {
  const of = (from: Visit, eye: Eye) => {
    const examination = from[eye]
    return examination && value(examination)
  }
  return EYES.flatMap((eye) => {
    const now = of(visit, eye)
    if (now === undefined) return []
    const baseline = before.findLast((earlier) => of(earlier, eye) !== undefined)
    return [
      {
        eye,
        now,
        on: visit.date,
        before: baseline ? { value: of(baseline, eye)!, on: baseline.date } : null,
      },
    ]
  })
}

/** Visits up to the day the drops were begun, in order of date, those under the drops of an earlier course left out. */
export function visitsBeforeDrops({
  course,
  begun,
}: {
  readonly course: Course
  readonly begun: CalendarDate
}): readonly Visit[] {
  const earlier = realTreatments(course).filter(({ kind, from }) => kind === "atropine" && from < begun)
  const isUnderDrops = (date: CalendarDate) =>
    earlier.some(({ from, to }) => from < date && (to == null || date <= to))
  return course.visits
    .filter(({ date }) => date <= begun && !isUnderDrops(date))
    .toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
}

/** Differences of decimals are off by a hair: 6.8 - 3.8 must count as 3. */
export const SLACK = 1e-9
