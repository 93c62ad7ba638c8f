import { addDays } from "../calendar.js"
import type { CalendarDate, Course, Treatment } from "../course.js"
import type { PracticeRules } from "../practice-rules.js"
import type { Protocol } from "../protocol/protocol.js"
import { lastDayOfSupply, situationOn } from "../protocol/situation.js"

export interface BottleDays {
  readonly days: number
  /** Who says so, in words. */
  readonly by: string
}

/**
 * Days of use of one bottle after opening: as the pharmacy states them that made the child's last bottle, or the
 * practice's only one; else as the protocol says. A bottle without preservative is thrown away after a month (common
 * practice, no source).
 */
export function bottleDays({
  course,
  rules,
  protocol,
}: {
  readonly course: Course
  readonly rules: Pick<PracticeRules, "pharmacies">
  readonly protocol: Protocol
}): BottleDays {
  const { pharmacies } = rules
  const last = (course.supplies ?? [])
    .filter(({ pharmacy }) => pharmacy !== undefined)
    .toSorted((a, b) => ((a.opened ?? a.dispensed ?? "") < (b.opened ?? b.dispensed ?? "") ? -1 : 1))
    .at(-1)?.pharmacy
  const only = pharmacies.length === 1 ? pharmacies[0] : undefined
  const pharmacy =
    pharmacies.find(({ id, name }) => id === last || name === last) ?? (last ? undefined : only)
  return pharmacy
    ? { days: pharmacy.daysAfterOpening, by: `the pharmacy ${pharmacy.name}` }
    : { days: protocol.bottleDaysAfterOpening, by: `the protocol "${protocol.title}"` }
}

/**
 * The days on which a new bottle is begun, from today until treatment ends: the first one when the last recorded bottle
 * of this strength is used up, then one as soon as the one before has been open for its days.
 */
export function bottleStarts({
  course,
  protocol,
  drops,
  today,
  until,
  days,
}: {
  readonly course: Course
  readonly protocol: Protocol
  readonly drops: Treatment
  readonly today: CalendarDate
  /** First day for which no bottle is needed any more. */
  readonly until: CalendarDate
  readonly days: number
}): readonly CalendarDate[] {
  const held = lastDayOfSupply(situationOn({ course, protocol, today }), drops)
  const begins = drops.from > today ? drops.from : today
  const first = held !== undefined && held >= begins ? addDays(held, 1) : begins
  const starts: CalendarDate[] = []
  for (let start = first; start < until; start = addDays(start, Math.max(1, days))) starts.push(start)
  return starts
}
