import { addDays, dayNumber } from "../calendar.js"
import type { CalendarDate, Course, Supply, Treatment } from "../course.js"
import { isInUse, realTreatments } from "../protocol/treatment-course.js"
import { say } from "../say.js"
import { treatmentName } from "../treatment-name.js"
import { bottleSpan, isOfStrength } from "./bottle-span.js"

export const BOTTLE_STATES = ["in-date", "spare", "past-date", "not-counted"] as const

/** One bottle as it stands on a day. */
export interface Bottle extends Supply {
  /** Place in the course file. */
  readonly index: number
  /**
   * - `in-date`: its nights count today
   * - `spare`: handed out, not recorded as opened, while another of its strength is in date
   * - `past-date`: its last day of use is over
   * - `not-counted`: no day is recorded, or it was opened past its date
   */
  readonly state: (typeof BOTTLE_STATES)[number]
  /** First and last night that it can cover; null where it is not counted. */
  readonly firstNight: CalendarDate | null
  readonly lastNight: CalendarDate | null
}

export const BOTTLE_FAULTS = [
  "opened-past-date",
  "past-date",
  "strength-not-prescribed",
  "opening-not-recorded",
] as const

/** Something about a bottle that somebody has to look at. */
export interface BottleFault {
  readonly kind: (typeof BOTTLE_FAULTS)[number]
  readonly path: string
  readonly why: string
}

/** The bottles known on a day, in order of the day they were handed out. */
export function bottlesOn(course: Course, asOf: CalendarDate): readonly Bottle[] {
  const known = (course.supplies ?? [])
    .map((supply, index) => ({ supply, index, span: bottleSpan(supply) }))
    .filter(({ supply: { opened, dispensed } }) => (dispensed ?? opened ?? asOf) <= asOf)
  return known
    .map(({ supply, index, span }): Bottle => {
      if (!span) return { ...supply, index, state: "not-counted", firstNight: null, lastNight: null }
      const nights = { firstNight: span.first, lastNight: addDays(span.end, -1) }
      const others = known.filter((other) => other.index !== index && isOfStrength(other.supply, supply))
      const hasOther = others.some(
        (other) =>
          other.supply.opened !== undefined &&
          other.span &&
          other.span.first <= asOf &&
          asOf < other.span.end,
      )
      // One that states no date has none to be past until it is opened.
      const isSealed = supply.opened === undefined && hasOther && (!supply.beyondUse || asOf < span.end)
      const state = isSealed ? "spare" : asOf >= span.end ? "past-date" : "in-date"
      return { ...supply, index, state, ...nights }
    })
    .toSorted((a, b) => (dayOf(a) < dayOf(b) ? -1 : dayOf(a) > dayOf(b) ? 1 : a.index - b.index))
}

const dayOf = ({ dispensed, opened }: Supply): CalendarDate => dispensed ?? opened ?? ""

/** Bottles opened or kept past their date, of a strength nobody prescribed, or used without a word of their opening. */
export function bottleFaults(
  course: Course,
  { bottles, asOf }: { readonly bottles: readonly Bottle[]; readonly asOf: CalendarDate },
): readonly BottleFault[] {
  const drops = realTreatments(course).filter(({ kind, from }) => kind === "atropine" && from <= asOf)
  return bottles.flatMap((bottle) => {
    const path = `supplies[${bottle.index}]`
    const faults: BottleFault[] = []
    const { opened, beyondUse, concentrationPercent } = bottle
    if (opened && beyondUse && opened > beyondUse) {
      const why = say("opened on {opened}, past its last day of use on {last}: its nights are not counted", {
        opened,
        last: beyondUse,
      })
      faults.push({ kind: "opened-past-date", path: `${path}.opened`, why })
    }
    if ((opened ?? beyondUse) && isLastInUse(bottle, { bottles, drops, asOf })) {
      const last = bottle.lastNight as CalendarDate
      const why = say(
        "its last day of use was {last}, {days, plural, one {# day} other {# days}} ago, and no other bottle is in date: it must not be used any more",
        { last, days: dayNumber(asOf) - dayNumber(last) },
      )
      faults.push({ kind: "past-date", path, why })
    }
    if (concentrationPercent !== undefined && !drops.some((one) => wasPrescribed(one, bottle))) {
      const name = treatmentName({ kind: "atropine", concentrationPercent })
      faults.push({
        kind: "strength-not-prescribed",
        path: `${path}.concentrationPercent`,
        why: say("{treatment} was not prescribed while this bottle could be used", { treatment: name }),
      })
    }
    if (
      opened === undefined &&
      bottle.firstNight !== null &&
      bottle.state !== "spare" &&
      bottle.firstNight < asOf
    ) {
      const why = say(
        "nobody recorded when it was opened: it counts from {first}, the day it was handed out",
        { first: bottle.firstNight },
      )
      faults.push({ kind: "opening-not-recorded", path: `${path}.opened`, why })
    }
    return faults
  })
}

/** Whether drops go on of which this is the latest bottle, and none is in date. */
function isLastInUse(
  bottle: Bottle,
  {
    bottles,
    drops,
    asOf,
  }: {
    readonly bottles: readonly Bottle[]
    readonly drops: readonly Treatment[]
    readonly asOf: CalendarDate
  },
): boolean {
  if (bottle.state !== "past-date" || bottle.lastNight === null) return false
  const { lastNight } = bottle
  return drops.some(
    (one) =>
      isInUse(one, asOf) &&
      isOfStrength(bottle, one) &&
      bottles.every((other) => other === bottle || !isOfStrength(other, one) || isBefore(other, lastNight)),
  )
}

const isBefore = ({ lastNight, state }: Bottle, than: CalendarDate): boolean =>
  state === "not-counted" || (lastNight !== null && lastNight < than)

/** A bottle fetched before the first night belongs to a prescription when it can still be used in it. */
const wasPrescribed = (drops: Treatment, bottle: Bottle): boolean => {
  const last = bottle.lastNight ?? bottle.beyondUse ?? bottle.opened ?? bottle.dispensed
  const first = bottle.firstNight ?? bottle.opened ?? bottle.dispensed
  return (
    isOfStrength(bottle, drops) &&
    (last === undefined || drops.from <= last) &&
    (first === undefined || drops.to == null || first < drops.to)
  )
}
