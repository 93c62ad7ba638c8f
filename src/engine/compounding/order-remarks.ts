import type { BottleOrder, CalendarDate, Course, Eye, Treatment } from "../course.js"
import { listed, say } from "../say.js"
import { treatmentName } from "../treatment-name.js"
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

/**
 * How drops of a strength are used on a day: in which eye, where it is one, and on how many nights of the week. Where
 * the strength is not given to this child, as the drops are that are.
 */
export function dosingOf(
  course: Pick<Course, "treatments">,
  { concentrationPercent, on }: { readonly concentrationPercent: number; readonly on: CalendarDate },
): { readonly eye: Eye | undefined; readonly nightsPerWeek: number | undefined } {
  const drops = dropsToSupply(course, on)
  const ofTheStrength = drops.filter((drop) => drop.concentrationPercent === concentrationPercent)
  const [first] = ofTheStrength.length > 0 ? ofTheStrength : drops
  // Each eye may have an entry of its own of the same strength.
  const beside = ofTheStrength.find(({ from, eye }) => from <= on && first && eye !== first.eye)
  return { eye: beside ? undefined : first?.eye, nightsPerWeek: nightsOf(first, beside) }
}

/** Of two entries the one with more nights, since bottles are counted by it; undefined is every night. */
function nightsOf(first: Treatment | undefined, beside: Treatment | undefined): number | undefined {
  if (!beside) return first?.nightsPerWeek
  const nights = Math.max(first?.nightsPerWeek ?? 7, beside.nightsPerWeek ?? 7)
  return nights >= 7 ? undefined : nights
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
  if (drops.length === 0) return say("No drops are running or decided on for this child.")
  const percent = concentrationPercent
  const inUse = listed(drops.filter(({ from }) => from <= on).map(treatmentName))
  const coming = listed(
    drops
      .filter(({ from }) => from > on)
      .map((drop) => say("{treatment} from {date}", { treatment: treatmentName(drop), date: drop.from })),
  )
  if (coming === "")
    return say("The order is for {percent} %; the treatment in use is {inUse}.", { percent, inUse })
  if (inUse === "") return say("The order is for {percent} %; decided on is {coming}.", { percent, coming })
  return say("The order is for {percent} %; the treatment in use is {inUse}; decided on is {coming}.", {
    percent,
    inUse,
    coming,
  })
}

const stillAwaited = ({ date, bottles, concentrationPercent }: BottleOrder) =>
  say(
    "{bottles, plural, one {# bottle of {percent} % ordered on {date} has} other {# bottles of {percent} % ordered on {date} have}} not come yet.",
    { bottles, percent: concentrationPercent, date },
  )
