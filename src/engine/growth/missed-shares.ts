import { addDays } from "../calendar.js"
import type { CalendarDate, Course } from "../course.js"
import type { Prescription } from "./prescribed.js"
import { overlap, type Stretch } from "./stretch.js"

/** A span of life that the family told of, and the share of its covered nights that went without a drop. */
export interface MissedShare {
  readonly stretch: Stretch
  readonly share: number
}

/** Nights with a drop to be expected: prescribed, with a bottle in date where bottles are recorded. */
export interface ExpectedNights {
  readonly prescription: Prescription
  readonly covered: readonly Stretch[]
}

const DAYS_PER_YEAR = 365.25

/**
 * Missed nights that the family told of by `asOf`, spread evenly over the nights of their span on which a drop was to
 * be expected: which nights they were nobody knows. More nights than there were to miss are all of them.
 */
export function missedShares({
  course,
  asOf,
  expected,
  age,
}: {
  readonly course: Course
  readonly asOf: CalendarDate
  readonly expected: readonly ExpectedNights[]
  readonly age: (date: CalendarDate) => number
}): readonly MissedShare[] {
  // A span that ends later is not told of yet.
  const told = (course.missedNights ?? []).filter(({ to, nights }) => to <= asOf && nights > 0)
  return told.flatMap(({ from, to, nights }): MissedShare[] => {
    const stretch: Stretch = [age(from), age(addDays(to, 1))]
    const years = yearsExpected(stretch, expected)
    return years > 0 ? [{ stretch, share: Math.min(1, nights / DAYS_PER_YEAR / years) }] : []
  })
}

/** Two eyes on different drops have their nights in common, so where prescriptions overlap the fuller one counts. */
function yearsExpected(span: Stretch, expected: readonly ExpectedNights[]): number {
  const pieces = expected.flatMap(({ prescription, covered }) =>
    covered.flatMap((stretch) => {
      const shared = overlap(span, stretch)
      return shared ? [{ stretch: shared, nightly: prescription.nightly }] : []
    }),
  )
  const edges = [...new Set(pieces.flatMap(({ stretch }) => stretch))].sort((a, b) => a - b)
  return edges.slice(0, -1).reduce((sum, from, i) => {
    const to = edges[i + 1] as number
    const over = pieces.filter(({ stretch }) => stretch[0] <= from && stretch[1] >= to)
    return sum + (to - from) * Math.max(0, ...over.map(({ nightly }) => nightly))
  }, 0)
}

/** A stretch cut where missed nights begin or end, each piece with the share of its nights that were not missed. */
export function withMissed(
  stretch: Stretch,
  missed: readonly MissedShare[],
): readonly { readonly stretch: Stretch; readonly kept: number }[] {
  const over = missed.filter((one) => overlap(stretch, one.stretch))
  if (over.length === 0) return [{ stretch, kept: 1 }]
  const inside = over.flatMap((one) => one.stretch).filter((at) => at > stretch[0] && at < stretch[1])
  const edges = [...new Set([...stretch, ...inside])].sort((a, b) => a - b)
  return edges.slice(0, -1).map((from, i) => {
    const piece: Stretch = [from, edges[i + 1] as number]
    const share = over.filter((one) => overlap(piece, one.stretch)).reduce((sum, one) => sum + one.share, 0)
    return { stretch: piece, kept: Math.max(0, 1 - share) }
  })
}
