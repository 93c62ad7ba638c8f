import type { GrowthParameters } from "../../evidence/types.js"
import type { Observation } from "../growth/observations.js"

/**
 * Smallest change of length between two visits that stands out from the noise, mm: 1.96 times the SD of the
 * difference (the minimum detectable change of repeatability studies), with the instrument's change added.
 *
 * @example
 * // same optical biometer, usual readings: 1.96 x sqrt(2) x 0.025 = 0.069 mm
 */
export function detectableChangeMm({
  first,
  last,
  parameters,
}: {
  first: Observation
  last: Observation
  parameters: GrowthParameters
}): number {
  const changed = first.group === last.group ? 0 : parameters.values.deviceChangeSdMm.value ** 2
  return 1.96 * Math.sqrt(first.ownVariance + last.ownVariance + changed)
}

/** The figure an interval is measured from: the last of one eye up to its start (give or take a few days), else the first. */
export function startingFigure(figures: readonly Observation[], fromAge: number): Observation {
  return (figures.findLast((figure) => figure.ageYears <= fromAge + START_LEEWAY_YEARS) ??
    figures[0]) as Observation
}

const START_LEEWAY_YEARS = 14 / 365.25
