import { normalQuantile } from "./normal.js"

/** Points row by row, `points` x `dimensions`: as uniform numbers, and the same as standard normals. */
export interface SpreadPoints {
  readonly uniform: Float64Array
  readonly normal: Float64Array
}

const tables = new Map<string, SpreadPoints>()

/** Bases of the coordinates after the first; more dimensions than this are never asked for. */
const PRIMES = [2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71]

/**
 * Evenly spread points for averages over several dimensions, without chance: the Hammersley set, i / n first and then
 * the digits of i mirrored at the point in the bases 2, 3, 5 ... (Halton's sequence), moved by half a step and by the
 * golden ratio so that no two coordinates march together. The first dimensions are the most even: put what matters there.
 */
export function spreadPoints({ points, dimensions }: { points: number; dimensions: number }): SpreadPoints {
  const key = `${points}/${dimensions}`
  const known = tables.get(key)
  if (known) return known
  const uniform = new Float64Array(points * dimensions)
  for (let i = 0; i < points; i++) {
    uniform[i * dimensions] = (i + 0.5) / points
    for (let d = 1; d < dimensions; d++) {
      uniform[i * dimensions + d] = (mirrored(i + 1, PRIMES[d - 1] as number) + d * 0.6180339887498949) % 1
    }
  }
  const made = {
    uniform,
    normal: uniform.map((u) => normalQuantile(Math.min(Math.max(u, 1e-12), 1 - 1e-12))),
  }
  tables.set(key, made)
  return made
}

function mirrored(i: number, base: number): number {
  let [rest, scale, out] = [i, 1 / base, 0]
  while (rest > 0) {
    out += (rest % base) * scale
    rest = Math.floor(rest / base)
    scale /= base
  }
  return out
}
