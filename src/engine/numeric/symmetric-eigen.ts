export interface SymmetricEigen {
  readonly values: readonly number[]
  /** Row by row; column e is the eigenvector of value e. */
  readonly vectors: readonly number[]
}

/**
 * Eigenvalues and eigenvectors of a small symmetric matrix (row by row, n x n) by cyclic Jacobi rotations.
 *
 * @example
 * symmetricEigen([2, 1, 1, 2], 2).values // 1 and 3, in some order
 */
export function symmetricEigen(matrix: readonly number[], n: number): SymmetricEigen {
  const a = [...matrix]
  const v = new Array<number>(n * n).fill(0)
  for (let i = 0; i < n; i++) v[i * n + i] = 1
  const at = (i: number, j: number) => a[i * n + j] as number
  for (let sweep = 0; sweep < 60; sweep++) {
    let off = 0
    let on = 0
    for (let i = 0; i < n; i++) {
      on += at(i, i) ** 2
      for (let j = i + 1; j < n; j++) off += at(i, j) ** 2
    }
    if (off <= 1e-32 * on || off === 0) break
    for (let p = 0; p < n; p++) {
      for (let q = p + 1; q < n; q++) {
        if (at(p, q) === 0) continue
        const theta = (at(q, q) - at(p, p)) / (2 * at(p, q))
        const t = (theta >= 0 ? 1 : -1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1))
        const c = 1 / Math.sqrt(t * t + 1)
        rotate({ a, v, n, p, q, c, s: t * c })
      }
    }
  }
  return { values: Array.from({ length: n }, (_, i) => at(i, i)), vectors: v }
}

function rotate(turn: {
  a: number[]
  v: number[]
  n: number
  p: number
  q: number
  c: number
  s: number
}): void {
  const { a, v, n, p, q, c, s } = turn
  const mix = (m: number[], i: number, j: number) => {
    const [x, y] = [m[i] as number, m[j] as number]
    m[i] = c * x - s * y
    m[j] = s * x + c * y
  }
  for (let k = 0; k < n; k++) mix(a, k * n + p, k * n + q)
  for (let k = 0; k < n; k++) mix(a, p * n + k, q * n + k)
  for (let k = 0; k < n; k++) mix(v, k * n + p, k * n + q)
}
