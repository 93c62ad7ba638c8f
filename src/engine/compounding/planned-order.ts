import { addDays, dayNumber } from "../calendar.js"
import type { BottleOrder, CalendarDate, Course, Treatment } from "../course.js"
import type { PracticeRules } from "../practice-rules.js"
import type { Problem } from "../problem.js"
import { protocolFor } from "../protocol/choose-protocol.js"
import { plannedReviews } from "../protocol/planned-reviews.js"
import { bottlesNeeded } from "./bottles-needed.js"
import { dosingOf, dropsToSupply } from "./order-remarks.js"
import { pharmaciesOf, stockFor, USUAL_NIGHTS } from "./usual-pharmacy.js"

/** An order that nobody has made yet: for the drops in use or decided on, from the practice's first pharmacy. */
export interface PlannedOrder {
  readonly kind: "planned"
  readonly order: BottleOrder
  readonly drops: Treatment
  readonly nights: number
  /** First night it covers. */
  readonly from: CalendarDate
  /** What it lasts to. */
  readonly until:
    | { readonly kind: "review" | "stop"; readonly date: CalendarDate }
    | { readonly kind: "usual" }
}

export type NoPlannedOrder =
  | { readonly kind: "no-drops" }
  | { readonly kind: "no-strength" }
  | { readonly kind: "refused"; readonly problems: readonly Problem[] }

/**
 * Bottles from the first night on to the next review after they can have come, counted for the largest drops; bottles in hand are not
 * taken off.
 */
export function plannedOrder({
  course,
  today,
  rules,
}: {
  readonly course: Course
  readonly today: CalendarDate
  readonly rules: Pick<PracticeRules, "pharmacies" | "protocols">
}): PlannedOrder | NoPlannedOrder {
  const [drops] = dropsToSupply(course, today)
  const [pharmacy] = pharmaciesOf(rules.pharmacies)
  if (drops === undefined || pharmacy === undefined) return { kind: "no-drops" }
  const { concentrationPercent } = drops
  if (concentrationPercent === undefined) return { kind: "no-strength" }
  const from = drops.from > today ? drops.from : today
  const comes = addDays(today, pharmacy.leadDays)
  const until = lastsTo({ course, today, rules, drops, from, comes })
  const nights = until.kind === "usual" ? USUAL_NIGHTS : dayNumber(until.date) - dayNumber(from)
  const { eye, nightsPerWeek } = dosingOf(course, { concentrationPercent, on: today })
  const { bottleMl: volumeMl, daysAfterOpening, isPreserved: preserved } = pharmacy
  const needed = bottlesNeeded({
    volumeMl,
    eyes: eye === undefined ? 2 : 1,
    nights,
    daysAfterOpening,
    nightsPerWeek,
  })
  if (needed.kind === "refused") return needed
  const order = {
    date: today,
    concentrationPercent,
    bottles: needed.bottles.high,
    volumeMl,
    stockPercent: stockFor(pharmacy, concentrationPercent),
    pharmacy: pharmacy.name,
    preserved,
  }
  return { kind: "planned", order, drops, nights, from, until }
}

function lastsTo({
  course,
  today,
  rules,
  drops: { to },
  from,
  comes,
}: {
  readonly course: Course
  readonly today: CalendarDate
  readonly rules: Pick<PracticeRules, "protocols">
  readonly drops: Treatment
  readonly from: CalendarDate
  readonly comes: CalendarDate
}): PlannedOrder["until"] {
  const protocol = protocolFor({ course, today, rules })
  const review = plannedReviews({ course, protocol, today }).reviews.find(
    ({ date }) => date > from && date > comes,
  )
  if (to != null && (review === undefined || to < review.date)) return { kind: "stop", date: to }
  return review ? { kind: "review", date: review.date } : { kind: "usual" }
}
