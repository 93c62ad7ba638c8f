import { type Dioptres, dioptres } from "../units.js"
import { sphericalEquivalent } from "./spherical-equivalent.js"
import type { RefractionLike } from "./sphero-cylinder.js"

/**
 * Anisometropia: how far the spherical equivalents of the two eyes lie apart, never negative.
 *
 * @example
 * anisometropia({ right: { sphere: -2 }, left: { sphere: -3.5 } }) // => 1.5
 */
export function anisometropia({ right, left }: { right: RefractionLike; left: RefractionLike }): Dioptres {
  return dioptres(Math.abs(sphericalEquivalent(right) - sphericalEquivalent(left)))
}
