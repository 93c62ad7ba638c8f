/** Amount from which a poison service says severe poisoning of a child is possible, mg (evidence: clinical, TOXINFO). */
export const CHILD_SEVERE_FROM_MG = 5

/**
 * Milligrams in a volume of a solution given in percent weight by volume: 1 % is 10 mg in 1 mL.
 *
 * @example
 * milligramsIn({ concentrationPercent: 0.05, volumeMl: 10 }) // => 5
 */
export function milligramsIn({
  concentrationPercent,
  volumeMl,
}: {
  concentrationPercent: number
  volumeMl: number
}): number {
  return concentrationPercent * 10 * volumeMl
}

/** Whether one bottle holds an amount with which a child could be severely poisoned. */
export function needsPoisonCaution(milligrams: number): boolean {
  // The hair of slack keeps 0.05 % in 10 mL, exactly 5 mg, from slipping under by rounding.
  return milligrams >= CHILD_SEVERE_FROM_MG - 1e-9
}
