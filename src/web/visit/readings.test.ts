import { describe, expect, it } from "vitest"
import { parseNumber, parseReadings } from "./readings.js"

describe("readings typed into one field", () => {
  it("gives mean, spread and count", () => {
    expect(parseReadings("24.03 24.02 24.02 24.01 24.03")).toEqual({
      kind: "readings",
      mean: 24.022,
      spread: 0.02,
      count: 5,
    })
  })
  it("takes a comma for the decimal point", () => {
    expect(parseReadings("24,03  24,01")).toMatchObject({ mean: 24.02, count: 2 })
  })
  it("names the word that is no number", () => {
    expect(parseReadings("24.03 24.o2")).toEqual({ kind: "fault", message: "not a number: 24.o2" })
  })
  it("is nothing when the field is empty", () => {
    expect(parseReadings("  ")).toEqual({ kind: "none" })
  })
})

describe("one number", () => {
  it("takes a typographic minus", () => {
    expect(parseNumber("−0.1")).toBe(-0.1)
  })
  it("refuses an exponent, a unit and an empty text", () => {
    expect([parseNumber("1e3"), parseNumber("4mm"), parseNumber("")]).toEqual([null, null, null])
  })
})
