import { describe, expect, it } from "vitest"
import { printedPrescription } from "./printed-prescription.js"

describe("a prescription is printed", () => {
  it.each([
    [{ sphere: -2.25, cylinder: -0.5, axis: 180 }, "-2.25 -0.50 x 180"],
    [{ sphere: -2.75, cylinder: 0.5, axis: 90 }, "-2.25 -0.50 x 180"],
    [{ sphere: 0, cylinder: -0.5, axis: 90 }, "plano -0.50 x 90"],
    [{ sphere: -3 }, "-3.00 DS"],
    [{ sphere: 1, cylinder: 0 }, "+1.00 DS"],
    [{ sphere: 0 }, "plano"],
    [{ sphere: -0.1, cylinder: -0.1, axis: 20 }, "plano"],
    [{ sphere: -2.2, cylinder: -0.6, axis: 0.3 }, "-2.25 -0.50 x 180"],
    [{ sphere: -2, cylinder: -1, axis: 179.7 }, "-2.00 -1.00 x 180"],
  ])("%j as %s", (lens, text) => {
    expect(printedPrescription(lens)).toBe(text)
  })

  it("takes halfway toward plus, also when arithmetic left a trace below it", () => {
    expect(printedPrescription({ sphere: -2.125 })).toBe("-2.00 DS")
    expect(printedPrescription({ sphere: -2.1250000000001 })).toBe("-2.00 DS")
  })
})
