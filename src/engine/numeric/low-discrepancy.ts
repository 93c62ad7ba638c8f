import { normalQuantile } from "./normal.js"

const tables = new Map<string, Float64Array>()

/**
 * Evenly spread points for averages over several dimensions, without chance: point i has coordinates
 * frac(1/2 + i g^-(d+1)), g the root of g^(D+1) = g + 1 (an additive recurrence), turned into standard normals
 * except for the first, which stays uniform. Row by row, `points` x `dimensions`.
 */
export function spreadPoints({ points, dimensions }: { points: number; dimensions: number }): Float64Array {
  const key = `${points}/${dimensions}`
  const known = tables.get(key)
  if (known) return known
  let g = 1.5
  for (let step = 0; step < 60; step++) g = (1 + g) ** (1 / (dimensions + 1))
  const table = new Float64Array(points * dimensions)
  for (let i = 0; i < points; i++) {
    for (let d = 0; d < dimensions; d++) {
      const u = (0.5 + (i + 1) * g ** -(d + 1)) % 1
      table[i * dimensions + d] = d === 0 ? u : normalQuantile(Math.min(Math.max(u, 1e-12), 1 - 1e-12))
    }
  }
  tables.set(key, table)
  return table
}
