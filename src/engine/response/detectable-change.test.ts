import { describe, expect, it } from "vitest"
import { growthParameters as parameters } from "../../evidence/index.js"
import type { Observation } from "../growth/observations.js"
import { detectableChangeMm } from "./detectable-change.js"

const figure = (sd: number, group = -1): Observation => ({
  kind: "length",
  eye: 0,
  ageYears: 9,
  value: 24,
  ownVariance: sd ** 2,
  sharedVariance: 0,
  visit: 0,
  group,
  groupVariance: 0,
})
const change = (first: Observation, last: Observation) => detectableChangeMm({ first, last, parameters })

describe("the smallest change told from noise", () => {
  it("is 1.96 times the SD of a difference of two figures", () => {
    expect(change(figure(0.03), figure(0.04))).toBeCloseTo(1.96 * 0.05, 12)
  })

  it("is larger when the instrument changed in between", () => {
    const sd = parameters.values.deviceChangeSdMm.value
    expect(change(figure(0.03), figure(0.04, 1))).toBeCloseTo(1.96 * Math.hypot(0.05, sd), 12)
  })

  it("is not larger between two figures of one later instrument", () => {
    expect(change(figure(0.03, 1), figure(0.04, 1))).toBeCloseTo(1.96 * 0.05, 12)
  })
})
