import type { Finding, Lean } from "../assessment.js"
import type { Observation } from "../growth/observations.js"
import { type Posterior, posterior, withheldPrior } from "../growth/posterior.js"
import type { Study } from "../growth/study.js"
import type { TreatmentColumn } from "../growth/treatment-columns.js"
import { say, withDecimalSign } from "../say.js"
import { ADHERENCE_RULE, POOR_COVERAGE } from "../supply/definition.js"
import { fixed, percent } from "../words.js"
import { detectableChangeMm, startingFigure } from "./detectable-change.js"

/** The two hypotheses about the treatment, and how the child's own figures weigh them. */
export interface Weighing {
  readonly works: Posterior
  readonly doesNothing: Posterior
  readonly logRatio: number
}

export function weighing(study: Study): Weighing | null {
  if (!study.tested?.effect || lengthsUnder(study, study.tested).length === 0) return null
  const doesNothing = posterior(study.factored, withheldPrior(study.model, study.tested.key))
  return {
    works: study.posterior,
    doesNothing,
    logRatio: study.posterior.logEvidence - doesNothing.logEvidence,
  }
}

/** Wald's limits for the likelihood ratio. Source: Wald 1945, sequential tests of statistical hypotheses. */
export function waldLimits({ alpha, beta }: { alpha: number; beta: number }): {
  upper: number
  lower: number
} {
  return { upper: (1 - beta) / alpha, lower: beta / (1 - alpha) }
}

/** A ratio of 3 or more is "positive" evidence. Source: Kass and Raftery 1995. */
const LEAN_RATIO = 3

/**
 * Second question: is it the treatment?
 *
 * Wald's sequential probability ratio test on the child's own figures: the treatment withholds what the trials
 * report, against it withholds nothing, both integrated over pace, wobble, season and noise.
 *
 * It is asked of the treatment begun last, in whichever eye; the other eye is a witness of the child's pace. Nights
 * without it count as untreated, which no trial has put to the test, so figures against a treatment whose nights were
 * poorly covered are no verdict on it.
 */
export function finding(study: Study, weighed: Weighing | null): Omit<Finding, "earliestAnswer"> {
  const { upper, lower } = waldLimits(study.settings)
  const { tested } = study
  const open = { likelihoodRatio: null, lean: null, upper, lower }
  if (!tested) {
    return { state: "no-treatment", treatment: null, ...open, reasons: [say("no treatment has begun")] }
  }
  const cannot = { state: "cannot-tell-yet", treatment: tested.label } as const
  const notes = [...(tested.note ? [tested.note] : []), ...otherEye(study, tested)]
  if (!tested.effect) return { ...cannot, ...open, reasons: notes }
  if (study.myopia === "not-myopic") {
    return {
      ...cannot,
      ...open,
      reasons: [
        ...notes,
        say("no myopia before the treatment: the trials behind this test were of myopic children"),
      ],
    }
  }
  if (!weighed) return { ...cannot, ...open, reasons: [...notes, say("no length has been measured")] }

  const ratio = Math.exp(weighed.logRatio)
  const lean: Lean | null = ratio >= LEAN_RATIO ? "slowed" : ratio <= 1 / LEAN_RATIO ? "not-slowed" : null
  const isPoor = tested.coverage !== null && tested.coverage < POOR_COVERAGE
  const reasons = isPoor ? [...notes, poorlyCovered(study, tested, ratio < upper)] : notes
  const short = tooShort(study)
  if (short) {
    return { ...cannot, likelihoodRatio: ratio, lean: null, upper, lower, reasons: [...reasons, short] }
  }
  const figures = { treatment: tested.label, likelihoodRatio: ratio, upper, lower }
  if (ratio >= upper) return { state: "slowed", ...figures, lean: "slowed", reasons }
  if (ratio <= lower && isPoor) {
    return { ...cannot, ...figures, lean: "not-slowed", reasons: [...reasons, noVerdict()] }
  }
  if (ratio <= lower) return { state: "not-slowed", ...figures, lean: "not-slowed", reasons }
  return {
    state: "cannot-tell-yet",
    ...figures,
    lean,
    reasons: [
      ...reasons,
      say(
        "the figures fit both: {odds} : 1 {side, select, for {for} other {against}} an effect, {wanted} : 1 is asked for",
        {
          odds: fixed(ratio >= 1 ? ratio : 1 / ratio, 1),
          side: ratio >= 1 ? "for" : "against",
          wanted: inDigits(ratio >= 1 ? upper : 1 / lower),
        },
      ),
    ],
  }
}

