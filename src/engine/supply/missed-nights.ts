import { dayNumber } from "../calendar.js"
import type { CalendarDate, Course } from "../course.js"
import type { PrescribedNights } from "./covered-days.js"

/** What the family told of by a day; a span that ends later is not told of yet. */
export const missedNightsTold = (course: Course, asOf: CalendarDate) =>
  (course.missedNights ?? []).filter(({ to, nights }) => to <= asOf && nights > 0)

/**
 * Of every prescription the sum of its nights with a drop as far as is known: nights with a bottle in date, less the
 * missed nights told of, spread evenly over the nights of their span on which a drop was to be expected. As the growth
 * model counts them (growth/missed-shares.ts), by nights instead of by years. Where no bottle of the strength is
 * recorded every night is taken to have had one.
 */
export function nightsWithDrop({
  course,
  asOf,
  prescriptions,
}: {
  readonly course: Course
  readonly asOf: CalendarDate
  readonly prescriptions: readonly PrescribedNights[]
}): readonly number[] {
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
  return prescriptions.map((one) => {
    let sum = 0
    for (let night = one.from; night < one.end; night++) {
      if (!has(one, night)) continue
      const missed = spans.reduce(
        (all, { first, last, share }) => all + (first <= night && night <= last ? share : 0),
        0,
      )
      sum += Math.max(0, 1 - missed)
    }
    return sum
  })
}
