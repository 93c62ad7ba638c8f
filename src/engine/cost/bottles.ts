import { addDays } from "../calendar.js"
import { bottlesNeeded } from "../compounding/bottles-needed.js"
import type { CalendarDate, Course, Supply, Treatment } from "../course.js"
import type { Pharmacy, PracticeRules } from "../practice-rules.js"
import type { Protocol } from "../protocol/protocol.js"
import { lastDayOfSupply, situationOn } from "../protocol/situation.js"
import { say } from "../say.js"

/** @example bottlesOf("atropine 0.05 %", 6) // => "6 bottles of atropine 0.05 %" */
export const bottlesOf = (drops: string, count: number): string =>
  say("{count, plural, =1 {bottle of {drops}} other {# bottles of {drops}}}", { drops, count })

export interface BottleDays {
  readonly days: number
  /** What ends it and who says so. */
  readonly by:
    | { readonly kind: "protocol"; readonly title: string }
    | { readonly kind: "pharmacy"; readonly name: string }
    | { readonly kind: "volume"; readonly bottleMl: number }
}

/**
 * Days for which one bottle serves: as the pharmacy states them that made the child's last bottle, or the practice's
 * only one, and no longer than its drops last when they are large; else as the protocol says. A bottle without
 * preservative is thrown away after a month (common practice, no source).
 */
export function bottleDays({
  course,
  drops,
  rules,
  protocol,
}: {
  readonly course: Course
  readonly drops: Treatment
  readonly rules: Pick<PracticeRules, "pharmacies">
  readonly protocol: Protocol
}): BottleDays {
  const pharmacy = pharmacyOf(course, rules.pharmacies)
  if (!pharmacy) {
    const days = Math.max(1, protocol.bottleDaysAfterOpening)
    return { days, by: { kind: "protocol", title: protocol.title } }
  }
  const { name, bottleMl, daysAfterOpening } = pharmacy
  const needed = bottlesNeeded({
    volumeMl: bottleMl,
    eyes: drops.eye === undefined ? 2 : 1,
    nights: 1,
    daysAfterOpening,
    nightsPerWeek: drops.nightsPerWeek,
  })
  const days = needed.kind === "needed" ? needed.nightsPerBottle.low : daysAfterOpening
  return days < daysAfterOpening
    ? { days, by: { kind: "volume", bottleMl } }
    : { days, by: { kind: "pharmacy", name } }
}

function pharmacyOf(course: Course, pharmacies: readonly Pharmacy[]): Pharmacy | undefined {
  const begun = ({ opened, dispensed }: Supply) => opened ?? dispensed ?? ""
  const last = (course.supplies ?? [])
    .filter(({ pharmacy }) => pharmacy !== undefined)
    .toSorted((a, b) => (begun(a) < begun(b) ? -1 : 1))
    .at(-1)?.pharmacy
  const only = last === undefined && pharmacies.length === 1 ? pharmacies[0] : undefined
  return pharmacies.find(({ id, name }) => id === last || name === last) ?? only
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
  for (let start = first; start < until; start = addDays(start, days)) starts.push(start)
  return starts
}