const noVerdict = (): string =>
  say(
    "the figures speak against an effect, but with so many nights without a drop that is no verdict on the drops",
  )

function poorlyCovered({ course }: Study, { coverage }: TreatmentColumn, mayExplain: boolean): string {
  return say(
    "only {share} of nights had a bottle in date{told, select, yes { and were not reported missed} other {}} (proportion of days covered since the start; {rule}){explains, select, yes {: missed nights may explain what is seen} other {}}",
    {
      share: percent(coverage as number),
      told: (course.missedNights ?? []).length > 0 ? "yes" : "no",
      rule: say(ADHERENCE_RULE),
      explains: mayExplain ? "yes" : "no",
    },
  )
}

/** Where the eyes are not on the same treatment: which one is asked about, and what the other eye has. */
function otherEye({ model, ageYears }: Study, tested: TreatmentColumn): string[] {
  if (tested.eye === undefined) return []
  const eye = tested.eye === 0 ? "right" : "left"
  const beside = model.columns.find((column) =>
    column.exposures.some(
      (exposure) =>
        exposure.eye === 1 - tested.eye! && exposure.fromAge <= ageYears && ageYears < exposure.toAge,
    ),
  )
  return [
    beside
      ? say(
          "asked of the {eye, select, right {right eye, whose treatment began last; the left} other {left eye, whose treatment began last; the right}} eye has {treatment}",
          { eye, treatment: beside.name },
        )
      : say(
          "asked of the {eye, select, right {right eye, the only one treated; the left} other {left eye, the only one treated; the right}} eye shows the child's own pace",
          { eye },
        ),
  ]
}

/** Lengths of the eyes that were ever given a treatment. */
export const lengthsUnder = (
  { lengths }: Pick<Study, "lengths">,
  { eye }: TreatmentColumn,
): readonly Observation[] => (eye === undefined ? lengths : lengths.filter((figure) => figure.eye === eye))

/** No finding before the eye, untreated, would have grown by more than the instrument can tell. */
function tooShort(study: Study): string | null {
  const { tested } = study
  if (!tested) return null
  const lengths = lengthsUnder(study, tested)
  const last = lengths.at(-1)
  if (!last) return null
  const sameEye = lengths.filter((figure) => figure.eye === last.eye)
  if (sameEye.length < 2) return say("only one length has been measured")
  const naturalMm = watchedMm(study, tested, last.ageYears)
  const first = startingFigure(sameEye, tested.startAge)
  const detectable = detectableChangeMm({ first, last, parameters: study.evidence.growth })
  if (naturalMm >= detectable) return null
  return say(
    "too early: untreated, the eye would have grown {natural} mm since the start, less than the {detectable} mm that can be told",
    { natural: fixed(naturalMm), detectable: fixed(detectable) },
  )
}

/**
 * Natural growth (mm) over the time that a treatment was prescribed and the eye was watched, up to an age. Missed
 * nights do not shorten it: all that was prescribed counts.
 */
export function watchedMm({ natural, model }: Study, { stretches }: TreatmentColumn, toAge: number): number {
  return stretches.reduce((sum, [from, to]) => {
    const [start, end] = [Math.max(from, model.originAge), Math.min(to, toAge)]
    return end > start ? sum + natural.cumulativeMm(end) - natural.cumulativeMm(start) : sum
  }, 0)
}

const inDigits = (odds: number): string =>
  withDecimalSign(odds.toFixed(Number.isInteger(Number(odds.toFixed(6))) ? 0 : 1))
