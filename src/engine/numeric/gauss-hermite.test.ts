import { describe, expect, it } from "vitest"
import { normalRule } from "./gauss-hermite.js"

/** Mean of x^power of a standard normal: 1, 0, 1, 0, 3, 0, 15, ... */
const moment = (power: number): number =>
  power === 0 ? 1 : power % 2 === 1 ? 0 : (power - 1) * moment(power - 2)
const mean = (n: number, f: (x: number) => number) => {
  const { nodes, weights } = normalRule(n)
  return nodes.reduce((sum, x, i) => sum + (weights[i] as number) * f(x), 0)
}

function near(found: readonly number[], expected: readonly number[]) {
  expect(found).toHaveLength(expected.length)
  for (const [i, value] of expected.entries()) expect(found[i]).toBeCloseTo(value, 13)
}

describe("Gauss-Hermite rules for a standard normal", () => {
  it("of 3 points has the nodes 0 and the square root of 3, weights 2/3 and 1/6", () => {
    const { nodes, weights } = normalRule(3)
    near(nodes, [-Math.sqrt(3), 0, Math.sqrt(3)])
    near(weights, [1 / 6, 2 / 3, 1 / 6])
  })

  it("of 5 points has the roots of x^5 - 10 x^3 + 15 x", () => {
    const [outer, inner] = [Math.sqrt(5 + Math.sqrt(10)), Math.sqrt(5 - Math.sqrt(10))]
    near(normalRule(5).nodes, [-outer, -inner, 0, inner, outer])
    expect(normalRule(5).weights[2]).toBeCloseTo(8 / 15, 13)
  })

  it.each([1, 2, 3, 4, 6, 7, 12, 20, 30])(
    "of %i points is exact for polynomials up to twice that, less one",
    (n) => {
      for (let power = 0; power <= Math.min(2 * n - 1, 24); power++) {
        const scale = Math.max(1, moment(power + (power % 2)))
        expect(Math.abs(mean(n, (x) => x ** power) - moment(power)) / scale).toBeLessThan(1e-11)
      }
    },
  )

  it("of n points misses the next even power, as it must", () => {
    expect(Math.abs(mean(3, (x) => x ** 6) - moment(6))).toBeCloseTo(6, 10)
  })

  it.each([7, 30])("of %i points is symmetric, rising, with positive weights", (n) => {
    const { nodes, weights } = normalRule(n)
    nodes.forEach((x, i) => {
      expect(x).toBeCloseTo(-(nodes[n - 1 - i] as number), 12)
      if (i > 0) expect(x).toBeGreaterThan(nodes[i - 1] as number)
      expect(weights[i]).toBeGreaterThan(0)
    })
  })
})
