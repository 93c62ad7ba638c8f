/** Nodes and weights for the mean of a function of a standard normal variable: sum w_i f(x_i), weights summing to 1. */
export interface NormalRule {
  readonly nodes: readonly number[]
  readonly weights: readonly number[]
}

const rules = new Map<number, NormalRule>()

/**
 * Gauss-Hermite rule of n points for the standard normal density, by Newton's method on the probabilists'
 * Hermite polynomials (three-term recurrence). Exact for polynomials up to degree 2 n - 1.
 *
 * @example
 * normalRule(3) // nodes 0 and +-sqrt(3), weights 2/3 and 1/6
 */
export function normalRule(n: number): NormalRule {
  const known = rules.get(n)
  if (known) return known
  const nodes: number[] = []
  const weights: number[] = []
  for (let i = 0; i < n; i++) {
    // Roots of the orthonormal polynomial by bisection between sign changes would be slower; these starts converge.
    let x = startingPoint(i, n, nodes)
    for (let step = 0; step < 100; step++) {
      const { value, slope } = orthonormal(n, x)
      // Deflation by the roots found keeps Newton from falling into one of them twice.
      const pull = nodes.reduce((sum, root) => sum + 1 / (x - root), 0)
      const move = value / (slope - value * pull)
      x -= move
      if (Math.abs(move) < 1e-15 * Math.max(1, Math.abs(x))) break
    }
    nodes.push(x)
  }
  nodes.sort((a, b) => a - b)
  for (const x of nodes) weights.push(1 / christoffel(n, x))
  const total = weights.reduce((sum, w) => sum + w, 0)
  const rule = { nodes, weights: weights.map((w) => w / total) }
  rules.set(n, rule)
  return rule
}

function startingPoint(i: number, n: number, found: readonly number[]): number {
  return i === 0 ? Math.sqrt(4 * n + 2) : (found.at(-1) as number) - 0.5 / Math.sqrt(n)
}

// p_{j+1} = (x p_j - sqrt(j) p_{j-1}) / sqrt(j + 1), p_0 = 1; p_n' = sqrt(n) p_{n-1}.
function orthonormal(n: number, x: number): { value: number; slope: number } {
  let before = 0
  let now = 1
  for (let j = 0; j < n; j++) {
    const next = (x * now - Math.sqrt(j) * before) / Math.sqrt(j + 1)
    before = now
    now = next
  }
  return { value: now, slope: Math.sqrt(n) * before }
}

function christoffel(n: number, x: number): number {
  let before = 0
  let now = 1
  let sum = 0
  for (let j = 0; j < n; j++) {
    sum += now * now
    const next = (x * now - Math.sqrt(j) * before) / Math.sqrt(j + 1)
    before = now
    now = next
  }
  return sum
}
