import { describe, expect, it } from "vitest"
import { order, written } from "./bench.js"

describe("One dilution: strength times volume stays the same", () => {
  it("10 mL of 0.05 % from 1 %: 10 x 0.05 / 1 = 0.5 mL of stock, and 9.5 mL of diluent", () => {
    expect(written(order({ concentrationPercent: 0.05 }))).toEqual(["0.5 mL of stock 1 % + 9.5 mL = 0.05 %"])
  })

  it("100 mL of 0.01 % from 1 %: 1 in 100 (common practice, no source)", () => {
    expect(written(order({ concentrationPercent: 0.01, bottles: 10 }))).toEqual([
      "1 mL of stock 1 % + 99 mL = 0.01 %",
    ])
  })

  it("5 mL of 0.25 % from 0.5 %: half and half", () => {
    const half = order({ concentrationPercent: 0.25, stockPercent: 0.5, volumeMl: 5 })
    expect(written(half)).toEqual(["2.5 mL of stock 0.5 % + 2.5 mL = 0.25 %"])
  })

  it("1 % from 1 %: poured undiluted, with no error of measuring", () => {
    const poured = order({ concentrationPercent: 1 })
    expect(written(poured)).toEqual(["10 mL of stock 1 % + 0 mL = 1 %"])
    expect([poured.low95Percent, poured.high95Percent]).toEqual([1, 1])
  })

  it("a volume between two marks is read to the nearer one, and the strength is that of what was read", () => {
    // 10 x 0.0333 / 1 = 0.333 mL, not measurable; with a finer device it is read as 0.33 mL: 0.33 / 10 = 0.033 %.
    const read = order({ concentrationPercent: 0.0333, smallestVolumeMl: 0.1 })
    expect(read.steps[0]?.takeMl).toBe(0.33)
    expect(read.finalPercent).toBeCloseTo(0.033, 12)
  })

  it("the milligrams, followed step by step, come to the same strength", () => {
    // 0.5 mL of 10 mg/mL is 5 mg; in 10 mL 0.5 mg/mL; that is 0.05 %.
    expect(order({ concentrationPercent: 0.05 }).checkPercent).toBeCloseTo(0.05, 12)
  })
})
