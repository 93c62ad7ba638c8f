import type { GrowthParameters } from "../../evidence/types.js"
import type { ExpectedGrowth } from "./natural-growth.js"
import type { Observation } from "./observations.js"
import type { TreatmentColumn } from "./treatment-columns.js"

/**
 * The Gaussian part of one child's growth (docs/architecture.md, "The growth model"):
 *
 *   L_e(t) = L0_e + m [ N(t) - sum_j w_j C_j(t) ] + d_e N(t) + wobble_e(t)
 *
 * N: natural growth since the first figure; C_j: the part of it under treatment j. Given m and w only the mean
 * depends on them, and linearly; the covariance never does. So it is factored once per child.
 */
export interface ChildModel {
  readonly observations: readonly Observation[]
  readonly columns: readonly TreatmentColumn[]
  readonly growth: ExpectedGrowth
  /** Age of the first figure: growth is counted from here. */
  readonly originAge: number
  readonly variances: Variances
}

interface Variances {
  readonly wobble: number
  readonly wobbleCorrelation: number
  readonly eyeDifference: number
}

/** A value of the length of an eye (mm) at an age, times a coefficient. Sums of these are what can be asked for. */
export interface LengthTerm {
  readonly eye: 0 | 1
  readonly ageYears: number
  readonly coefficient: number
}

// Where an eye starts is left open: SDs far beyond any child (10 mm, 20 D), so that the data alone decide.
const START_VARIANCE_LENGTH = 10 ** 2
const START_VARIANCE_REFRACTION = 20 ** 2
/** Only a point to measure from, so that numbers stay small; with the SD above it decides nothing. */
const START_LENGTH_MM = 24

export function childModel(input: {
  readonly observations: readonly Observation[]
  readonly columns: readonly TreatmentColumn[]
  readonly growth: ExpectedGrowth
  readonly parameters: GrowthParameters
}): ChildModel {
  const { values } = input.parameters
  return {
    observations: input.observations,
    columns: input.columns,
    growth: input.growth,
    originAge: input.observations[0]?.ageYears ?? 0,
    variances: {
      wobble: values.wobbleMmPerSqrtYear.value ** 2,
      wobbleCorrelation: values.wobbleCorrelationBetweenEyes.value,
      eyeDifference: values.eyeDifferenceSd.value ** 2,
    },
  }
}

/** N(t): natural growth from the origin to an age, mm. */
export const naturalSinceOrigin = (model: ChildModel, ageYears: number): number =>
  model.growth.cumulativeMm(ageYears) - model.growth.cumulativeMm(model.originAge)

/**
 * C_j(t): the part of natural growth since the origin that fell under a treatment, weighted by covered nights.
 * `endingAt` treats the column as stopped at that age, for forecasts without the treatment.
 */
export function exposedGrowth(
  model: ChildModel,
  column: TreatmentColumn,
  ageYears: number,
  endingAt = Number.POSITIVE_INFINITY,
): number {
  let sum = 0
  for (const { fromAge, toAge, share } of column.exposures) {
    const from = Math.max(fromAge, model.originAge)
    const to = Math.min(toAge, ageYears, endingAt)
    if (to > from) sum += share * (model.growth.cumulativeMm(to) - model.growth.cumulativeMm(from))
  }
  return sum
}

/** The figures measured from a common start, so that the columns below explain them. */
export const centred = (observation: Observation): number =>
  observation.kind === "length" ? observation.value - START_LENGTH_MM : observation.value
export const startLengthMm = START_LENGTH_MM

/** How growth shows in a figure: a millimetre is a millimetre of length, or -kappa dioptres. */
export const slope = (observation: Observation, dioptresPerMm: number): number =>
  observation.kind === "length" ? 1 : -dioptresPerMm

/** Covariance of the unexplained growth (lasting difference of the eye and wobble) of two eyes at two ages, mm^2. */
function growthCovariance(
  { variances, originAge }: ChildModel,
  a: { eye: number; ageYears: number; natural: number },
  b: { eye: number; ageYears: number; natural: number },
): number {
  const common = Math.max(0, Math.min(a.ageYears, b.ageYears) - originAge)
  return a.eye === b.eye
    ? variances.wobble * common + variances.eyeDifference * a.natural * b.natural
    : variances.wobble * variances.wobbleCorrelation * common
}

/** Covariance of two figures as entered, given m, w and kappa. `natural[i]` is N at figure i. */
export function figureCovariance(
  model: ChildModel,
  natural: ArrayLike<number>,
  dioptresPerMm: number,
  i: number,
  j: number,
): number {
  const a = model.observations[i] as Observation
  const b = model.observations[j] as Observation
  let sum =
    slope(a, dioptresPerMm) *
    slope(b, dioptresPerMm) *
    growthCovariance(
      model,
      { eye: a.eye, ageYears: a.ageYears, natural: natural[i] as number },
      { eye: b.eye, ageYears: b.ageYears, natural: natural[j] as number },
    )
  if (a.kind === b.kind) {
    if (a.eye === b.eye) sum += a.kind === "length" ? START_VARIANCE_LENGTH : START_VARIANCE_REFRACTION
    if (a.group >= 0 && a.group === b.group) sum += a.groupVariance
    if (a.visit === b.visit) sum += Math.sqrt(a.sharedVariance * b.sharedVariance)
  }
  return i === j ? sum + a.ownVariance : sum
}

/** Covariance of a sum of lengths with a figure, and of two sums of lengths. */
export function termsFigureCovariance(
  model: ChildModel,
  terms: readonly LengthTerm[],
  naturalOfTerms: readonly number[],
  natural: ArrayLike<number>,
  dioptresPerMm: number,
  i: number,
): number {
  const figure = model.observations[i] as Observation
  const point = { eye: figure.eye, ageYears: figure.ageYears, natural: natural[i] as number }
  let sum = 0
  terms.forEach((term, t) => {
    const grown = growthCovariance(
      model,
      { eye: term.eye, ageYears: term.ageYears, natural: naturalOfTerms[t] as number },
      point,
    )
    sum += term.coefficient * slope(figure, dioptresPerMm) * grown
    if (figure.kind === "length" && figure.eye === term.eye) sum += term.coefficient * START_VARIANCE_LENGTH
  })
  return sum
}

export function termsVariance(
  model: ChildModel,
  terms: readonly LengthTerm[],
  naturalOfTerms: readonly number[],
): number {
  let sum = 0
  terms.forEach((a, i) => {
    terms.forEach((b, j) => {
      const grown = growthCovariance(
        model,
        { eye: a.eye, ageYears: a.ageYears, natural: naturalOfTerms[i] as number },
        { eye: b.eye, ageYears: b.ageYears, natural: naturalOfTerms[j] as number },
      )
      sum += a.coefficient * b.coefficient * (grown + (a.eye === b.eye ? START_VARIANCE_LENGTH : 0))
    })
  })
  return sum
}
