import { describe, expect, it } from "vitest"
import { choicesTable } from "../../../src/engine/choices/choices-table.js"
import { cell, drops, girl, names, optionsFor } from "./child.js"

const USUAL = [
  "atropine 0.01 %",
  "atropine 0.02 %",
  "atropine 0.025 %",
  "atropine 0.05 %",
  "atropine 0.1 %",
  "defocus spectacles",
  "lenslet spectacles",
  "dual-focus lenses",
  "multifocal lenses",
  "orthokeratology",
  "atropine 0.01 % with orthokeratology",
]

describe("Before a treatment, having none stands first and is an option like every other", () => {
  it("then the drops by strength, then the optical treatments, then what was studied together", () => {
    expect(names(optionsFor(girl()))).toEqual(["no treatment", ...USUAL])
  })

  it("every option has every figure, in the same order", () => {
    const rows = choicesTable(optionsFor(girl()))
    expect(rows.map(({ label }) => label)).toEqual([
      "Length of the right eye at 18, kept up until then",
      "Chance of 26 mm by 18, kept up until then",
      "Length of the right eye at 18, treated as planned",
      "Chance of 26 mm by 18, treated as planned",
      "Growth withheld in the next year",
      "How well the effect is known",
      "Unwanted effects",
      "Cost",
      "Cost of each 0.1 mm withheld",
      "Consent",
      "Before it is started",
    ])
    for (const { cells } of rows) {
      expect(cells).toHaveLength(12)
      for (const lines of cells) expect(lines.join("")).not.toBe("")
    }
  })
})

describe("Under a treatment, going on as now stands first", () => {
  it("and is not listed a second time", () => {
    expect(names(optionsFor(girl({ treatments: [drops(0.05)] })))).toEqual([
      "going on with atropine 0.05 %",
      "no treatment",
      ...USUAL.filter((name) => name !== "atropine 0.05 %"),
    ])
  })

  it("on some nights of the week it is another thing than every night", () => {
    const tapered = names(optionsFor(girl({ treatments: [drops(0.05, { nightsPerWeek: 3 })] })))
    expect(tapered).toContain("going on with atropine 0.05 %")
    expect(tapered).toContain("atropine 0.05 %")
  })
})

describe("Drops of 0.5 % and 1 % stand there only when they are asked for", () => {
  it("or in use", () => {
    expect(names(optionsFor(girl(), { withStrong: true }))).toContain("atropine 1 %")
    expect(names(optionsFor(girl({ treatments: [drops(1)] })))[0]).toBe("going on with atropine 1 %")
    expect(names(optionsFor(girl()))).not.toContain("atropine 1 %")
  })

  it("with what is common practice of the pupil, marked as without a source", () => {
    const told = optionsFor(girl(), { withStrong: true })
    expect(cell(told, "unwanted", "atropine 1 %")).toBe(
      "common practice, no source: the pupil stays wide for about a week",
    )
  })
})

describe("Treatments together stand there only where a trial of both was read", () => {
  it("0.01 % with orthokeratology, and no other pair", () => {
    expect(names(optionsFor(girl())).filter((name) => name.includes(" with "))).toEqual([
      "atropine 0.01 % with orthokeratology",
    ])
  })

  it("a pair in use that nobody studied has no figures, and effects are not added up", () => {
    const pair = [drops(0.05), { from: "2025-12-15", kind: "lenslet-spectacles" } as const]
    const told = optionsFor(girl({ treatments: pair }))
    const name = "going on with atropine 0.05 % with lenslet spectacles"
    expect(cell(told, "length", name)).toBe(
      "not given: no trial of these together was read, and effects are never added up",
    )
  })
})
