import { describe, expect, it } from "vitest"
import { order } from "./bench.js"

const relative = ({ high95Percent, finalPercent }: ReturnType<typeof order>) =>
  high95Percent / finalPercent - 1

describe("How far off the strength may be", () => {
  it("each measured volume stands with its own limits", () => {
    // 0.5 mL within 3 %: 0.485 to 0.515 mL. 9.5 mL within 3 %: 9.215 to 9.785 mL.
    expect(order({ concentrationPercent: 0.05 }).steps[0]).toMatchObject({
      takeLow95Ml: 0.485,
      takeHigh95Ml: 0.515,
      diluentLow95Ml: 9.215,
      diluentHigh95Ml: 9.785,
    })
  })

  it("one dilution, 1 in 20: 19/20 of both errors, added as squares, is 4.03 %", () => {
    // 0.95 x sqrt(3^2 + 3^2) = 0.95 x 4.2426 = 4.03
    expect(relative(order({ concentrationPercent: 0.05 }))).toBeCloseTo(0.0403, 4)
  })

  it("two dilutions, each 1 in 10: 5.40 %", () => {
    // each 0.9 x sqrt(3^2 + 3^2) = 3.818; sqrt(3.818^2 + 3.818^2) = 5.40
    expect(relative(order({ concentrationPercent: 0.01 }))).toBeCloseTo(0.054, 4)
  })

  it("a more exact device counts where it measures", () => {
    // stock by syringe within 2 %, diluent by cylinder within 1 %: 0.95 x sqrt(2^2 + 1^2) = 2.124 %
    const devices = [
      {
        name: "syringe 1 mL",
        smallestVolumeMl: 0.2,
        largestVolumeMl: 1,
        graduationMl: 0.01,
        toleranceFraction: 0.02,
      },
      {
        name: "cylinder 25 mL",
        smallestVolumeMl: 2,
        largestVolumeMl: 25,
        graduationMl: 0.5,
        toleranceFraction: 0.01,
      },
    ]
    const measured = order({ concentrationPercent: 0.05, devices })
    expect(relative(measured)).toBeCloseTo(0.02124, 5)
    expect(measured.steps[0]).toMatchObject({ takeWith: "syringe 1 mL", diluentWith: "cylinder 25 mL" })
  })

  it("a stock that may be 5 % off its label adds to it: sqrt(5.40^2 + 5^2) = 7.36 %", () => {
    expect(relative(order({ concentrationPercent: 0.01, stockTolerance: 0.05 }))).toBeCloseTo(0.0736, 4)
  })
})

describe("The limits: 93 to 107 % of the label (evidence: treatments/compounding.json, usp.monograph)", () => {
  it("5.40 % lies within 7 %", () => {
    const { withinLimits, waysInside } = order({ concentrationPercent: 0.01 })
    expect([withinLimits, waysInside]).toEqual([true, []])
  })

  it("7.36 % does not, and the order says what would mend it", () => {
    const { withinLimits, waysInside } = order({ concentrationPercent: 0.01, stockTolerance: 0.05 })
    expect(withinLimits).toBe(false)
    expect(waysInside.map(({ words }) => words)).toEqual([
      // One step of 1 in 100: sqrt((0.99 x 4.243)^2 + 5^2) = 6.53 %.
      "make 50 mL in one batch (5 bottles), or discard what is left of it",
      // 0.5 %: 1 in 10, then 2 in 10: sqrt((0.9 x 4.243)^2 + (0.8 x 4.243)^2 + 5^2) = 7.15 %, still outside.
      // 0.25 %: 1 in 10, then 4 in 10: sqrt((0.9 x 4.243)^2 + (0.6 x 4.243)^2 + 5^2) = 6.79 %.
      "start from a stock of 0.25 %",
      // 0.9 x 2 t, squared, and 5^2 may be 7^2 at the most: t = 2.72 %.
      "measure every volume within 2.7 % instead of 3 %",
      // sqrt(7^2 - 5.40^2) = 4.45 %.
      "use a stock known to within 4.4 % of its label instead of 5 %",
    ])
  })

  it("an interval far outside is outside however large the batch", () => {
    const { waysInside } = order({ concentrationPercent: 0.01, transferTolerance: 0.08 })
    expect(waysInside.map(({ kind }) => kind)).not.toContain("larger-volume")
  })
})
