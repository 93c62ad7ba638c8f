import type { BottleOrder, CalendarDate, Course, Treatment } from "../course.js"
import { treatmentName } from "../treatment-name.js"
import { counted } from "../words.js"
import { isAwaited } from "./order-state.js"

/**
 * The drops a child needs bottles of: those in use on a day, the latest begun first, then those decided on that begin
 * later. Bottles are ordered before the first night.
 */
export function dropsToSupply(course: Pick<Course, "treatments">, on: CalendarDate): readonly Treatment[] {
  const left = (course.treatments ?? [])
    .filter(({ kind, to }) => kind === "atropine" && !(to != null && to <= on))
    .toSorted((a, b) => (a.from < b.from ? -1 : 1))
  return [...left.filter(({ from }) => from <= on).toReversed(), ...left.filter(({ from }) => from > on)]
}

/** What a person should see before an order goes out: another strength than the child gets, bottles already on their way. */
export function orderRemarks({
  course,
  concentrationPercent,
  on,
}: {
  readonly course: Pick<Course, "treatments" | "orders">
  readonly concentrationPercent: number
  readonly on: CalendarDate
}): readonly string[] {
  const drops = dropsToSupply(course, on)
  const isGiven = drops.some((treatment) => treatment.concentrationPercent === concentrationPercent)
  const ofTheStrength = isGiven ? [] : [otherStrength({ drops, concentrationPercent, on })]
  const awaited = (course.orders ?? []).filter((order) => isAwaited(order) && order.date <= on)
  return [...ofTheStrength, ...awaited.map(stillAwaited)]
}

function otherStrength({
  drops,
  concentrationPercent,
  on,
}: {
  readonly drops: readonly Treatment[]
  readonly concentrationPercent: number
  readonly on: CalendarDate
}): string {
  if (drops.length === 0) return "No drops are running or decided on for this child."
  const inUse = drops.filter(({ from }) => from <= on).map(treatmentName)
  const coming = drops
    .filter(({ from }) => from > on)
    .map((drop) => `${treatmentName(drop)} from ${drop.from}`)
  const given = [
    ...(inUse.length > 0 ? [`the treatment in use is ${inUse.join(" and ")}`] : []),
    ...(coming.length > 0 ? [`decided on is ${coming.join(" and ")}`] : []),
  ]
  return `The order is for ${concentrationPercent} %; ${given.join("; ")}.`
}

const stillAwaited = ({ date, bottles, concentrationPercent }: BottleOrder) =>
  `${counted(bottles, "bottle")} of ${concentrationPercent} % ordered on ${date} ${bottles === 1 ? "has" : "have"} not come yet.`
