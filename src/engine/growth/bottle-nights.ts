import type { CalendarDate, Supply, Treatment } from "../course.js"
import { bottleSpan, isOfStrength } from "../supply/bottle-span.js"
import type { Stretch } from "./stretch.js"

/**
 * The stretches with a bottle in date for the drops among some treatments, joined and in order; null where there are
 * no drops or no bottle of theirs is recorded.
 */
export function bottleNights(
  supplies: readonly Supply[],
  parts: readonly Treatment[],
  age: (date: CalendarDate) => number,
): readonly Stretch[] | null {
  const drops = parts.find((part) => part.kind === "atropine")
  if (!drops) return null
  const nights = supplies
    .filter((supply) => isOfStrength(supply, drops))
    .flatMap((supply): Stretch[] => {
      const span = bottleSpan(supply)
      return span ? [[age(span.first), age(span.end)]] : []
    })
  return nights.length === 0 ? null : joined(nights)
}

/** Stretches joined where they overlap or touch, in order. */
export function joined(stretches: readonly Stretch[]): readonly Stretch[] {
  const merged: [number, number][] = []
  for (const [from, to] of stretches.toSorted((a, b) => a[0] - b[0])) {
    const last = merged.at(-1)
    if (last && from <= last[1]) last[1] = Math.max(last[1], to)
    else merged.push([from, to])
  }
  return merged
}
