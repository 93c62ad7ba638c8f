import { dayNumber } from "../calendar.js"
import type { CalendarDate, Course } from "../course.js"
import type { PrescribedNights } from "./covered-days.js"

/** What the family told of by a day; a span that ends later is not told of yet. */
export const missedNightsTold = (course: Course, asOf: CalendarDate) =>
  (course.missedNights ?? []).filter(({ to, nights }) => to <= asOf && nights > 0)

/**
 * Of every prescription, night by night, the share of a drop that is to be expected: 1 with a bottle in date and 0
 * without, less the missed nights told of, spread evenly over the nights of their span on which a drop was to be expected. As the growth
 * model counts them (growth/missed-shares.ts), by nights instead of by years. Where no bottle of the strength is
 * recorded every night is taken to have had one.
 */
export function sharesWithDrop({
  course,
  asOf,
  prescriptions,
}: {
  readonly course: Course
  readonly asOf: CalendarDate
  readonly prescriptions: readonly PrescribedNights[]
}): readonly (readonly number[])[] {
  const has = (one: PrescribedNights, night: number) =>
    one.covered === null || one.covered[night - one.from] === true
  const spans = missedNightsTold(course, asOf).map(({ from, to, nights }) => {
    const [first, last] = [dayNumber(from), dayNumber(to)]
    let expected = 0
    for (let night = first; night <= last; night++) {
      const due = prescriptions.filter((one) => one.from <= night && night < one.end && has(one, night))
      expected += Math.max(0, ...due.map(({ nightly }) => nightly))
    }
    return { first, last, share: expected > 0 ? Math.min(1, nights / expected) : 0 }
  })
  return prescriptions.map((one) =>
    Array.from({ length: Math.max(0, one.end - one.from) }, (_, i) => {
      const night = one.from + i
      if (!has(one, night)) return 0
      const over = spans.filter(({ first, last }) => first <= night && night <= last)
      return Math.max(0, 1 - over.reduce((all, { share }) => all + share, 0))
    }),
  )
}
