import { type RefractionLike, type SpheroCylinder, spheroCylinder } from "./sphero-cylinder.js"

/**
 * The same lens with the other sign of cylinder: sphere S + C, cylinder -C, axis turned by 90 degrees.
 *
 * @example
 * transposed({ sphere: -3, cylinder: -1, axis: 180 }) // => { sphere: -4, cylinder: 1, axis: 90 }
 */
export function transposed(refraction: RefractionLike): SpheroCylinder {
  const { sphere, cylinder, axis } = spheroCylinder(refraction)
  return spheroCylinder({ sphere: sphere + cylinder, cylinder: -cylinder, axis: axis + 90 })
}

/** The lens in minus-cylinder form, whichever form it came in. */
export function minusCylinder(refraction: RefractionLike): SpheroCylinder {
  const lens = spheroCylinder(refraction)
  return lens.cylinder > 0 ? transposed(lens) : lens
}
