import { addDays } from "../calendar.js"
import type { CalendarDate, Supply, Treatment } from "../course.js"

/** Used for a bottle without a date: a bottle without preservative lasts a month (common practice, no source). */
export const USUAL_BOTTLE_DAYS = 30

/** The nights that one bottle can cover: from its first night to the night before `end`. */
export interface BottleSpan {
  readonly first: CalendarDate
  readonly end: CalendarDate
}

/**
 * A bottle counts from the day it was opened, or from the day it was handed out where nobody recorded the opening, up
 * to and with its last day of use. Null where neither day is recorded, or where it was opened past its date.
 *
 * @example
 * bottleSpan({ opened: "2025-01-12", beyondUse: "2025-02-11" }) // => { first: "2025-01-12", end: "2025-02-12" }
 */
export function bottleSpan({ opened, dispensed, beyondUse }: Supply): BottleSpan | null {
  const first = opened ?? dispensed
  if (first === undefined) return null
  const end = beyondUse ? addDays(beyondUse, 1) : addDays(first, USUAL_BOTTLE_DAYS)
  return end > first ? { first, end } : null
}

/** Whether a bottle is of the strength prescribed; one that does not state its strength is taken as it. */
export const isOfStrength = (
  { concentrationPercent }: Supply,
  drops: Pick<Treatment, "concentrationPercent">,
): boolean =>
  concentrationPercent === undefined ||
  drops.concentrationPercent === undefined ||
  Math.abs(concentrationPercent - drops.concentrationPercent) < 1e-9
