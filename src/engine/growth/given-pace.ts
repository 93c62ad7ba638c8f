import type { Gram } from "./whiten.js"

/** Prior of each withheld fraction; an SD of 0 fixes it, as the hypothesis "it does nothing" does. */
export interface WithheldPrior {
  readonly mean: readonly number[]
  readonly sd: readonly number[]
}

/** With the pace given, the withheld fractions are Gaussian: likelihood with them integrated out, and their posterior. */
export interface GivenPace {
  readonly logLikelihood: number
  readonly mean: readonly number[]
  /** Posterior covariance, row by row. */
  readonly covariance: readonly number[]
}

const LOG_TWO_PI = Math.log(2 * Math.PI)

/**
 * The whitened figures are y = m N - m sum_j w_j C_j + e, e standard normal. With w_j ~ N(mean, sd^2) the
 * fractions enter linearly once m is given, so they are integrated in closed form for any number of treatments:
 * B = I + m^2 D C'C D, b = -m D C'r, log p = -(n log 2 pi + log|V| + log|B| + r'r - b'B^-1 b) / 2,
 * r the residual at the prior means and D their SDs.
 */
export function givenPace({
  gram,
  multiple,
  prior,
}: {
  gram: Gram
  multiple: number
  prior: WithheldPrior
}): GivenPace {
  const { products: g, size } = gram
  const k = size - 2
  // Residual at prior means: y - m N + m sum mu_j C_j, as weights on the Gram's columns.
  const weights = [1, -multiple, ...prior.mean.map((mean) => multiple * mean)]
  let square = 0
  for (let a = 0; a < size; a++) {
    for (let b = 0; b < size; b++) {
      square += (weights[a] as number) * (weights[b] as number) * (g[a * size + b] as number)
    }
  }
  const base = gram.rows * LOG_TWO_PI + gram.logDeterminant
  if (k === 0) return { logLikelihood: -0.5 * (base + square), mean: [], covariance: [] }

  const right = new Array<number>(k)
  const b = new Array<number>(k * k)
  for (let i = 0; i < k; i++) {
    let cross = 0
    for (let a = 0; a < size; a++) cross += (weights[a] as number) * (g[(i + 2) * size + a] as number)
    right[i] = -multiple * (prior.sd[i] as number) * cross
    for (let j = 0; j < k; j++) {
      b[i * k + j] =
        (i === j ? 1 : 0) +
        multiple *
          multiple *
          (prior.sd[i] as number) *
          (prior.sd[j] as number) *
          (g[(i + 2) * size + (j + 2)] as number)
    }
  }
  const { inverse, logDeterminant } = invert(b, k)
  const shift = new Array<number>(k).fill(0)
  let gain = 0
  for (let i = 0; i < k; i++) {
    for (let j = 0; j < k; j++) {
      shift[i] = (shift[i] as number) + (inverse[i * k + j] as number) * (right[j] as number)
    }
    gain += (shift[i] as number) * (right[i] as number)
  }
  return {
    logLikelihood: -0.5 * (base + logDeterminant + square - gain),
    mean: shift.map((s, i) => (prior.mean[i] as number) + (prior.sd[i] as number) * s),
    covariance: inverse.map(
      (v, at) => v * (prior.sd[Math.floor(at / k)] as number) * (prior.sd[at % k] as number),
    ),
  }
}

// Gauss-Jordan without pivoting: the matrix is the identity plus a positive one, so no pivot falls below 1.
function invert(matrix: readonly number[], k: number): { inverse: number[]; logDeterminant: number } {
  const a = [...matrix]
  const inverse = new Array<number>(k * k).fill(0)
  for (let i = 0; i < k; i++) inverse[i * k + i] = 1
  let logDeterminant = 0
  for (let p = 0; p < k; p++) {
    const pivot = a[p * k + p] as number
    logDeterminant += Math.log(pivot)
    for (let j = 0; j < k; j++) {
      a[p * k + j] = (a[p * k + j] as number) / pivot
      inverse[p * k + j] = (inverse[p * k + j] as number) / pivot
    }
    for (let i = 0; i < k; i++) {
      if (i === p) continue
      const factor = a[i * k + p] as number
      if (factor === 0) continue
      for (let j = 0; j < k; j++) {
        a[i * k + j] = (a[i * k + j] as number) - factor * (a[p * k + j] as number)
        inverse[i * k + j] = (inverse[i * k + j] as number) - factor * (inverse[p * k + j] as number)
      }
    }
  }
  return { inverse, logDeterminant }
}
