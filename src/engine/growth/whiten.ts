import {
  type ChildModel,
  centred,
  exposedGrowth,
  figureCovariances,
  isForBothEyes,
  type Places,
  placesOf,
  slope,
} from "./child-model.js"

import type { Observation } from "./observations.js"
import type { TreatmentColumn } from "./treatment-columns.js"

/**
 * The figures of one child with their correlation taken out: L x = column, for the columns
 * [ y | natural growth | exposed growth of treatment 1 .. k ], L the Cholesky factor of their covariance.
 *
 * Rows are appended in order of age, so the first r rows are the whitened figures of the first r alone: one
 * pass serves every earlier moment too (what was known then) and every later one (what a review would add).
 */
export interface Whitened {
  readonly model: ChildModel
  readonly dioptresPerMm: number
  readonly rows: number
  readonly columns: number
  /** Cholesky factor, row i at i (i + 1) / 2. */
  readonly factor: Float64Array
  /** Whitened columns, row by row: y, N, C_1 .. C_k. */
  readonly values: Float64Array
  readonly places: Places
}

/** What every node of kappa shares: columns before their slopes, and the covariance in its two parts. */
export interface Unwhitened {
  readonly model: ChildModel
  readonly places: Places
  readonly columns: number
  /** Per figure: y, N, C_1 .. C_k, growth in mm whatever the figure. */
  readonly values: Float64Array
  readonly growth: Float64Array
  readonly rest: Float64Array
}

export function unwhitened(model: ChildModel): Unwhitened {
  const columns = 2 + model.columns.length
  const places = placesOf(model, model.observations)
  const values = new Float64Array(model.observations.length * columns)
  const shared = model.columns.map(isForBothEyes)
  for (let i = 0; i < model.observations.length; i++) {
    const figure = model.observations[i] as Observation
    const at = i * columns
    values[at] = centred(figure)
    values[at + 1] = places.natural[i] as number
    const before = model.observations[i - 1]
    const sameAge = before?.ageYears === figure.ageYears
    for (let j = 0; j < model.columns.length; j++) {
      values[at + 2 + j] =
        sameAge && (shared[j] || before.eye === figure.eye)
          ? (values[at - columns + 2 + j] as number)
          : exposedGrowth(model, model.columns[j] as TreatmentColumn, figure.ageYears, { eye: figure.eye })
    }
  }
  return { model, places, columns, values, ...figureCovariances(model, places) }
}

export function whiten(raw: Unwhitened, dioptresPerMm: number): Whitened {
  const { model, places, columns, growth, rest } = raw
  const rows = model.observations.length
  const factor = new Float64Array(growth.length)
  const values = raw.values.slice()
  const gains = new Float64Array(rows)
  for (let i = 0; i < rows; i++) gains[i] = slope(model.observations[i] as Observation, dioptresPerMm)

  for (let i = 0; i < rows; i++) {
    const rowStart = (i * (i + 1)) / 2
    const gain = gains[i] as number
    for (let j = 0; j <= i; j++) {
      const otherStart = (j * (j + 1)) / 2
      let sum =
        gain * (gains[j] as number) * (growth[rowStart + j] as number) + (rest[rowStart + j] as number)
      for (let p = 0; p < j; p++) {
        sum -= (factor[rowStart + p] as number) * (factor[otherStart + p] as number)
      }
      factor[rowStart + j] = i === j ? Math.sqrt(sum) : sum / (factor[otherStart + j] as number)
    }
    const pivot = factor[rowStart + i] as number
    const at = i * columns
    for (let c = 0; c < columns; c++) {
      let sum = (values[at + c] as number) * (c === 0 ? 1 : gain)
      for (let p = 0; p < i; p++) {
        sum -= (factor[rowStart + p] as number) * (values[p * columns + c] as number)
      }
      values[at + c] = sum / pivot
    }
  }
  return { model, dioptresPerMm, rows, columns, factor, values, places }
}

/** Solves L x = right for a vector as long as the figures (or a first part of them). */
export function forwardSolve(
  whitened: Whitened,
  right: Float64Array,
  rows: number = whitened.rows,
): Float64Array {
  const { factor } = whitened
  const out = new Float64Array(rows)
  for (let i = 0; i < rows; i++) {
    const start = (i * (i + 1)) / 2
    let sum = right[i] as number
    for (let p = 0; p < i; p++) sum -= (factor[start + p] as number) * (out[p] as number)
    out[i] = sum / (factor[start + i] as number)
  }
  return out
}

/** What is left of a child: inner products of the whitened columns, and the log determinant. */
export interface Gram {
  readonly rows: number
  /** (k + 2) x (k + 2), row by row, order y, N, C_1 .. C_k. */
  readonly products: Float64Array
  readonly size: number
  readonly logDeterminant: number
}

/** Gram matrix of the first `rows` figures. */
export function gram(whitened: Whitened, rows: number = whitened.rows): Gram {
  const size = whitened.columns
  const products = new Float64Array(size * size)
  let logDeterminant = 0
  for (let i = 0; i < rows; i++) {
    const at = i * size
    for (let a = 0; a < size; a++) {
      const left = whitened.values[at + a] as number
      for (let b = a; b < size; b++) {
        products[a * size + b] =
          (products[a * size + b] as number) + left * (whitened.values[at + b] as number)
      }
    }
    logDeterminant += 2 * Math.log(whitened.factor[(i * (i + 1)) / 2 + i] as number)
  }
  for (let a = 0; a < size; a++) {
    for (let b = 0; b < a; b++) products[a * size + b] = products[b * size + a] as number
  }
  return { rows, products, size, logDeterminant }
}
