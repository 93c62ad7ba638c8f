import { describe, expect, it } from "vitest"
import { lmsValue, lmsZ } from "./lms.js"

describe("L, M, S", () => {
  const median = { m: 22.6, s: 0.03 }
  it.each([-2, -0.355, 0, 1e-7, 0.5, 1, 3])("value and z are inverse at L = %d", (l) => {
    for (const z of [-2.5, -1, 0, 0.3, 2.5]) {
      expect(lmsZ({ value: lmsValue({ z, l, ...median })!, l, ...median })).toBeCloseTo(z, 8)
    }
  })

  it("passes smoothly into the logarithm as L goes to 0", () => {
    const at = (l: number) => lmsZ({ value: 24, l, ...median })
    expect(Math.abs(at(0.9e-6) - at(1.1e-6))).toBeLessThan(1e-6)
  })

  it("has no value where the power would be taken of a negative number", () => {
    expect(lmsValue({ z: -3, l: 20, ...median })).toBeNull()
  })
})
