import { describe, expect, it } from "vitest"
import { decimalAcuity, logMAR } from "../units.js"
import {
  decimalFromLogMAR,
  logMARFromDecimal,
  logMARFromSnellen,
  meanLogMAR,
  snellenFromLogMAR,
} from "./acuity.js"

describe("acuity", () => {
  it("6/6 is 0, whatever the distance", () => {
    for (const text of ["6/6", "20/20", "3 / 3", "6/6,0"])
      expect(logMARFromSnellen(text)).toEqual({ logMAR: 0 })
  })

  it.each(["", "6", "6/0", "0/6", "6/-6", "6/6/6", "counting fingers"])("%j is not a fraction", (text) => {
    expect(logMARFromSnellen(text)).toMatchObject({ problems: [{ path: "acuity", value: text }] })
  })

  it("a decimal of 0 has no logarithm", () => {
    expect(() => logMARFromDecimal(decimalAcuity(0))).toThrow("above 0: 0")
  })

  it("decimal and logMAR are inverse", () => {
    expect(decimalFromLogMAR(logMARFromDecimal(decimalAcuity(0.63)))).toBeCloseTo(0.63, 12)
  })

  it("between chart lines the computed letter size is printed", () => {
    expect(snellenFromLogMAR({ logMAR: logMAR(0.18), numerator: 20 })).toBe("20/30")
    expect(snellenFromLogMAR({ logMAR: logMAR(0.14), numerator: 6 })).toBe("6/8.3")
    expect(snellenFromLogMAR({ logMAR: logMAR(-0.07), numerator: 20 })).toBe("20/17")
    expect(snellenFromLogMAR({ logMAR: logMAR(-0.24), numerator: 20 })).toBe("20/11.5")
  })

  it("no acuity has no mean", () => {
    expect(() => meanLogMAR([])).toThrow("at least one acuity")
  })
})
