import type { Estimate } from "../assessment.js"
import type { Eye } from "../course.js"
import { EYES } from "../course.js"
import { eyeIndex } from "../growth/observations.js"
import type { Study } from "../growth/study.js"
import { type Mixture, mixtureCdf, mixtureMean, mixtureQuantile } from "../numeric/mixture.js"
import type { Outlook } from "./what-if.js"

/** A chance with the 95 % interval over what is not known of this child: the own pace and the treatment's effect. */
export interface ChanceEstimate {
  readonly chance: number
  readonly low95: number
  readonly high95: number
}

export interface By18 {
  /** Length of the longer eye at 18: median with the interval that 95 % of such children fall in, mm. */
  readonly lengthMm: Estimate
  /** Chance that the likelier eye, usually the longer one, is 26 mm or longer by 18. */
  readonly chance26mm: ChanceEstimate
}

/** Marks that the forecast uses as well (design, section 4). */
const LONG_EYE_MM = 26
export const BY_AGE_YEARS = 18

/** The eye with the longer last length. */
export function longerEye({ lengths }: Pick<Study, "lengths">): Eye {
  const [right, left] = EYES.map((eye) => lengths.findLast((figure) => figure.eye === eyeIndex(eye))?.value)
  return (left ?? 0) > (right ?? 0) ? "left" : "right"
}

export function by18(child: Study, outlook: Outlook): By18 {
  const eyes = [...new Set(child.lengths.map((figure) => figure.eye))]
  const all = eyes.map((eye) => {
    const length = outlook.lengthAt(eye, BY_AGE_YEARS)
    // Rounding of the sum of the parts may leave it a hair beyond 0 or 1.
    const chance = Math.min(1, Math.max(0, 1 - mixtureCdf(length, LONG_EYE_MM)))
    return { eye, length, chance }
  })
  const longer = all.find(({ eye }) => eye === eyeIndex(longerEye(child)))
  const likelier = all.toSorted((a, b) => b.chance - a.chance)[0]
  if (!longer || !likelier) throw new RangeError("a child without a length has no outlook")
  const { low95, high95 } = outlook.chanceOf({ ...likelier, ageYears: BY_AGE_YEARS, mm: LONG_EYE_MM })
  return {
    lengthMm: { mm: mixtureQuantile(longer.length, 0.5), ...interval95(longer.length) },
    chance26mm: { chance: likelier.chance, low95, high95 },
  }
}

/** Expected growth withheld, mm, with its 95 % interval over the child's pace and the treatment's effect. */
export function withheldMm(
  outlook: Outlook,
  span: { readonly fromAge: number; readonly toAge: number },
): Estimate {
  const withheld = outlook.withheld(span)
  return { mm: mixtureMean(withheld), ...interval95(withheld) }
}

const interval95 = (mixture: Mixture) => ({
  low95: mixtureQuantile(mixture, 0.025),
  high95: mixtureQuantile(mixture, 0.975),
})
