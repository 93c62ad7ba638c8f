import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { ofTen } from "./of-ten.js"

describe("a chance told as children of ten", () => {
  it.each([
    [0, "under", 1],
    [0.049, "under", 1],
    [0.05, "about", 1],
    [0.149, "about", 1],
    [0.38, "about", 4],
    [0.5, "about", 5],
    [0.94, "about", 9],
    [0.96, "over", 9],
    [1, "over", 9],
  ] as const)("%s is %s %s of 10", (chance, share, count) => {
    expect(ofTen(chance)).toEqual({ share, count })
  })

  it("is never further off than half a child, and never none or all of ten", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (chance) => {
        const { share, count } = ofTen(chance)
        expect(count).toBeGreaterThanOrEqual(1)
        expect(count).toBeLessThanOrEqual(9)
        if (share === "under") expect(10 * chance).toBeLessThan(count)
        else if (share === "over") expect(10 * chance).toBeGreaterThan(count)
        else expect(Math.abs(10 * chance - count)).toBeLessThanOrEqual(0.5 + 1e-9)
      }),
    )
  })

  it.each([-0.01, 1.01, Number.NaN])("refuses %s", (chance) => {
    expect(() => ofTen(chance)).toThrow(`chance must be 0 to 1, not ${chance}`)
  })
})
