import { describe, expect, it } from "vitest"
import { refractionSummary } from "./refraction-summary.js"

describe("readings of one eye are summed up", () => {
  it("one reading is itself", () => {
    expect(refractionSummary(["-2.25 -0.50 x 180"])).toEqual({
      m: -2.5,
      j0: 0.25,
      j45: 0,
      sphericalEquivalent: -2.5,
      printed: "-2.25 -0.50 x 180",
    })
  })

  it("axes on both sides of 180 average to 180", () => {
    expect(refractionSummary(["-2.00 -1.00 x 170", "-2.00 -1.00 x 10"])).toMatchObject({
      m: -2.5,
      printed: "-2.00 -1.00 x 180",
    })
  })

  it("a vertex distance takes them to the cornea", () => {
    // -10.00 at 12 mm is -8.93 at the cornea: K29 of the clinical evidence
    expect(refractionSummary(["-10.00"], { vertexMm: 12 })).toMatchObject({ printed: "-9.00 DS" })
    expect(refractionSummary(["-10.00"], { vertexMm: 12 })).toHaveProperty("m", -10 / 1.12)
  })

  it("every fault of every reading and of the distance comes back at once", () => {
    const answer = refractionSummary(["-2.25 -0.50", "-3.00", "+1 -1 x 190"], { vertexMm: 21 })
    const faults = "problems" in answer ? answer.problems.map(({ path, value }) => [path, value]) : []
    expect(faults).toEqual([
      ["vertexMm", 21],
      ["readings[0].axis", null],
      ["readings[2].axis", "190"],
    ])
  })

  it("no reading and no number are faults", () => {
    expect(refractionSummary([])).toMatchObject({ problems: [{ path: "readings", value: null }] })
    expect(refractionSummary(["plano"], { vertexMm: Number.NaN })).toHaveProperty("problems")
  })

  it("the strongest lens that can be read can be taken to the cornea", () => {
    expect(refractionSummary(["+30 +15 x 90"], { vertexMm: 20 })).toHaveProperty("m")
  })
})
