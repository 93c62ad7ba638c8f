import { addDays } from "../calendar.js"
import type { CalendarDate, Supply, Treatment } from "../course.js"
import { isOfStrength } from "./bottle-span.js"

/**
 * Last day that the bottles in hand can cover, or undefined when none of this strength is recorded. A bottle ends on
 * its last day of use, or some days after opening where it states none. One handed out while another was in date, and
 * not recorded as opened, is a spare: it is taken to follow the one before it.
 *
 * @example
 * // Two bottles handed out on 12 January, 30 days each: the second is begun on 12 February.
 */
export function lastDayInHand({
  supplies,
  drops,
  daysAfterOpening,
}: {
  readonly supplies: readonly Supply[]
  readonly drops: Pick<Treatment, "concentrationPercent">
  readonly daysAfterOpening: number
}): CalendarDate | undefined {
  const bottles = supplies
    .filter((supply) => isOfStrength(supply, drops))
    .map((supply) => ({ supply, begins: supply.opened ?? supply.dispensed ?? "" }))
    .toSorted((a, b) =>
      a.begins < b.begins ? -1 : a.begins > b.begins ? 1 : openedFirst(a.supply, b.supply),
    )
  let last: CalendarDate | undefined
  for (const { supply, begins } of bottles) {
    const isSpare = supply.opened === undefined && last !== undefined && begins <= last
    const from = isSpare && last !== undefined ? addDays(last, 1) : begins
    const end = supply.beyondUse ?? (from === "" ? undefined : addDays(from, daysAfterOpening))
    if (end !== undefined && (last === undefined || end > last)) last = end
  }
  return last
}

const openedFirst = (a: Supply, b: Supply): number =>
  Number(b.opened !== undefined) - Number(a.opened !== undefined)
