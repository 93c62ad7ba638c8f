import { describe, expect, it } from "vitest"
import fixture from "../../../test/validation/fixtures/monotone-cubic.json" with { type: "json" }
import { monotoneCubic } from "./monotone-cubic.js"

describe("the monotone cubic", () => {
  // Outside values: PchipInterpolator of SciPy (test/validation/fixtures/monotone-cubic.py).
  it.each(fixture)("equals SciPy's on $name", ({ x, y, at, value }) => {
    const curve = monotoneCubic(x.map((knot, i) => ({ x: knot, y: y[i]! })))
    for (const [i, point] of at.entries()) expect(curve(point)).toBeCloseTo(value[i]!, 12)
  })

  it("passes through its knots", () => {
    const curve = monotoneCubic([
      { x: 6, y: 22.36 },
      { x: 9, y: 23.1 },
      { x: 15, y: 23.41 },
    ])
    expect([curve(6), curve(9), curve(15)]).toEqual([22.36, 23.1, 23.41])
  })

  it("is a constant with one knot, at that knot only", () => {
    const curve = monotoneCubic([{ x: 6, y: 22 }])
    expect(curve(6)).toBe(22)
    expect(() => curve(6.1)).toThrow("6.1 lies outside 6 to 6")
  })

  it("never extrapolates", () => {
    const curve = monotoneCubic([
      { x: 0, y: 0 },
      { x: 1, y: 1 },
    ])
    expect(() => curve(1.01)).toThrow("lies outside")
    expect(() => curve(Number.NaN)).toThrow("lies outside")
  })

  it("takes knots in ascending order only", () => {
    expect(() =>
      monotoneCubic([
        { x: 1, y: 0 },
        { x: 1, y: 1 },
      ]),
    ).toThrow("knots must ascend; 1 follows 1")
    expect(() => monotoneCubic([])).toThrow("at least one knot")
  })
})
