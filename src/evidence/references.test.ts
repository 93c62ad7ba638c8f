import { describe, expect, it } from "vitest"
import { emmetropicCurve, infancyMean, references, table } from "./index.js"
import { numberIn } from "./parse-table.js"
import type { InfancyEquation } from "./types.js"

const byId = (id: string) => {
  const found = references.find((reference) => reference.id === id)
  if (found === undefined) throw new Error(id)
  return found
}

describe("references read from the published tables", () => {
  it("are the seven with their grades", () => {
    expect(references.map(({ id, grade, shape }) => `${id} ${shape} ${grade}`)).toEqual([
      "al-europe-sexed-approx normal C",
      "tideman2018-derived normal C",
      "olsm-al centiles B",
      "olsm-lms lms B",
      "truckenbrod2020-se split-normal B",
      "olsm-se centiles B",
      "chen2016-se centiles B",
    ])
  })

  it("have rows at both ends of the ages they claim and none outside", () => {
    for (const reference of references) {
      const ages = reference.rows.map(({ ageYears }) => ageYears)
      expect([Math.min(...ages), Math.max(...ages)]).toEqual([
        reference.youngestAgeYears,
        reference.oldestAgeYears,
      ])
    }
  })

  it("European mean and SD give back the derived centiles within a rounding step", () => {
    // Normal quantiles of 2, 25 and 98 per cent: R, qnorm(c(.02, .25, .98)).
    const quantiles = { p2: -2.053749, p25: -0.6744898, p98: 2.053749 }
    const reference = byId("tideman2018-derived")
    if (reference.shape !== "normal") throw new Error(reference.shape)
    const printed = table("growth-references/al_centiles_europe_derived_normal.csv").rows
    for (const [index, { mean, sd }] of reference.rows.entries()) {
      for (const [column, z] of Object.entries(quantiles)) {
        expect(Math.abs(mean + z * sd - numberIn(printed[index]!, column))).toBeLessThan(0.0051)
      }
    }
  })

  it("Orinda leaves blank cells out: no 10th centile of girls of 7", () => {
    const reference = byId("olsm-al")
    if (reference.shape !== "centiles") throw new Error(reference.shape)
    const girls = reference.rows.find(({ sex, ageYears }) => sex === "female" && ageYears === 7)
    expect(girls?.values).toEqual({ 25: 21.86, 50: 22.37, 75: 22.74 })
  })

  it("Orinda refraction has nothing below the 25th centile, where the myopes are missing", () => {
    const reference = byId("olsm-se")
    if (reference.shape !== "centiles") throw new Error(reference.shape)
    for (const { values } of reference.rows) {
      expect(
        Object.keys(values)
          .map(Number)
          .filter((centile) => centile < 25),
      ).toEqual([])
      expect(values["25"]).toBeDefined()
    }
  })

  it("Guangzhou keeps its six published cells", () => {
    const reference = byId("chen2016-se")
    if (reference.shape !== "centiles") throw new Error(reference.shape)
    expect(reference.rows).toEqual([
      { sex: "all", ageYears: 5, values: { 3: -0.25, 5: 0, 10: 0.25 } },
      { sex: "all", ageYears: 15, values: { 3: -6, 5: -5.65, 10: -4.63 } },
    ])
  })

  it("centiles never cross", () => {
    for (const reference of references) {
      for (const row of reference.rows) {
        const ordered =
          "values" in row
            ? Object.entries(row.values)
                .sort(([a], [b]) => Number(a) - Number(b))
                .map(([, value]) => value)
            : "p3" in row
              ? [row.p3, row.p50, row.p97]
              : []
        expect([...ordered].sort((a, b) => a - b)).toEqual(ordered)
      }
    }
  })
})

describe("curves", () => {
  it("the emmetropic equation gives every printed mean and every gain of the next 12 months", () => {
    const mean = (age: number) =>
      emmetropicCurve.asymptoteMm - emmetropicCurve.spanMm * Math.exp(-emmetropicCurve.ratePerYear * age)
    for (const row of table("growth-references/al_emmetrope_curve.csv").rows) {
      const age = numberIn(row, "age_years")
      expect(Math.abs(mean(age) - numberIn(row, "al_mean_mm"))).toBeLessThan(0.00051)
      expect(Math.abs(mean(age + 1) - mean(age) - numberIn(row, "gain_next_12_months_mm"))).toBeLessThan(
        0.00051,
      )
    }
  })

  it("the infancy equations give every printed mean, boys and girls", () => {
    const at = (equation: InfancyEquation, age: number, girl: boolean) => {
      const t = age - 0.25
      const start = equation.intercept + (girl ? equation.girl : 0)
      return (
        start +
        equation.fast * Math.exp(-equation.fastRatePerYear * t) +
        equation.linear * t +
        equation.quadratic * t * t
      )
    }
    for (const row of table("growth-references/al_se_mean_0_to_6y_mutti2018.csv").rows) {
      const age = numberIn(row, "age_years")
      const girl = row.sex === "F"
      expect(Math.abs(at(infancyMean.axialLengthMm, age, girl) - numberIn(row, "al_mean_mm"))).toBeLessThan(
        0.0051,
      )
      expect(
        Math.abs(at(infancyMean.sphericalEquivalentD, age, girl) - numberIn(row, "se_mean_D")),
      ).toBeLessThan(0.0051)
    }
  })
})
