import { describe, expect, it } from "vitest"
import { anisometropia } from "./anisometropia.js"
import { corneaRadiusRatio, meanCorneaRadius } from "./cornea-radius-ratio.js"
import { growthOfRefractionChange, refractionChangeOfGrowth } from "./growth-as-refraction.js"
import { meanRefraction } from "./mean-refraction.js"
import { lensOfPowerVector, powerVector } from "./power-vector.js"
import { sphericalEquivalent } from "./spherical-equivalent.js"
import { spheroCylinder } from "./sphero-cylinder.js"
import { minusCylinder, transposed } from "./transposed.js"
import { vertexCompensated } from "./vertex-compensated.js"

describe("lens arithmetic", () => {
  it("a sphere has the axis 180, so that equal lenses are equal values", () => {
    expect(spheroCylinder({ sphere: -3, cylinder: 0, axis: 20 })).toEqual(spheroCylinder({ sphere: -3 }))
  })

  it("an axis of 0 is 180", () => {
    expect(spheroCylinder({ sphere: 0, cylinder: -1, axis: 0 }).axis).toBe(180)
  })

  it("a cylinder without an axis is a fault of the caller", () => {
    expect(() => powerVector({ sphere: -1, cylinder: -1 })).toThrow("cylinder without an axis: -1")
  })

  it("transposition moves the cylinder into the sphere and turns the axis", () => {
    expect(transposed({ sphere: -3, cylinder: -1, axis: 20 })).toEqual({ sphere: -4, cylinder: 1, axis: 110 })
    expect(minusCylinder({ sphere: -4, cylinder: 1, axis: 110 })).toEqual({
      sphere: -3,
      cylinder: -1,
      axis: 20,
    })
  })

  it("crossed equal cylinders average to a sphere", () => {
    const crossed = [
      { sphere: -2, cylinder: -1, axis: 30 },
      { sphere: -2, cylinder: -1, axis: 120 },
    ]
    expect(meanRefraction(crossed)).toEqual({ sphere: -2.5, cylinder: 0, axis: 180 })
    expect(() => meanRefraction([])).toThrow("at least one reading")
  })

  it("a vector without cylinder is a sphere", () => {
    expect(lensOfPowerVector({ m: -2, j0: 0, j45: 0 })).toEqual({ sphere: -2, cylinder: 0, axis: 180 })
  })

  it("spherical equivalent needs no axis", () => {
    expect(sphericalEquivalent({ sphere: -2.25, cylinder: -0.5 })).toBe(-2.5)
    expect(sphericalEquivalent({ sphere: 1 })).toBe(1)
  })

  it("anisometropia has no side", () => {
    const [right, left] = [{ sphere: -3.5 }, { sphere: -2 }]
    expect(anisometropia({ right, left })).toBe(1.5)
    expect(anisometropia({ right: left, left: right })).toBe(1.5)
  })

  it("a lens at its own focus cannot be moved there", () => {
    expect(() => vertexCompensated({ lens: { sphere: 50 }, towardEyeMm: 20 })).toThrow(
      "cannot be moved 20 mm",
    )
  })

  it("AL/CR divides by the mean of the two radii", () => {
    expect(meanCorneaRadius({ flat: 7.9, steep: 7.7 })).toBeCloseTo(7.8, 12)
    expect(corneaRadiusRatio({ axialLengthMm: 23.4, corneaRadius: { flat: 7.9, steep: 7.7 } })).toBeCloseTo(
      3,
      12,
    )
  })

  it("growth makes the refraction more negative, and back", () => {
    expect(refractionChangeOfGrowth({ growthMm: 0.2, dioptresPerMm: 2 })).toBeCloseTo(-0.4, 12)
    expect(growthOfRefractionChange({ refractionChangeD: -0.4, dioptresPerMm: 2 })).toBeCloseTo(0.2, 12)
    expect(() => refractionChangeOfGrowth({ growthMm: 1, dioptresPerMm: 0 })).toThrow("above 0: 0")
  })
})
