import { readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { beforeMyopiaEvidence } from "./before-myopia.js"
import { sourceById } from "./sources.js"

// Held to the tables as carried in: progression/f_onset_predictors.csv, growth-references/*olsm.csv,
// treatments/optical-treatments.json.
const folder = "src/evidence/tables"
const lines = readFileSync(`${folder}/progression/f_onset_predictors.csv`, "utf8").split("\n")
const lineOf = (row: string) => lines.find((line) => line.startsWith(`${row},`)) ?? ""
const { cutOffs, shares, parents, advice, betweenEyesSd } = beforeMyopiaEvidence

describe("what was read about children before myopia", () => {
  it.each(cutOffs)("cut-off $row has the source and the figures of its row", (cutOff) => {
    const line = lineOf(cutOff.row)
    expect(line).toContain(cutOff.source.split("/")[1])
    for (const value of [cutOff.lowD, cutOff.highD]) expect(line).toContain(value.toFixed(2))
    expect(line).toContain(cutOff.obtained)
    const rates = `${cutOff.sensitivity ?? ""} ${cutOff.specificity ?? ""}`.match(/0\.\d+/g) ?? []
    for (const rate of rates) expect(line).toContain(rate)
  })

  it.each(cutOffs)("cut-off $row counts its own border as the row does", (cutOff) => {
    const isAtOrBelow = /at or below/.test(lineOf(cutOff.row).split(",")[2] ?? "")
    expect(cutOff.isAtCutOffAtRisk).toBe(isAtOrBelow)
  })

  it.each(parents)("odds of row $row are those of its row", ({ row, oddsRatio, low95, high95, obtained }) => {
    const [value, low, high, , how] = lineOf(row).split(",").slice(4)
    expect([Number(value), Number(low), Number(high), how]).toEqual([oddsRatio, low95, high95, obtained])
  })

  it("shares are those that were computed from the public file", () => {
    const rows = readFileSync(`${folder}/growth-references/myopia_within_5y_by_se_at_6_olsm.csv`, "utf8")
      .split("\n")
      .filter((line) => line.startsWith("all,6"))
      .map((line) => line.split(",").slice(2))
    const number = (text: string | undefined) => (text === "" || text === undefined ? null : Number(text))
    expect(rows.map((cells) => cells.map(number))).toEqual(
      shares.bands.map((band) => [
        band.fromD,
        band.belowD,
        band.n,
        band.became,
        band.percent,
        band.low95,
        band.high95,
      ]),
    )
  })

  it("advice has no figure that its row does not have", () => {
    const outdoor = readFileSync(`${folder}/treatments/optical-treatments.json`, "utf8")
    const duties = readFileSync(`${folder}/clinical/duties.json`, "utf8")
    for (const { what, findings } of advice) {
      for (const figure of what.match(/\d+/g) ?? []) expect(duties).toContain(figure)
      for (const { words, source } of findings) {
        const [register, name = ""] = source.split("/")
        const text =
          register === "treatments" ? outdoor : lines.filter((line) => line.includes(name)).join("\n")
        for (const figure of words.replaceAll("95 %", "").match(/\d+\.\d+/g) ?? [])
          expect(text, `${source} ${figure}`).toContain(figure)
      }
    }
  })

  it("names sources that are in the register, none of them from memory", () => {
    const rows = [...cutOffs, ...parents, shares, ...advice.flatMap(({ findings }) => findings)]
    for (const { source, obtained } of rows) {
      expect(sourceById(source), source).toBeDefined()
      expect(obtained).not.toMatch(/memory/)
    }
  })

  it("knows how emmetropic eyes differ at every age of the curve", () => {
    expect(betweenEyesSd.length).toBeGreaterThan(10)
    expect(betweenEyesSd.every(({ mm }) => mm > 0.5 && mm < 1)).toBe(true)
  })
})
