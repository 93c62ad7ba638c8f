import { describe, expect, it } from "vitest"
import { costPer01Mm } from "../../../src/engine/cost/cost-per-01-mm.js"

const plan = {
  currency: "EUR",
  totals: { coveredCents: 30_000, uncertainCents: 20_000, notCoveredCents: 80_000 },
  withoutFee: [],
}
const per = (mm: number, low95: number, high95: number) =>
  costPer01Mm({ plan, withheldMm: { mm, low95, high95 } })

describe("Cost of each 0.1 mm withheld", () => {
  it("is what the family pays, with and without what is uncertain, and what is covered in neither", () => {
    // Four tenths withheld: 800.00 / 4 and 1000.00 / 4; two to six tenths by the interval.
    expect(per(0.4, 0.2, 0.6)).toEqual({
      kind: "cost",
      currency: "EUR",
      notCovered: { cents: 20_000, low95Cents: 13_333, high95Cents: 40_000 },
      withUncertain: { cents: 25_000, low95Cents: 16_667, high95Cents: 50_000 },
    })
  })

  it("is not said where nothing is withheld", () => {
    expect(per(0, -0.1, 0.1)).toEqual({
      kind: "refused",
      why: "no growth is expected to be withheld, so there is no cost per 0.1 mm.",
    })
  })

  it("is not said where the interval reaches down to nothing", () => {
    expect(per(0.2, -0.05, 0.45)).toEqual({
      kind: "refused",
      why: "what is withheld may be nothing (0.20 mm, 95 % between -0.05 and 0.45), so a cost per 0.1 mm would say more than is known.",
    })
  })

  it("is not said where the figures would read as nothing, however exact they are", () => {
    expect(per(0.004, 0.003, 0.005).kind).toBe("refused")
    expect(per(0.2, 0.004, 0.4).kind).toBe("refused")
  })

  it("is not said of a plan that is not complete", () => {
    const answer = costPer01Mm({
      plan: { ...plan, withoutFee: ["orthokeratology"] },
      withheldMm: { mm: 0.4, low95: 0.2, high95: 0.6 },
    })
    expect(answer).toEqual({
      kind: "refused",
      why: "the plan is not complete: there is no fee for orthokeratology.",
    })
  })

  it("takes no interval that does not hold its figure: that is a fault of ours", () => {
    expect(() => per(0.4, 0.5, 0.6)).toThrow("not a length with its interval")
  })
})
