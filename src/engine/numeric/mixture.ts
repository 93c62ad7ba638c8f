import { normalCdf, normalPdf, normalQuantile } from "./normal.js"

/** A mixture of normal distributions: weights sum to 1, SDs are positive. */
export interface Mixture {
  readonly weights: readonly number[]
  readonly means: readonly number[]
  readonly sds: readonly number[]
}

/**
 * The same mixture with fewer parts: neighbours whose means lie within a tenth of their SD are joined, keeping weight,
 * mean and variance. What is lost is of third order in that tenth: no quantile from 0.5 to 99.5 % moves by two
 * thousandths of the SD (mixture.test.ts), and quantiles come several times faster.
 */
export function condensed({ weights, means, sds }: Mixture): Mixture {
  const order = Uint32Array.from(means.keys()).sort((a, b) => (means[a] as number) - (means[b] as number))
  const out = { weights: [] as number[], means: [] as number[], sds: [] as number[] }
  for (let start = 0, end = 0; start < order.length; start = end) {
    const first = order[start] as number
    const from = means[first] as number
    let narrowest = sds[first] as number
    let [weight, offset, square] = [0, 0, 0]
    for (; end < order.length; end++) {
      const i = order[end] as number
      const off = (means[i] as number) - from
      const least = Math.min(narrowest, sds[i] as number)
      if (end > start && off > JOIN_WITHIN_SD * least) break
      narrowest = least
      // Moments are taken from the first mean, so that two lengths of 24 mm do not cancel.
      weight += weights[i] as number
      offset += (weights[i] as number) * off
      square += (weights[i] as number) * ((sds[i] as number) ** 2 + off * off)
    }
    const mean = offset / weight
    out.weights.push(weight)
    out.means.push(from + mean)
    out.sds.push(end === start + 1 ? narrowest : Math.sqrt(square / weight - mean * mean))
  }
  return out
}

const JOIN_WITHIN_SD = 0.1

export function mixtureMean({ weights, means }: Mixture): number {
  let sum = 0
  for (let i = 0; i < weights.length; i++) sum += (weights[i] as number) * (means[i] as number)
  return sum
}

export function mixtureSd(mixture: Mixture): number {
  const mean = mixtureMean(mixture)
  let sum = 0
  for (let i = 0; i < mixture.weights.length; i++) {
    const off = (mixture.means[i] as number) - mean
    sum += (mixture.weights[i] as number) * ((mixture.sds[i] as number) ** 2 + off * off)
  }
  return Math.sqrt(sum)
}

/** Probability of a value at or below x. */
export function mixtureCdf({ weights, means, sds }: Mixture, x: number): number {
  let sum = 0
  for (let i = 0; i < weights.length; i++) {
    sum += (weights[i] as number) * normalCdf((x - (means[i] as number)) / (sds[i] as number))
  }
  return sum
}

function mixturePdf({ weights, means, sds }: Mixture, x: number): number {
  let sum = 0
  for (let i = 0; i < weights.length; i++) {
    const sd = sds[i] as number
    sum += ((weights[i] as number) / sd) * normalPdf((x - (means[i] as number)) / sd)
  }
  return sum
}

/**
 * The value below which a share p of the mixture lies, by Newton's method kept inside a bracket.
 *
 * @example
 * mixtureQuantile({ weights: [1], means: [0], sds: [1] }, 0.975) // => 1.95996
 */
export function mixtureQuantile(mixture: Mixture, p: number): number {
  const mean = mixtureMean(mixture)
  const sd = mixtureSd(mixture)
  if (sd === 0) return mean
  let low = mean - 12 * sd
  let high = mean + 12 * sd
  let x = mean + sd * normalQuantile(p)
  for (let step = 0; step < 80; step++) {
    const gap = mixtureCdf(mixture, x) - p
    if (Math.abs(gap) < 1e-9) break
    if (gap > 0) high = x
    else low = x
    const next = x - gap / mixturePdf(mixture, x)
    x = next > low && next < high ? next : (low + high) / 2
    if (high - low < 1e-9 * sd) break
  }
  return x
}
