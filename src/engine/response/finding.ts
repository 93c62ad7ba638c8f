import type { Finding, Lean } from "../assessment.js"
import { type Posterior, posterior, withheldPrior } from "../growth/posterior.js"
import type { Study } from "../growth/study.js"
import type { TreatmentColumn } from "../growth/treatment-columns.js"
import { detectableChangeMm, startingFigure } from "./detectable-change.js"

/** The two hypotheses about the treatment, and how the child's own figures weigh them. */
export interface Weighing {
  readonly works: Posterior
  readonly doesNothing: Posterior
  readonly logRatio: number
}

export function weighing(study: Study): Weighing | null {
  if (!study.tested?.effect || study.lengths.length === 0) return null
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
/** Below this share of nights the finding says that poor coverage may explain it (common practice, no source). */
const POOR_COVERAGE = 0.75

/**
 * Second question: is it the treatment?
 *
 * Wald's sequential probability ratio test on the child's own figures: the treatment withholds what the trials
 * report, against it withholds nothing, both integrated over pace, wobble, season and noise.
 */
export function finding(study: Study, weighed: Weighing | null): Omit<Finding, "earliestAnswer"> {
  const { upper, lower } = waldLimits(study.settings)
  const { tested } = study
  const open = { likelihoodRatio: null, lean: null, upper, lower }
  if (!tested) {
    return { state: "no-treatment", treatment: null, ...open, reasons: ["no treatment has begun"] }
  }
  const cannot = { state: "cannot-tell-yet", treatment: tested.label } as const
  const notes = tested.note ? [tested.note] : []
  if (!tested.effect) return { ...cannot, ...open, reasons: notes }
  if (study.myopia === "not-myopic") {
    return {
      ...cannot,
      ...open,
      reasons: [
        ...notes,
        "no myopia before the treatment: the trials behind this test were of myopic children",
      ],
    }
  }
  if (!weighed) return { ...cannot, ...open, reasons: [...notes, "no length has been measured"] }

  const ratio = Math.exp(weighed.logRatio)
  const lean: Lean | null = ratio >= LEAN_RATIO ? "slowed" : ratio <= 1 / LEAN_RATIO ? "not-slowed" : null
  const reasons = [...notes]
  if (tested.coverage !== null && tested.coverage < POOR_COVERAGE) {
    reasons.push(
      `only ${Math.round(100 * tested.coverage)} % of nights had a bottle in date: missed nights may explain what is seen`,
    )
  }
  const short = tooShort(study)
  if (short) {
    return { ...cannot, likelihoodRatio: ratio, lean: null, upper, lower, reasons: [...reasons, short] }
  }
  const figures = { treatment: tested.label, likelihoodRatio: ratio, upper, lower }
  if (ratio >= upper) return { state: "slowed", ...figures, lean: "slowed", reasons }
  if (ratio <= lower) return { state: "not-slowed", ...figures, lean: "not-slowed", reasons }
  return {
    state: "cannot-tell-yet",
    ...figures,
    lean,
    reasons: [
      ...reasons,
      `the figures fit both: ${ratio >= 1 ? ratio.toFixed(1) : (1 / ratio).toFixed(1)} : 1 ` +
        `${ratio >= 1 ? "for" : "against"} an effect, ${inDigits(ratio >= 1 ? upper : 1 / lower)} : 1 is asked for`,
    ],
  }
}

/** No finding before the eye, untreated, would have grown by more than the instrument can tell. */
function tooShort(study: Study): string | null {
  const { tested, lengths } = study
  const last = lengths.at(-1)
  if (!tested || !last) return null
  const sameEye = lengths.filter((figure) => figure.eye === last.eye)
  if (sameEye.length < 2) return "only one length has been measured"
  const naturalMm = watchedMm(study, tested, last.ageYears)
  const first = startingFigure(sameEye, tested.startAge)
  const detectable = detectableChangeMm({ first, last, parameters: study.evidence.growth })
  if (naturalMm >= detectable) return null
  return (
    `too early: untreated, the eye would have grown ${naturalMm.toFixed(2)} mm since the start, ` +
    `less than the ${detectable.toFixed(2)} mm that can be told`
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

const inDigits = (odds: number): string => odds.toFixed(Number.isInteger(Number(odds.toFixed(6))) ? 0 : 1)
