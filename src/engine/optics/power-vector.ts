import { type RefractionLike, type SpheroCylinder, spheroCylinder } from "./sphero-cylinder.js"

/** A refraction as a sum of a sphere M and two cross-cylinders J0 and J45, all in dioptres. */
export interface PowerVector {
  readonly m: number
  readonly j0: number
  readonly j45: number
}

/**
 * Thibos, Wheeler and Horner 1997: M = S + C/2, J0 = -(C/2) cos 2a, J45 = -(C/2) sin 2a. Both signs of cylinder
 * give the same vector, and vectors, unlike axes, may be added and averaged.
 *
 * @example
 * powerVector({ sphere: -3, cylinder: -1, axis: 180 }) // => { m: -3.5, j0: 0.5, j45: 0 }
 */
export function powerVector(refraction: RefractionLike): PowerVector {
  const { sphere, cylinder, axis } = spheroCylinder(refraction)
  const direction = doubledDirection(axis)
  // Adding 0 turns a minus zero into a plain one, so that no "-0" is ever printed.
  return {
    m: sphere + cylinder / 2 + 0,
    j0: (-cylinder / 2) * direction.cos + 0,
    j45: (-cylinder / 2) * direction.sin + 0,
  }
}

/**
 * The lens of a power vector, in minus-cylinder form: C = -2 sqrt(J0^2 + J45^2), S = M - C/2,
 * axis = atan2(J45, J0) / 2.
 *
 * @example
 * lensOfPowerVector({ m: -3.5, j0: 0.5, j45: 0 }) // => { sphere: -3, cylinder: -1, axis: 180 }
 */
export function lensOfPowerVector({ m, j0, j45 }: PowerVector): SpheroCylinder {
  const cylinder = -2 * Math.hypot(j0, j45)
  const axis = (Math.atan2(j45, j0) * 90) / Math.PI
  return spheroCylinder({ sphere: m - cylinder / 2, cylinder, axis })
}

// Quarter turns are exact: cos(2 x 180 degrees) through radians would leave 1e-16 in a component that is zero.
function doubledDirection(axis: number): { cos: number; sin: number } {
  if (axis % 45 === 0) {
    const quarter = (axis / 45) % 4
    return { cos: [1, 0, -1, 0][quarter]!, sin: [0, 1, 0, -1][quarter]! }
  }
  const angle = (axis * Math.PI) / 90
  return { cos: Math.cos(angle), sin: Math.sin(angle) }
}
