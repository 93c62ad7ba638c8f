import { describe, expect, it } from "vitest"
import { spreadPoints } from "./low-discrepancy.js"

const column = (table: Float64Array, dimensions: number, d: number) =>
  Array.from(table.filter((_, i) => i % dimensions === d))
const mean = (values: readonly number[]) => values.reduce((sum, x) => sum + x, 0) / values.length

describe("evenly spread points", () => {
  it("are the same whenever they are asked for", () => {
    const first = Array.from(spreadPoints({ points: 16, dimensions: 3 }).uniform)
    expect(Array.from(spreadPoints({ points: 16, dimensions: 3 }).uniform)).toEqual(first)
  })

  it("fill (0, 1) in the first dimension: every tenth of it gets its share, give or take two", () => {
    const first = column(spreadPoints({ points: 200, dimensions: 5 }).uniform, 5, 0)
    for (let tenth = 0; tenth < 10; tenth++) {
      const inside = first.filter((u) => u >= tenth / 10 && u < (tenth + 1) / 10).length
      expect(Math.abs(inside - 20)).toBeLessThanOrEqual(2)
    }
  })

  it.each([0, 1, 2, 3, 4])("are close to standard normal in dimension %i: mean 0 and SD 1", (d) => {
    const values = column(spreadPoints({ points: 512, dimensions: 5 }).normal, 5, d)
    expect(Math.abs(mean(values))).toBeLessThan(0.02)
    expect(Math.abs(Math.sqrt(mean(values.map((x) => x * x))) - 1)).toBeLessThan(0.03)
  })

  it("are not correlated between dimensions", () => {
    const table = spreadPoints({ points: 512, dimensions: 4 }).normal
    const [a, b] = [column(table, 4, 1), column(table, 4, 2)]
    expect(Math.abs(mean(a.map((x, i) => x * (b[i] as number))))).toBeLessThan(0.05)
  })
})
