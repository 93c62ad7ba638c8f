import { symmetricEigen } from "../numeric/symmetric-eigen.js"
import type { Gram } from "./whiten.js"

/** Prior of each withheld fraction; an SD of 0 fixes it, as the hypothesis "it does nothing" does. */
export interface WithheldPrior {
  readonly mean: readonly number[]
  readonly sd: readonly number[]
}

/** With the pace given, the withheld fractions are Gaussian: this is their posterior. */
export interface WithheldGivenPace {
  readonly mean: readonly number[]
  /** Covariance, row by row. */
  readonly covariance: readonly number[]
}

export interface GivenPace {
  /** Log likelihood of the figures at a multiple of natural growth, withheld fractions integrated out. */
  readonly logLikelihood: (multiple: number) => number
  readonly withheld: (multiple: number) => WithheldGivenPace
}

const LOG_TWO_PI = Math.log(2 * Math.PI)

/**
 * The whitened figures are y = m N - m sum_j w_j C_j + e, e standard normal. With w_j ~ N(mu_j, sd_j^2) the
 * fractions enter linearly once m is given, so they are integrated in closed form for any number of treatments.
 *
 * With the prior means folded in, N' = N - sum mu_j C_j, and D = diag(sd), the fractions' part of the likelihood is
 * B = I + m^2 D C'C D. Its eigenvectors do not depend on m, so one small eigenproblem serves every node:
 * log p = -(n log 2 pi + log|V| + |y - m N'|^2 + sum_i [ log(1 + m^2 l_i) - m^2 (a_i - m b_i)^2 / (1 + m^2 l_i) ]) / 2.
 */
export function givenPace(gram: Gram, prior: WithheldPrior): GivenPace {
  const { products: g, size } = gram
  const k = size - 2
  const at = (a: number, b: number) => g[a * size + b] as number
  const mu = prior.mean
  const sd = prior.sd

  const withN = new Array<number>(k)
  for (let i = 0; i < k; i++) {
    let sum = at(1, i + 2)
    for (let j = 0; j < k; j++) sum -= (mu[j] as number) * at(j + 2, i + 2)
    withN[i] = sum
  }
  const yy = at(0, 0)
  let yN = at(0, 1)
  let nn = at(1, 1)
  for (let j = 0; j < k; j++) {
    yN -= (mu[j] as number) * at(0, j + 2)
    nn -= (mu[j] as number) * (at(1, j + 2) + (withN[j] as number))
  }

  const scaled = new Array<number>(k * k)
  for (let i = 0; i < k; i++) {
    for (let j = 0; j < k; j++) scaled[i * k + j] = (sd[i] as number) * (sd[j] as number) * at(i + 2, j + 2)
  }
  const { values: lambda, vectors } = symmetricEigen(scaled, k)
  const a = new Array<number>(k).fill(0)
  const b = new Array<number>(k).fill(0)
  for (let e = 0; e < k; e++) {
    for (let i = 0; i < k; i++) {
      const weight = (vectors[i * k + e] as number) * (sd[i] as number)
      a[e] = (a[e] as number) + weight * at(0, i + 2)
      b[e] = (b[e] as number) + weight * (withN[i] as number)
    }
  }
  const base = gram.rows * LOG_TWO_PI + gram.logDeterminant + yy

  return {
    logLikelihood: (m) => {
      let sum = base - 2 * m * yN + m * m * nn
      for (let e = 0; e < k; e++) {
        const grown = 1 + m * m * (lambda[e] as number)
        const cross = m * ((a[e] as number) - m * (b[e] as number))
        sum += Math.log(grown) - (cross * cross) / grown
      }
      return -0.5 * sum
    },
    withheld: (m) => {
      const mean = [...mu]
      const covariance = new Array<number>(k * k).fill(0)
      for (let e = 0; e < k; e++) {
        const grown = 1 + m * m * (lambda[e] as number)
        const shift = (-m * ((a[e] as number) - m * (b[e] as number))) / grown
        for (let i = 0; i < k; i++) {
          const left = (sd[i] as number) * (vectors[i * k + e] as number)
          mean[i] = (mean[i] as number) + left * shift
          for (let j = 0; j < k; j++) {
            const right = (sd[j] as number) * (vectors[j * k + e] as number)
            covariance[i * k + j] = (covariance[i * k + j] as number) + (left * right) / grown
          }
        }
      }
      return { mean, covariance }
    },
  }
}
