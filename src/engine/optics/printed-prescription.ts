import type { RefractionLike } from "./sphero-cylinder.js"
import { minusCylinder } from "./transposed.js"

/**
 * A refraction as it is written on paper: minus-cylinder form, to the quarter dioptre, axis to the whole degree.
 *
 * - a lens with cylinder: "-2.25 -0.50 x 180", and "plano -0.50 x 90" when the sphere is 0;
 * - a sphere: "-3.00 DS";
 * - no power at all: "plano".
 *
 * Sphere and cylinder are rounded each on its own; halfway goes toward plus (common practice, no source).
 * `parsePrescription` reads every text this writes.
 *
 * @example
 * printedPrescription({ sphere: -2.75, cylinder: 0.5, axis: 90 }) // => "-2.25 -0.50 x 180"
 */
export function printedPrescription(refraction: RefractionLike): string {
  const lens = minusCylinder(refraction)
  const [sphere, cylinder] = [quarters(lens.sphere), quarters(lens.cylinder)]
  if (cylinder === 0) return sphere === 0 ? "plano" : `${signed(sphere)} DS`
  const axis = Math.round(lens.axis)
  return `${sphere === 0 ? "plano" : signed(sphere)} ${signed(cylinder)} x ${axis === 0 ? 180 : axis}`
}

// The small addition keeps a tie a tie after arithmetic has left 1e-15 below it.
function quarters(power: number): number {
  return Math.round(power * 4 + 1e-9) / 4
}

function signed(power: number): string {
  return `${power < 0 ? "-" : "+"}${Math.abs(power).toFixed(2)}`
}
