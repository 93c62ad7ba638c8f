import type { RefractionLike } from "./sphero-cylinder.js"

/**
 * Spherical equivalent refraction, dioptres: sphere plus half the cylinder. The axis does not enter.
 *
 * @example
 * sphericalEquivalent({ sphere: -2.25, cylinder: -0.5 }) // => -2.5
 */
export function sphericalEquivalent({ sphere, cylinder = 0 }: RefractionLike): number {
  return sphere + cylinder / 2
}
