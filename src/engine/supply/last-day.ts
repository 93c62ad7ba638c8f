import { addDays } from "../calendar.js"
import type { CalendarDate, Supply, Treatment } from "../course.js"
import { isOfStrength } from "./bottle-span.js"

/**
 * Last day that the bottles in hand can cover, or undefined when none of this strength is recorded. A bottle ends on
 * its last day of use, or some days after opening where it states none. One not recorded as opened is a spare while
 * another is in date: it is taken to follow those that were opened, unless one handed out after it was opened already.
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
  const ofTheStrength = supplies.filter((supply) => isOfStrength(supply, drops))
  const opened = ofTheStrength.filter((supply) => supply.opened !== undefined)
  const unopened = ofTheStrength
    .filter(
      (supply) =>
        supply.opened === undefined && !opened.some((other) => handedOut(other) > handedOut(supply)),
    )
    .toSorted((a, b) => (handedOut(a) < handedOut(b) ? -1 : 1))
  let last: CalendarDate | undefined
  for (const supply of [...opened, ...unopened]) {
    const begins = supply.opened ?? handedOut(supply)
    const isSpare = supply.opened === undefined && last !== undefined && begins <= last
    const from = isSpare && last !== undefined ? addDays(last, 1) : begins
    const end = supply.beyondUse ?? (from === "" ? undefined : addDays(from, daysAfterOpening))
    if (end !== undefined && (last === undefined || end > last)) last = end
  }
  return last
}

const handedOut = ({ dispensed, opened }: Supply): CalendarDate => dispensed ?? opened ?? ""
