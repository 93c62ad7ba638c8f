import type { Reference } from "../../evidence/types.js"
import type { Sex } from "../course.js"
import { normalQuantile } from "../numeric/normal.js"
import { say } from "../say.js"
import { distributionAtAge } from "./distribution-at-age.js"

/**
 * The value (mm or dioptres, as the reference measures) at a centile in percent: what a centile curve is drawn from.
 * Refused outside the reference and beyond its outermost centile.
 */
export function valueAtCentile({
  centile,
  ageYears,
  sex,
  reference,
}: {
  centile: number
  ageYears: number
  sex: Sex
  reference: Reference
}): { readonly value: number } | { readonly refused: string } {
  const found = distributionAtAge({ reference, sex, ageYears })
  if ("refused" in found) return found
  const { lowest, highest, valueAt } = found.distribution
  const value = centile >= lowest && centile <= highest ? valueAt(normalQuantile(centile / 100)) : null
  if (value !== null) return { value }
  return {
    refused: say(
      "the reference {id} gives centiles {lowest} to {highest} for this age and sex; p{centile} lies outside",
      { id: reference.id, lowest, highest, centile },
    ),
  }
}
