import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { decimalFromLogMAR, logMARFromDecimal } from "../../src/engine/optics/acuity.js"
import { meanRefraction } from "../../src/engine/optics/mean-refraction.js"
import { parsePrescription } from "../../src/engine/optics/parse-prescription.js"
import { lensOfPowerVector, powerVector } from "../../src/engine/optics/power-vector.js"
import { printedPrescription } from "../../src/engine/optics/printed-prescription.js"
import { sphericalEquivalent } from "../../src/engine/optics/spherical-equivalent.js"
import { type SpheroCylinder, spheroCylinder } from "../../src/engine/optics/sphero-cylinder.js"
import { minusCylinder, transposed } from "../../src/engine/optics/transposed.js"
import { vertexCompensated } from "../../src/engine/optics/vertex-compensated.js"
import { logMAR } from "../../src/engine/units.js"

const quarters = (low: number, high: number) =>
  fc.integer({ min: low * 4, max: high * 4 }).map((steps) => steps / 4)
const axis = fc.integer({ min: 1, max: 180 })
/** Lenses as they are written: quarter dioptres, whole degrees, either sign of cylinder. */
const writtenLens = fc
  .record({ sphere: quarters(-20, 20), cylinder: quarters(-8, 8), axis })
  .map((lens) => spheroCylinder(lens))
const minusLens = writtenLens.map(minusCylinder)

/** Degrees between two axes, at most 90, since an axis and the same axis plus 180 are one direction. */
function turnBetween(a: number, b: number): number {
  const turn = Math.abs(a - b) % 180
  return Math.min(turn, 180 - turn)
}

function expectSameLens(a: SpheroCylinder, b: SpheroCylinder) {
  expect(a.sphere).toBeCloseTo(b.sphere, 9)
  expect(a.cylinder).toBeCloseTo(b.cylinder, 9)
  expect(turnBetween(a.axis, b.axis)).toBeLessThan(1e-6)
}

describe("for every lens", () => {
  it("transposition twice is the lens itself", () => {
    fc.assert(
      fc.property(writtenLens, (lens) => {
        expect(transposed(transposed(lens))).toEqual(lens)
      }),
    )
  })

  it("transposition changes neither the power vector nor the spherical equivalent", () => {
    fc.assert(
      fc.property(writtenLens, (lens) => {
        const [a, b] = [powerVector(lens), powerVector(transposed(lens))]
        expect(Math.hypot(a.m - b.m, a.j0 - b.j0, a.j45 - b.j45)).toBeLessThan(1e-12)
        expect(sphericalEquivalent(transposed(lens))).toBeCloseTo(sphericalEquivalent(lens), 12)
      }),
    )
  })

  it("the way to the power vector and back is identity", () => {
    fc.assert(fc.property(minusLens, (lens) => expectSameLens(lensOfPowerVector(powerVector(lens)), lens)))
  })

  it("printing then parsing is identity at quarter dioptres", () => {
    fc.assert(
      fc.property(minusLens, (lens) => {
        expect(parsePrescription(printedPrescription(lens))).toEqual({ refraction: lens })
      }),
    )
  })

  it("moving it towards the eye and away again is identity", () => {
    fc.assert(
      fc.property(minusLens, fc.integer({ min: 0, max: 20 }), (lens, towardEyeMm) => {
        const there = vertexCompensated({ lens, towardEyeMm })
        expectSameLens(vertexCompensated({ lens: there, towardEyeMm: -towardEyeMm }), lens)
      }),
    )
  })
})

describe("for every set of readings", () => {
  const cylinder = quarters(-6, -1)
  it("axes a few degrees on both sides of 180 average near 180, never near 90", () => {
    fc.assert(
      fc.property(quarters(-10, 5), cylinder, fc.integer({ min: 1, max: 20 }), (sphere, power, off) => {
        const readings = [180 - off, off].map((at) => ({ sphere, cylinder: power, axis: at }))
        expect(turnBetween(meanRefraction(readings).axis, 180)).toBeLessThan(1e-6)
      }),
    )
  })

  it("turning every axis turns the mean by as much and changes nothing else", () => {
    const reading = fc.record({ sphere: quarters(-10, 5), cylinder, axis: fc.integer({ min: 60, max: 100 }) })
    fc.assert(
      fc.property(
        fc.array(reading, { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 0, max: 359 }),
        (readings, turn) => {
          const mean = meanRefraction(readings)
          const turned = meanRefraction(readings.map((lens) => ({ ...lens, axis: lens.axis + turn })))
          expectSameLens(turned, spheroCylinder({ ...mean, axis: mean.axis + turn }))
        },
      ),
    )
  })

  it("the mean has the mean spherical equivalent, in any order", () => {
    fc.assert(
      fc.property(fc.array(writtenLens, { minLength: 1, maxLength: 6 }), (readings) => {
        const mean = readings.reduce((sum, lens) => sum + sphericalEquivalent(lens), 0) / readings.length
        expect(sphericalEquivalent(meanRefraction(readings))).toBeCloseTo(mean, 9)
        expect(sphericalEquivalent(meanRefraction(readings.toReversed()))).toBeCloseTo(mean, 9)
      }),
    )
  })
})

it("for every text the parser answers with a lens or with faults, and never throws", () => {
  const piece = fc.constantFrom(
    "-",
    "+",
    "2.25",
    "0,5",
    " ",
    "/",
    "x",
    "@",
    "180",
    "190",
    "pl",
    "ds",
    "\u2212",
    "\u00b0",
    "q",
  )
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.array(piece).map((pieces) => pieces.join("")),
      ),
      (text) => {
        const answer = parsePrescription(text)
        if ("problems" in answer) expect(answer.problems.length).toBeGreaterThan(0)
        else expect(Math.abs(answer.refraction.sphere)).toBeLessThanOrEqual(30)
      },
    ),
  )
})

it("for every acuity logMAR to decimal and back is identity", () => {
  fc.assert(
    fc.property(fc.double({ min: -0.3, max: 2, noNaN: true }), (value) => {
      expect(logMARFromDecimal(decimalFromLogMAR(logMAR(value)))).toBeCloseTo(value, 12)
    }),
  )
})
