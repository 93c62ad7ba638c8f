import type { OnsetCutOff } from "../../evidence/types.js"

/** A cut-off that was read for the child's age, and on which side of it the eye is. */
export interface CutOffAnswer {
  readonly cutOff: OnsetCutOff
  /** The child's figure that is compared, D. */
  readonly valueD: number
  /** `between` where the study tried several cut-offs and the eye is past some of them. */
  readonly side: "at-risk" | "between" | "beyond"
}

/**
 * The cut-offs read for an age in completed years, each with the side on which a cycloplegic refraction (D, the more
 * myopic eye) stands. Those whose own text was read come first. A side is a group of children, never a forecast of one.
 *
 * @example
 * cutOffsAt({ cutOffs, age: 9, sphereD: 0.25, equivalentD: 0.25 })[0]?.side // => "at-risk"
 */
export function cutOffsAt({
  cutOffs,
  age,
  sphereD,
  equivalentD,
}: {
  readonly cutOffs: readonly OnsetCutOff[]
  readonly age: number
  readonly sphereD: number
  readonly equivalentD: number
}): readonly CutOffAnswer[] {
  return cutOffs
    .filter(({ youngestAge, oldestAge }) => age >= youngestAge && age <= oldestAge)
    .map((cutOff) => {
      const valueD = cutOff.quantity === "sphere" ? sphereD : equivalentD
      return { cutOff, valueD, side: sideOf(cutOff, valueD) }
    })
    .toSorted((a, b) => Number(a.cutOff.isSecondHand) - Number(b.cutOff.isSecondHand))
}

function sideOf({ lowD, highD, isAtCutOffAtRisk }: OnsetCutOff, valueD: number): CutOffAnswer["side"] {
  const isUnder = (cutOffD: number) => valueD < cutOffD || (isAtCutOffAtRisk && valueD === cutOffD)
  if (isUnder(lowD)) return "at-risk"
  return isUnder(highD) ? "between" : "beyond"
}
