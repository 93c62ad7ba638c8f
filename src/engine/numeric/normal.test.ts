import { describe, expect, it } from "vitest"
import fixture from "../../../test/validation/fixtures/normal.json" with { type: "json" }
import { normalCdf, normalPdf, normalQuantile } from "./normal.js"

// Outside values: pnorm, dnorm and qnorm of base R (test/validation/fixtures/normal.R).
describe("the standard normal distribution", () => {
  it.each(fixture.cdf as [number, number][])("below %f lies the share R says", (z, share) => {
    expect(Math.abs(normalCdf(z) - share)).toBeLessThan(1e-15)
    expect(Math.abs(normalCdf(z) / share - 1)).toBeLessThan(1e-12)
  })

  it.each(fixture.pdf as [number, number][])("at %f has the density R says", (z, density) => {
    expect(Math.abs(normalPdf(z) / density - 1)).toBeLessThan(1e-12)
  })

  it.each(fixture.quantile as [number, number][])("has the quantile R says at %f", (p, z) => {
    expect(Math.abs(normalQuantile(p) - z)).toBeLessThan(1e-12 * Math.max(1, Math.abs(z)))
  })

  it("has its median exactly at 0", () => {
    expect([normalCdf(0), normalQuantile(0.5)]).toEqual([0.5, 0])
  })

  it("has no finite quantile at 0 and 1", () => {
    expect([normalQuantile(0), normalQuantile(1)]).toEqual([-Infinity, Infinity])
  })

  it.each([-0.01, 1.01, Number.NaN])("refuses %f as a probability", (p) => {
    expect(() => normalQuantile(p)).toThrow("probability not in [0, 1]")
  })

  it("is 0 far below and 1 far above", () => {
    expect([normalCdf(-50), normalCdf(50), normalCdf(-Infinity), normalCdf(Infinity)]).toEqual([0, 1, 0, 1])
  })
})
