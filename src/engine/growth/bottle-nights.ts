import { addDays } from "../calendar.js"
import type { CalendarDate, Supply, Treatment } from "../course.js"
import type { Stretch } from "./stretch.js"

/** Used for a bottle without a date: a bottle without preservative lasts a month (common practice, no source). */
const USUAL_BOTTLE_DAYS = 30

/**
 * The stretches with a bottle in date for the drops among some treatments, joined and in order; null where there are
 * no drops or no bottle of theirs is recorded. A bottle that does not state its strength is taken as theirs.
 */
export function bottleNights(
  supplies: readonly Supply[],
  parts: readonly Treatment[],
  age: (date: CalendarDate) => number,
): readonly Stretch[] | null {
  const drops = parts.find((part) => part.kind === "atropine")
  if (!drops) return null
  const nights = supplies
    .filter(
      (s) =>
        s.concentrationPercent === undefined ||
        drops.concentrationPercent === undefined ||
        Math.abs(s.concentrationPercent - drops.concentrationPercent) < 1e-9,
    )
    .flatMap((s): Stretch[] => {
      const first = s.opened ?? s.dispensed
      if (first === undefined) return []
      const end = s.beyondUse ? addDays(s.beyondUse, 1) : addDays(first, USUAL_BOTTLE_DAYS)
      return age(end) > age(first) ? [[age(first), age(end)]] : []
    })
    .sort((a, b) => a[0] - b[0])
  if (nights.length === 0) return null
  const merged: [number, number][] = []
  for (const [from, to] of nights) {
    const last = merged.at(-1)
    if (last && from <= last[1]) last[1] = Math.max(last[1], to)
    else merged.push([from, to])
  }
  return merged
}
