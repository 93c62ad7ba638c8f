import { type Millimetres, millimetres } from "../units.js"

interface CorneaRadius {
  /** Radii of the flattest and the steepest meridian, mm. */
  readonly flat: number
  readonly steep: number
}

/** Mean radius of the cornea: the arithmetic mean of its two radii (not the radius of the mean power). */
export function meanCorneaRadius({ flat, steep }: CorneaRadius): Millimetres {
  return millimetres((flat + steep) / 2)
}

/**
 * AL/CR: axial length over mean radius of the cornea, without unit.
 *
 * @example
 * corneaRadiusRatio({ axialLengthMm: 23.4, corneaRadius: { flat: 7.9, steep: 7.7 } }) // => 3
 */
export function corneaRadiusRatio({
  axialLengthMm,
  corneaRadius,
}: {
  axialLengthMm: number
  corneaRadius: CorneaRadius
}): number {
  return axialLengthMm / meanCorneaRadius(corneaRadius)
}
