import { ticks } from "d3-array"

/** Values on a line of the picture; `ticks` gives about so many round values within the domain. */
export interface LinearScale {
  (value: number): number
  readonly ticks: (count: number) => readonly number[]
}

/**
 * The straight map from a span of values to a span of the picture, whose ends may be the other way round.
 *
 * @example
 * linearScale([0, 10], [100, 200])(5) // => 150
 */
export function linearScale(
  [low, high]: readonly [number, number],
  [start, end]: readonly [number, number],
): LinearScale {
  const place = (value: number) => {
    const share = (value - low) / (high - low)
    return start * (1 - share) + end * share
  }
  return Object.assign(place, { ticks: (count: number) => ticks(low, high, count) })
}
