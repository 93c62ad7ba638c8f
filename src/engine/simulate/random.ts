/** A stream of random numbers that depends on its seed alone. */
export interface Random {
  /** Uniform in (0, 1). */
  readonly uniform: () => number
  /** Standard normal. */
  readonly normal: () => number
  readonly pick: <T>(from: readonly T[]) => T
}

/**
 * Seeded random numbers: xorshift128 started by a mixing of the seed, normals by the polar method.
 *
 * @example
 * randomFrom(7).uniform() === randomFrom(7).uniform() // true
 */
export function randomFrom(seed: number): Random {
  let mix = seed >>> 0
  const word = () => {
    mix = (mix + 0x9e3779b9) >>> 0
    let z = mix
    z = Math.imul(z ^ (z >>> 16), 0x85ebca6b)
    z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35)
    return (z ^ (z >>> 16)) >>> 0
  }
  let [a, b, c, d] = [word(), word(), word(), word() | 1]
  const next = () => {
    let t = d
    d = c
    c = b
    b = a
    t ^= t << 11
    t ^= t >>> 8
    a = (t ^ a ^ (a >>> 19)) >>> 0
    return a
  }
  const uniform = () => ((next() >>> 5) * 67_108_864 + (next() >>> 6) + 0.5) / 9_007_199_254_740_992
  let spare: number | null = null
  const normal = () => {
    if (spare !== null) {
      const value = spare
      spare = null
      return value
    }
    for (;;) {
      const [x, y] = [2 * uniform() - 1, 2 * uniform() - 1]
      const r = x * x + y * y
      if (r === 0 || r >= 1) continue
      const scale = Math.sqrt((-2 * Math.log(r)) / r)
      spare = y * scale
      return x * scale
    }
  }
  return { uniform, normal, pick: (from) => from[Math.floor(uniform() * from.length)] as never }
}
