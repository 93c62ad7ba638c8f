import {
  type ChildModel,
  centred,
  exposedGrowth,
  figureCovariance,
  naturalSinceOrigin,
  slope,
} from "./child-model.js"

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
  /** N at each figure, mm. */
  readonly natural: Float64Array
}

export function whiten(model: ChildModel, dioptresPerMm: number): Whitened {
  const rows = model.observations.length
  const columns = 2 + model.columns.length
  const factor = new Float64Array((rows * (rows + 1)) / 2)
  const values = new Float64Array(rows * columns)
  const natural = new Float64Array(rows)

  model.observations.forEach((figure, i) => {
    natural[i] = naturalSinceOrigin(model, figure.ageYears)
    const gain = slope(figure, dioptresPerMm)
    const at = i * columns
    values[at] = centred(figure)
    values[at + 1] = gain * (natural[i] as number)
    model.columns.forEach((column, j) => {
      values[at + 2 + j] = gain * exposedGrowth(model, column, figure.ageYears)
    })
  })

  for (let i = 0; i < rows; i++) {
    const rowStart = (i * (i + 1)) / 2
    for (let j = 0; j <= i; j++) {
      const otherStart = (j * (j + 1)) / 2
      let sum = figureCovariance(model, natural, dioptresPerMm, i, j)
      for (let p = 0; p < j; p++) {
        sum -= (factor[rowStart + p] as number) * (factor[otherStart + p] as number)
      }
      factor[rowStart + j] = i === j ? Math.sqrt(sum) : sum / (factor[otherStart + j] as number)
    }
    const pivot = factor[rowStart + i] as number
    for (let c = 0; c < columns; c++) {
      let sum = values[i * columns + c] as number
      for (let p = 0; p < i; p++) {
        sum -= (factor[rowStart + p] as number) * (values[p * columns + c] as number)
      }
      values[i * columns + c] = sum / pivot
    }
  }
  return { model, dioptresPerMm, rows, columns, factor, values, natural }
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
