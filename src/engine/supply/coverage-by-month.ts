import { dayNumber } from "../calendar.js"
import type { CalendarDate, Course } from "../course.js"
import { prescribedNights } from "./covered-days.js"
import { missedNightsTold, sharesWithDrop } from "./missed-nights.js"

const DAYS_PER_YEAR = 365.25
const DAYS_PER_MONTH = DAYS_PER_YEAR / 12

/** Share of the nights of a twelfth of a year, from an age (years) on. */
export interface MonthCovered {
  readonly age: number
  readonly share: number
}

/**
 * Share of the prescribed nights of each month with a drop as far as is known, missed nights taken off; a night with
 * two strengths, one for each eye, counts as the worse covered of them. Months are counted from where prescribed nights
 * begin. Null where neither bottles nor missed nights are recorded.
 */
export function coverageByMonth(course: Course, today: CalendarDate): readonly MonthCovered[] | null {
  const prescriptions = prescribedNights(course, today)
  const shares = sharesWithDrop({ course, asOf: today, prescriptions })
  const isTold = missedNightsTold(course, today).length > 0
  const known = prescriptions.flatMap((one, i) =>
    one.covered !== null || isTold ? [{ from: one.from, shares: shares[i] as readonly number[] }] : [],
  )
  const hasRecord = (course.supplies ?? []).some(
    ({ opened, dispensed }) => (opened ?? dispensed ?? today) <= today,
  )
  if (known.length === 0) return hasRecord && beginsToday(course, today) ? [] : null
  const nights = new Map<number, number>()
  for (const one of known)
    one.shares.forEach((share, i) => {
      const night = one.from + i
      nights.set(night, Math.min(nights.get(night) ?? 1, share))
    })
  const born = dayNumber(course.child.born)
  return blocksOf([...nights.keys()].sort((a, b) => a - b)).flatMap(({ from, end }) => {
    const months = Math.ceil((end - from) / DAYS_PER_MONTH - 1e-9)
    return Array.from({ length: months }, (_, month) => {
      const start = from + month * DAYS_PER_MONTH
      const stop = Math.min(start + DAYS_PER_MONTH, end)
      let covered = 0
      for (let night = Math.floor(start); night < stop; night++) {
        const length = Math.min(night + 1, stop) - Math.max(night, start)
        covered += length * (nights.get(night) ?? 0)
      }
      return { age: (start - born) / DAYS_PER_YEAR, share: Math.min(1, covered / (stop - start)) }
    })
  })
}

/** Drops that begin today with a bottle on record: recorded, and no night yet. */
const beginsToday = (course: Course, today: CalendarDate): boolean =>
  (course.treatments ?? []).some(({ kind, from }) => kind === "atropine" && from === today)

/** Nights in a row. */
function blocksOf(nights: readonly number[]): readonly { readonly from: number; readonly end: number }[] {
  const blocks: { from: number; end: number }[] = []
  for (const night of nights) {
    const last = blocks.at(-1)
    if (last?.end === night) last.end++
    else blocks.push({ from: night, end: night + 1 })
  }
  return blocks
}
