import type { GrowthParameters } from "../../evidence/types.js"
import type { ExpectedGrowth } from "./natural-growth.js"
import type { Observation } from "./observations.js"
import type { TreatmentColumn } from "./treatment-columns.js"

/**
 * The Gaussian part of one child's growth (docs/architecture.md, "The growth model"):
 *
 *   L_e(t) = L0_e + m [ N(t) - sum_j w_j C_je(t) ] + d_e N(t) + wobble_e(t)
 *
 * N: natural growth since the first figure; C_je: the part of it under treatment j in that eye. Given m and w only the mean
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

// Where an eye starts is left open: SDs far beyond any child (30 mm, 60 D), so that the data alone decide.
const START_VARIANCE_LENGTH = 30 ** 2
const START_VARIANCE_REFRACTION = 60 ** 2
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
 * C_j(t): the part of natural growth since the origin of an eye that fell under a treatment, weighted by the nights
 * with it; of the mean of both eyes when no eye is named.
 * `endingAt` treats the column as stopped at that age, for forecasts without the treatment.
 */
export function exposedGrowth(
  model: ChildModel,
  column: TreatmentColumn,
  ageYears: number,
  { eye, endingAt = Number.POSITIVE_INFINITY }: { eye?: 0 | 1; endingAt?: number | undefined } = {},
): number {
  let sum = 0
  for (const { fromAge, toAge, share, eye: exposed } of column.exposures) {
    if (exposed !== undefined && eye !== undefined && exposed !== eye) continue
    const from = Math.max(fromAge, model.originAge)
    const to = Math.min(toAge, ageYears, endingAt)
    if (to <= from) continue
    const grown = share * (model.growth.cumulativeMm(to) - model.growth.cumulativeMm(from))
    sum += exposed !== undefined && eye === undefined ? grown / 2 : grown
  }
  return sum
}

/** Whether a treatment is the same for both eyes at every age. */
export const isForBothEyes = (column: TreatmentColumn): boolean =>
  column.exposures.every(({ eye }) => eye === undefined)

/** The figures measured from a common start, so that the columns below explain them. */
export const centred = (observation: Observation): number =>
  observation.kind === "length" ? observation.value - START_LENGTH_MM : observation.value
export const startLengthMm = START_LENGTH_MM

/** How growth shows in a figure: a millimetre is a millimetre of length, or -kappa dioptres. */
export const slope = (observation: Observation, dioptresPerMm: number): number =>
  observation.kind === "length" ? 1 : -dioptresPerMm

/** Places at which lengths are asked for or were measured: eye, years and natural growth since the origin. */
export interface Places {
  readonly eye: Uint8Array
  readonly years: Float64Array
  readonly natural: Float64Array
}

export function placesOf(
  model: ChildModel,
  points: readonly { readonly eye: 0 | 1; readonly ageYears: number }[],
): Places {
  const size = points.length
  const places = { eye: new Uint8Array(size), years: new Float64Array(size), natural: new Float64Array(size) }
  const origin = model.growth.cumulativeMm(model.originAge)
  for (let i = 0; i < size; i++) {
    const { eye, ageYears } = points[i] as { eye: 0 | 1; ageYears: number }
    places.eye[i] = eye
    places.years[i] = Math.max(0, ageYears - model.originAge)
    // Two eyes of a visit share their natural growth.
    places.natural[i] =
      i > 0 && points[i - 1]?.ageYears === ageYears
        ? (places.natural[i - 1] as number)
        : model.growth.cumulativeMm(ageYears) - origin
  }
  return places
}

/** Covariance of the unexplained growth (lasting difference of the eye, wobble) at two places, mm^2. */
function growthCovariance(variances: Variances, a: Places, i: number, b: Places, j: number): number {
  const wobble = variances.wobble * Math.min(a.years[i] as number, b.years[j] as number)
  return a.eye[i] === b.eye[j]
    ? wobble + variances.eyeDifference * (a.natural[i] as number) * (b.natural[j] as number)
    : wobble * variances.wobbleCorrelation
}

/**
 * Covariance of the figures given pace, effects and kappa, in two parts, rows of the lower triangle: growth, which
 * shows in a figure by its slope, and the rest (where an eye starts, offsets, noise), which does not. Kappa changes
 * slopes only, so one pair of triangles serves all its nodes.
 */
export function figureCovariances(
  model: ChildModel,
  places: Places,
): { growth: Float64Array; rest: Float64Array } {
  const figures = model.observations
  const growth = new Float64Array((figures.length * (figures.length + 1)) / 2)
  const rest = new Float64Array(growth.length)
  for (let i = 0, at = 0; i < figures.length; i++) {
    const a = figures[i] as Observation
    for (let j = 0; j <= i; j++, at++) {
      const b = figures[j] as Observation
      growth[at] = growthCovariance(model.variances, places, i, places, j)
      if (a.kind !== b.kind) continue
      let sum = i === j ? a.ownVariance : 0
      if (a.eye === b.eye) sum += a.kind === "length" ? START_VARIANCE_LENGTH : START_VARIANCE_REFRACTION
      if (a.group >= 0 && a.group === b.group) sum += a.groupVariance
      if (a.visit === b.visit) sum += Math.sqrt(a.sharedVariance * b.sharedVariance)
      rest[at] = sum
    }
  }
  return { growth, rest }
}

/** Covariance of a sum of lengths with each of the first `rows` figures. */
export function termsFigureCovariance(input: {
  model: ChildModel
  terms: readonly LengthTerm[]
  ofTerms: Places
  ofFigures: Places
  dioptresPerMm: number
  rows: number
}): Float64Array {
  const { model, terms, ofTerms, ofFigures, dioptresPerMm, rows } = input
  const out = new Float64Array(rows)
  for (let i = 0; i < rows; i++) {
    const figure = model.observations[i] as Observation
    const gain = slope(figure, dioptresPerMm)
    let sum = 0
    for (let t = 0; t < terms.length; t++) {
      const { coefficient, eye } = terms[t] as LengthTerm
      sum += coefficient * gain * growthCovariance(model.variances, ofTerms, t, ofFigures, i)
      if (figure.kind === "length" && figure.eye === eye) sum += coefficient * START_VARIANCE_LENGTH
    }
    out[i] = sum
  }
  return out
}

export function termsVariance(model: ChildModel, terms: readonly LengthTerm[], ofTerms: Places): number {
  let sum = 0
  terms.forEach((a, i) => {
    terms.forEach((b, j) => {
      const grown = growthCovariance(model.variances, ofTerms, i, ofTerms, j)
      sum += a.coefficient * b.coefficient * (grown + (a.eye === b.eye ? START_VARIANCE_LENGTH : 0))
    })
  })
  return sum
}
