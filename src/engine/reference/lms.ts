/** L (skewness), M (median) and S (coefficient of variation) at one age, in the letters of Cole and Green 1992. */
export interface Lms {
  readonly l: number
  readonly m: number
  readonly s: number
}

// Near L = 0 the power form loses digits to cancellation; the logarithm is its limit.
const NO_SKEWNESS = 1e-6

/**
 * z of a value: ((x / M)^L - 1) / (L S), and ln(x / M) / S when L is 0. The value must be above 0.
 *
 * @example
 * lmsZ({ value: 22.6, l: 1, m: 22.6, s: 0.03 }) // => 0, the median by definition
 */
export function lmsZ({ value, l, m, s }: Lms & { readonly value: number }): number {
  return Math.abs(l) < NO_SKEWNESS ? Math.log(value / m) / s : ((value / m) ** l - 1) / (l * s)
}

/**
 * The value at a z: M (1 + L S z)^(1 / L). Null where 1 + L S z is not above 0, so far out that the distribution has no
 * value there.
 */
export function lmsValue({ z, l, m, s }: Lms & { readonly z: number }): number | null {
  if (Math.abs(l) < NO_SKEWNESS) return m * Math.exp(s * z)
  const base = 1 + l * s * z
  return base > 0 ? m * base ** (1 / l) : null
}
