const SQRT_TWO_PI = 2.5066282746310002

/** Chance that a standard normal exceeds x, for x of 0 or more: relative error below 1e-13. */
function upperTail(x: number): number {
  if (x > 39) return 0
  // The fit is 1e-16 off here, and the median must be the median.
  if (x === 0) return 0.5
  // (1 + x) exp(x^2 / 2) Q(x) as a polynomial in t = (x - 5) / (x + 5): our own Chebyshev fit of degree 22
  // (test/validation/fixtures/normal-fit.py), checked there and against R. This is the innermost function of every
  // forecast, so its even and odd powers run side by side, written out.
  const t = (x - 5) / (x + 5)
  const square = t * t
  let even = -2.8220772290629865e-10
  even = even * square + 3.627373163401201e-9
  even = even * square - 2.6286205089898754e-8
  even = even * square + 1.27878221820937e-7
  even = even * square - 7.034644683537101e-8
  even = even * square - 9.896097759279782e-6
  even = even * square + 0.00018233414511643843
  even = even * square - 0.00167607234455447
  even = even * square - 0.015170415402514863
  even = even * square - 0.026401042966308307
  even = even * square + 0.031030368425963708
  even = even * square + 0.46151582985003775
  let odd = 2.2070652717459774e-9
  odd = odd * square - 2.54667816805072e-8
  odd = odd * square + 1.8846163807542468e-7
  odd = odd * square - 1.3004549261799018e-6
  odd = odd * square + 9.055745037072721e-6
  odd = odd * square - 5.360602125091952e-5
  odd = odd * square + 7.79121440702919e-6
  odd = odd * square + 0.0065220007252342425
  odd = odd * square + 0.024536963238891124
  odd = odd * square + 0.010002352385413518
  odd = odd * square - 0.09155228183401112
  return ((even + odd * t) / (1 + x)) * Math.exp(-0.5 * x * x)
}

/** Density of the standard normal distribution. */
export function normalPdf(z: number): number {
  return Math.exp(-0.5 * z * z) / SQRT_TWO_PI
}

/**
 * Distribution function of the standard normal: absolute error below 1e-15, and 1e-13 relative in the lower tail.
 *
 * @example
 * normalCdf(0) // => 0.5
 */
export function normalCdf(z: number): number {
  return z < 0 ? upperTail(-z) : 1 - upperTail(z)
}

/**
 * The z below which the share p of a standard normal lies; minus and plus infinity at 0 and 1.
 * Halley's steps on the tail, so that small p keep their digits. Throws when p is not in [0, 1].
 *
 * @example
 * normalQuantile(0.5) // => 0
 */
export function normalQuantile(p: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`probability not in [0, 1]: ${p}`)
  if (p === 0 || p === 1) return p === 0 ? -Infinity : Infinity
  const tail = Math.min(p, 1 - p)
  let x = roughUpperQuantile(tail)
  for (let step = 0; step < 3; step += 1) {
    const excess = (upperTail(x) - tail) / normalPdf(x)
    x += excess / (1 - 0.5 * x * excess)
  }
  return p < 0.5 ? -x : x
}

// Asymptotic tail: Q(x) ~ exp(-x^2 / 2) / (x sqrt(2 pi)), solved once for x; a straight line through the middle.
function roughUpperQuantile(tail: number): number {
  if (tail > 0.1) return (0.5 - tail) * SQRT_TWO_PI
  const first = Math.sqrt(-2 * Math.log(tail))
  return Math.sqrt(-2 * Math.log(tail * first * SQRT_TWO_PI))
}
