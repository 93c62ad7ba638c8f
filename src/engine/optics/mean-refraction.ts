import { lensOfPowerVector, type PowerVector, powerVector } from "./power-vector.js"
import type { RefractionLike, SpheroCylinder } from "./sphero-cylinder.js"

/**
 * Mean of several readings of one eye, averaged as power vectors: axes 179 and 1 average to 180, never to 90.
 * In minus-cylinder form. Throws on an empty list, which has no mean.
 */
export function meanRefraction(readings: readonly RefractionLike[]): SpheroCylinder {
  return lensOfPowerVector(meanPowerVector(readings))
}

/** As `meanRefraction`, left as a power vector. */
export function meanPowerVector(readings: readonly RefractionLike[]): PowerVector {
  if (readings.length === 0) throw new RangeError("a mean needs at least one reading")
  const vectors = readings.map(powerVector)
  const mean = (component: keyof PowerVector) =>
    vectors.reduce((sum, vector) => sum + vector[component], 0) / vectors.length
  return { m: mean("m"), j0: mean("j0"), j45: mean("j45") }
}
