import type { EmmetropicCurve } from "../../evidence/types.js"
import { say } from "../say.js"
import { shownAge } from "./rows-at-age.js"

/** A length or a growth in mm, or a sentence that says why there is none. */
export type EmmetropicAnswer = { readonly mm: number } | { readonly refused: string }

/**
 * Mean axial length (mm) of emmetropic eyes at an age: asymptote - span exp(-rate age). The equation itself is
 * evaluated; its printed table is not interpolated. Refused outside the ages of the curve, never extrapolated.
 *
 * @example
 * emmetropicLength({ ageYears: 8, curve }) // => { mm: 23.0854 } with the published curve
 */
export function emmetropicLength({
  ageYears,
  curve,
}: {
  ageYears: number
  curve: EmmetropicCurve
}): EmmetropicAnswer {
  const refused = outsideCurve(ageYears, curve)
  return refused === null ? { mm: lengthMm(ageYears, curve) } : { refused }
}

/**
 * Growth (mm) of the emmetropic mean from one age to another. A mean: no centile of growth is published with it.
 *
 * @example
 * emmetropicGrowth({ fromAgeYears: 8, toAgeYears: 9, curve }) // => { mm: 0.1326 } with the published curve
 */
export function emmetropicGrowth({
  fromAgeYears,
  toAgeYears,
  curve,
}: {
  fromAgeYears: number
  toAgeYears: number
  curve: EmmetropicCurve
}): EmmetropicAnswer {
  const refused = outsideCurve(fromAgeYears, curve) ?? outsideCurve(toAgeYears, curve)
  return refused === null ? { mm: lengthMm(toAgeYears, curve) - lengthMm(fromAgeYears, curve) } : { refused }
}

function lengthMm(ageYears: number, { asymptoteMm, spanMm, ratePerYear }: EmmetropicCurve): number {
  return asymptoteMm - spanMm * Math.exp(-ratePerYear * ageYears)
}

function outsideCurve(ageYears: number, curve: EmmetropicCurve): string | null {
  const { id, youngestAgeYears, oldestAgeYears } = curve
  if (ageYears >= youngestAgeYears && ageYears <= oldestAgeYears) return null
  return say("the emmetropic curve {id} covers {youngest} to {oldest} years; age {age} lies outside", {
    id,
    youngest: youngestAgeYears,
    oldest: oldestAgeYears,
    age: shownAge(ageYears),
  })
}
