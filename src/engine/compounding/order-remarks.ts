import type { BottleOrder, CalendarDate, Course, Treatment } from "../course.js"
import { treatmentName } from "../treatment-name.js"
import { counted } from "../words.js"
import { isAwaited } from "./order-state.js"

/** The drops a child is given on a day, the latest begun first. */
export function dropsOn(course: Pick<Course, "treatments">, on: CalendarDate): readonly Treatment[] {
  return (course.treatments ?? [])
    .filter(({ kind, from, to }) => kind === "atropine" && from <= on && !(to != null && to <= on))
    .toSorted((a, b) => (a.from < b.from ? 1 : -1))
}

/** What a person should see before an order goes out: another strength than the one in use, bottles already on their way. */
export function orderRemarks({
  course,
  concentrationPercent,
  on,
}: {
  readonly course: Pick<Course, "treatments" | "orders">
  readonly concentrationPercent: number
  readonly on: CalendarDate
}): readonly string[] {
  const drops = dropsOn(course, on)
  const isInUse = drops.some((treatment) => treatment.concentrationPercent === concentrationPercent)
  const ofTheStrength = isInUse ? [] : [otherStrength({ drops, concentrationPercent })]
  const awaited = (course.orders ?? []).filter((order) => isAwaited(order) && order.date <= on)
  return [...ofTheStrength, ...awaited.map(stillAwaited)]
}

function otherStrength({
  drops,
  concentrationPercent,
}: {
  readonly drops: readonly Treatment[]
  readonly concentrationPercent: number
}): string {
  if (drops.length === 0) return "No drops are running for this child."
  return `The order is for ${concentrationPercent} %; the treatment in use is ${drops.map(treatmentName).join(" and ")}.`
}

const stillAwaited = ({ date, bottles, concentrationPercent }: BottleOrder) =>
  `${counted(bottles, "bottle")} of ${concentrationPercent} % ordered on ${date} ${bottles === 1 ? "has" : "have"} not come yet.`
