import { describe, expect, it } from "vitest"
import { order, refusal, written } from "./bench.js"

describe("A transfer too small to measure goes by way of a weaker solution", () => {
  it("10 mL of 0.01 % from 1 % would need 0.1 mL: a tenth is made first", () => {
    // 0.5 mL + 4.5 mL = 5 mL of 0.1 %; of these 1 mL, the other 4 mL are discarded; 1 mL + 9 mL = 10 mL of 0.01 %.
    const serial = order({ concentrationPercent: 0.01 })
    expect(written(serial)).toEqual([
      "0.5 mL of stock 1 % + 4.5 mL = 0.1 %",
      "1 mL of step 1, 0.1 % + 9 mL = 0.01 %",
    ])
    expect(serial.steps.map(({ discardMl }) => discardMl)).toEqual([4, 0])
  })

  it("10 mL of 0.025 % from 1 % would need 0.25 mL: a tenth first, then 2.5 mL of it", () => {
    expect(written(order({ concentrationPercent: 0.025 }))).toEqual([
      "0.5 mL of stock 1 % + 4.5 mL = 0.1 %",
      "2.5 mL of step 1, 0.1 % + 7.5 mL = 0.025 %",
    ])
  })

  it("a syringe that measures 0.1 mL needs no second step", () => {
    const fine = order({ concentrationPercent: 0.01, smallestVolumeMl: 0.1 })
    expect(written(fine)).toEqual(["0.1 mL of stock 1 % + 9.9 mL = 0.01 %"])
  })

  it("neither does a batch of 50 mL", () => {
    const batch = order({ concentrationPercent: 0.01, bottles: 5 })
    expect(written(batch)).toEqual(["0.5 mL of stock 1 % + 49.5 mL = 0.01 %"])
  })

  it("nor a weaker stock", () => {
    const weak = order({ concentrationPercent: 0.01, stockPercent: 0.1 })
    expect(written(weak)).toEqual(["1 mL of stock 0.1 % + 9 mL = 0.01 %"])
  })

  it("what no number of steps can measure is refused with the way out", () => {
    expect(refusal({ concentrationPercent: 0.01, volumeMl: 0.8 })).toMatch(
      /cannot be made without measuring less than 0.5 mL; order more at once or measure smaller volumes/,
    )
  })
})
