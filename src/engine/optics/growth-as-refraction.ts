import { type Dioptres, dioptres, type Millimetres, millimetres } from "../units.js"

/**
 * The change of refraction that a growth stands for: minus growth times a factor that the caller takes from evidence.
 * Longer is more myopic, so growth gives a negative change. A mean over eyes, not a law of one eye.
 *
 * @example
 * refractionChangeOfGrowth({ growthMm: 0.05, dioptresPerMm: 2.4 }) // => -0.12
 */
export function refractionChangeOfGrowth({
  growthMm,
  dioptresPerMm,
}: {
  growthMm: number
  dioptresPerMm: number
}): Dioptres {
  return dioptres(-growthMm * positive(dioptresPerMm))
}

/** The growth that a change of refraction (dioptres, negative = more myopic) stands for. */
export function growthOfRefractionChange({
  refractionChangeD,
  dioptresPerMm,
}: {
  refractionChangeD: number
  dioptresPerMm: number
}): Millimetres {
  return millimetres(-refractionChangeD / positive(dioptresPerMm))
}

function positive(dioptresPerMm: number): number {
  if (!(dioptresPerMm > 0)) throw new RangeError(`dioptres per mm must be above 0: ${dioptresPerMm}`)
  return dioptresPerMm
}
