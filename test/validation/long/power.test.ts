import { describe, expect, it } from "vitest"
import { study } from "../../../src/engine/growth/study.js"
import { finding, weighing } from "../../../src/engine/response/finding.js"
import { defaultSettings } from "../../../src/engine/settings.js"
import { measurementPlan, type PlanInput } from "../../../src/engine/simulate/plan.js"
import { randomFrom } from "../../../src/engine/simulate/random.js"
import { virtualChild } from "../../../src/engine/simulate/virtual-child.js"
import { evidence } from "../../../src/evidence/index.js"

/**
 * The design's dense prototype (400 virtual East Asian girls, 81 x 81 nodes; 150 for old glasses) told how often 0.05 %
 * is found to work by 24 months. A second program on the same question, so agreement within both sampling errors is asked.
 */
const GIRLS = 2000

function slowed(input: Partial<PlanInput>, percent = 0.05): number {
  const plan = measurementPlan({
    sex: "female",
    ancestry: "east-asian",
    startAgeYears: 8.5,
    treatment: { kind: "atropine", concentrationPercent: percent },
    visitMonths: [0, 6, 12, 18, 24],
    ...input,
  })
  const asOf = plan.visits.at(-1)?.date ?? ""
  let told = 0
  for (let i = 0; i < GIRLS; i++) {
    const { course } = virtualChild({ plan, evidence, random: randomFrom(13 * i + 5) })
    const known = study({ course, asOf, evidence, settings: defaultSettings })
    if (finding(known, weighing(known)).state === "slowed") told++
  }
  return told / GIRLS
}

describe("the chance that a treatment that works is found to work", () => {
  it.each([
    ["from 8.5 years, no earlier record", {}, 0.22, 400],
    ["from 8.5 years, a year of lengths before", { earlierLengths: [-12, -6] }, 0.42, 400],
    ["from 11.5 years", { startAgeYears: 11.5 }, 0.13, 400],
    ["old glasses of two and one years before", { earlierGlasses: [-24, -12] }, 0.43, 150],
    ["lengths of two and one years before instead", { earlierLengths: [-24, -12] }, 0.52, 150],
  ] as const)("%s: as in the prototype", (_, input, prototype, girls) => {
    const noise = Math.sqrt(prototype * (1 - prototype) * (1 / girls + 1 / GIRLS))
    expect(Math.abs(slowed(input) - prototype)).toBeLessThan(2.5 * noise)
  })

  it("rises in a younger eye", () => {
    expect(slowed({ startAgeYears: 6.5 })).toBeGreaterThan(slowed({}) + 0.02)
  })

  it("hardly rises with visits every 3 months or with more readings a visit", () => {
    const usual = slowed({})
    const often = slowed({ visitMonths: [0, 3, 6, 9, 12, 15, 18, 21, 24] })
    expect(Math.abs(often - usual)).toBeLessThan(0.04)
    expect(Math.abs(slowed({ readings: 10 }) - usual)).toBeLessThan(0.04)
  })

  it("is next to nothing with 0.01 %: one child never proves a weak drop", () => {
    expect(slowed({}, 0.01)).toBeLessThan(0.01)
  })
})
