import { describe, expect, it } from "vitest"
import { order } from "./bench.js"

const cautions = (request: Parameters<typeof order>[0]) => order(request).cautions.join(" ")

describe("What is in the bottle", () => {
  it("0.05 % is 0.5 mg in 1 mL, so 10 mL hold 5 mg", () => {
    expect(order({ concentrationPercent: 0.05 }).mgPerBottle).toBe(5)
  })

  it("from 5 mg on a child who swallows it may be severely poisoned (evidence: clinical, TOXINFO): the order says so", () => {
    expect(cautions({ concentrationPercent: 0.05 })).toMatch(
      /holds 5 mg of atropine: from 5 mg severe poisoning of a child/,
    )
  })

  it("5 mL of 0.05 % hold 2.5 mg, and 10 mL of 0.01 % 1 mg: no such caution", () => {
    for (const request of [{ concentrationPercent: 0.05, volumeMl: 5 }, { concentrationPercent: 0.01 }])
      expect(cautions(request)).not.toMatch(/poisoning/)
  })

  it("what counts is one bottle, not the batch", () => {
    const batch = order({ concentrationPercent: 0.01, bottles: 12 })
    expect([batch.mgPerBottle, batch.poisonCaution]).toEqual([1, false])
  })

  it("every order says that it is one for a pharmacist", () => {
    expect(cautions({ concentrationPercent: 0.01 })).toMatch(
      /^An order for a pharmacist, .* not to be made at home or in the practice/,
    )
  })
})
