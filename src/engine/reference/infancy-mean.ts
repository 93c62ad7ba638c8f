import type { InfancyMean } from "../../evidence/types.js"
import type { Sex } from "../course.js"
import { say } from "../say.js"
import { shownAge } from "./rows-at-age.js"

/** The curves count their years from this age (Mutti 2018: T = age - 0.25). */
const FIRST_VISIT_AGE_YEARS = 0.25

/**
 * Mean axial length (mm) and mean refraction (dioptres) of infants and young children: evaluated from the published
 * equation and refused outside its ages, since its quadratic turns over later. Means without a spread: no centile.
 *
 * @example
 * infancyMeanAt({ ageYears: 3, sex: "male", curve }) // => { axialLengthMm: 21.62, sphericalEquivalentD: 1.21 }, rounded
 */
export function infancyMeanAt({
  ageYears,
  sex,
  curve,
}: {
  ageYears: number
  sex: Sex
  curve: InfancyMean
}): { readonly axialLengthMm: number; readonly sphericalEquivalentD: number } | { readonly refused: string } {
  const { id, youngestAgeYears, oldestAgeYears } = curve
  if (!(ageYears >= youngestAgeYears && ageYears <= oldestAgeYears)) {
    return {
      refused: say("the infancy curve {id} covers {youngest} to {oldest} years; age {age} lies outside", {
        id,
        youngest: youngestAgeYears,
        oldest: oldestAgeYears,
        age: shownAge(ageYears),
      }),
    }
  }
  const t = ageYears - FIRST_VISIT_AGE_YEARS
  const mean = (equation: InfancyMean["axialLengthMm"]) =>
    equation.intercept +
    (sex === "female" ? equation.girl : 0) +
    equation.fast * Math.exp(-equation.fastRatePerYear * t) +
    equation.linear * t +
    equation.quadratic * t * t
  return { axialLengthMm: mean(curve.axialLengthMm), sphericalEquivalentD: mean(curve.sphericalEquivalentD) }
}
