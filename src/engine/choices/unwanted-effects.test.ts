import { describe, expect, it } from "vitest"
import { adverseEffects } from "../../evidence/treatments.js"
import { unwantedEffects } from "./unwanted-effects.js"

const drops = (concentrationPercent: number) => ({ kind: "atropine" as const, concentrationPercent })
const wordsOf = (...parts: Parameters<typeof unwantedEffects>[0]) =>
  unwantedEffects(parts, adverseEffects).map(({ from, figures }) => `${from}: ${figures.join(", ")}`)

describe("unwanted effects of drops", () => {
  it("are the rows of exactly this strength", () => {
    expect(wordsOf(drops(0.05))).toEqual([
      "MOSAIC2, year 3, 66 children: light sensitivity 8 %, blurred near vision 15 %, stopped for an unwanted effect 0 %",
      "LAMP phase 1, 12 months: pupil in bright light 1.03 mm wider, accommodation 1.98 D less (placebo 0.32 D)",
    ])
  })

  it("stand beside the comparison of their own trial", () => {
    expect(wordsOf(drops(0.01))).toContain("STAR, 48 months: light sensitivity 24.1 % (vehicle 16.7 %)")
  })

  it("of a strength that nobody told of are none", () => {
    expect(wordsOf(drops(0.04))).toEqual([])
  })

  it("carry their source", () => {
    const sources = unwantedEffects([drops(0.02)], adverseEffects).map(({ source }) => source)
    expect(sources).toEqual(["treatments/zadnik2023"])
  })

  it("of 1 % are marked as common practice without a source", () => {
    expect(wordsOf(drops(1))).toEqual(["common practice, no source: the pupil stays wide for about a week"])
  })

  it("given with orthokeratology name the trial of both", () => {
    expect(wordsOf(drops(0.01), { kind: "orthokeratology" })).toContain(
      "AOK, 24 months, with orthokeratology: pupil in bright light 0.78 mm wider (orthokeratology alone 0.23 mm)",
    )
  })
})

it("of spectacles no figure was read", () => {
  expect(wordsOf({ kind: "lenslet-spectacles" })).toEqual([])
})
