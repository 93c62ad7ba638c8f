import { describe, expect, it } from "vitest"
import { symmetricEigen } from "./symmetric-eigen.js"

const cases = [
  { name: "two by two", n: 2, matrix: [2, 1, 1, 2] },
  { name: "diagonal", n: 3, matrix: [3, 0, 0, 0, 1, 0, 0, 0, 2] },
  { name: "of rank one", n: 3, matrix: [1, 2, 3, 2, 4, 6, 3, 6, 9] },
  {
    name: "full, with values far apart",
    n: 4,
    matrix: [1e6, 3, -2, 1, 3, 5, 0.1, 0, -2, 0.1, 1e-3, 2e-4, 1, 0, 2e-4, 0.7],
  },
  { name: "all zero", n: 2, matrix: [0, 0, 0, 0] },
]

describe("eigenvalues of a small symmetric matrix", () => {
  it("of [2 1; 1 2] are 1 and 3", () => {
    const values = symmetricEigen([2, 1, 1, 2], 2).values.toSorted((a, b) => a - b)
    expect(values[0]).toBeCloseTo(1, 14)
    expect(values[1]).toBeCloseTo(3, 14)
  })

  it("of rank one are its squared length and zeros", () => {
    const values = symmetricEigen([1, 2, 3, 2, 4, 6, 3, 6, 9], 3).values.toSorted((a, b) => b - a)
    expect(values[0]).toBeCloseTo(14, 12)
    expect(Math.abs(values[1] as number)).toBeLessThan(1e-12)
  })

  it.each(cases)("and vectors put the matrix together again: $name", ({ n, matrix }) => {
    const { values, vectors } = symmetricEigen(matrix, n)
    const largest = Math.max(1, ...matrix.map(Math.abs))
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) {
        const again = values.reduce(
          (sum, value, e) => sum + value * (vectors[i * n + e] as number) * (vectors[j * n + e] as number),
          0,
        )
        expect(Math.abs(again - (matrix[i * n + j] as number)) / largest).toBeLessThan(1e-13)
      }
    }
  })

  it.each(cases)("have vectors of length one at right angles: $name", ({ n, matrix }) => {
    const { vectors } = symmetricEigen(matrix, n)
    for (let a = 0; a < n; a++) {
      for (let b = 0; b < n; b++) {
        let product = 0
        for (let i = 0; i < n; i++) product += (vectors[i * n + a] as number) * (vectors[i * n + b] as number)
        expect(Math.abs(product - (a === b ? 1 : 0))).toBeLessThan(1e-13)
      }
    }
  })

  it("leaves the matrix it was given as it was", () => {
    const matrix = Object.freeze([2, 1, 1, 2])
    expect(() => symmetricEigen(matrix, 2)).not.toThrow()
  })

  it("of nothing are none", () => expect(symmetricEigen([], 0)).toEqual({ values: [], vectors: [] }))
})
