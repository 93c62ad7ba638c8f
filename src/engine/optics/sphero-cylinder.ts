/** A refraction in dioptres and degrees, in either sign of cylinder. */
export interface SpheroCylinder {
  readonly sphere: number
  readonly cylinder: number
  /** Above 0 to 180. A sphere has no axis; it is written 180 so that equal lenses are equal values. */
  readonly axis: number
}

/** A refraction as a course file holds it: no cylinder means none, and only a cylinder needs an axis. */
export interface RefractionLike {
  readonly sphere: number
  readonly cylinder?: number | undefined
  readonly axis?: number | undefined
}

// Below this a cylinder is what rounding left of none, and its axis means nothing.
const NO_CYLINDER_D = 1e-9

/**
 * The full form of a refraction: cylinder 0 where none is given, axis brought into (0, 180].
 * Throws on a cylinder without an axis, which input checks must have caught.
 *
 * @example
 * spheroCylinder({ sphere: -3 }) // => { sphere: -3, cylinder: 0, axis: 180 }
 */
export function spheroCylinder({ sphere, cylinder = 0, axis }: RefractionLike): SpheroCylinder {
  if (Math.abs(cylinder) < NO_CYLINDER_D) return { sphere: sphere + 0, cylinder: 0, axis: 180 }
  if (axis === undefined) throw new RangeError(`cylinder without an axis: ${cylinder}`)
  return { sphere: sphere + 0, cylinder, axis: axisInRange(axis) }
}

/** The same direction written above 0 and up to 180 degrees. */
function axisInRange(axis: number): number {
  const turned = ((axis % 180) + 180) % 180
  return turned < 1e-9 ? 180 : turned
}
