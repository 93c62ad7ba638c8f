import { describe, expect, it } from "vitest"
import { emmetropicCurve as curve, infancyMean } from "../../evidence/references.js"
import { emmetropicGrowth, emmetropicLength } from "./emmetropic.js"
import { infancyMeanAt } from "./infancy-mean.js"

describe("the emmetropic curve", () => {
  it("grows by nothing in no time, and backwards by as much as forwards", () => {
    expect(emmetropicGrowth({ fromAgeYears: 9, toAgeYears: 9, curve })).toEqual({ mm: 0 })
    const [there, back] = [
      emmetropicGrowth({ fromAgeYears: 8, toAgeYears: 10, curve }),
      emmetropicGrowth({ fromAgeYears: 10, toAgeYears: 8, curve }),
    ]
    expect("mm" in there && "mm" in back && there.mm + back.mm).toBe(0)
  })

  it.each([5.99, 24.01, Number.NaN, Infinity])("refuses age %d", (ageYears) => {
    const refused = `the emmetropic curve yii2023-curve covers 6 to 24 years; age ${ageYears} lies outside`
    expect(emmetropicLength({ ageYears, curve })).toEqual({ refused })
    expect(emmetropicGrowth({ fromAgeYears: 8, toAgeYears: ageYears, curve })).toEqual({ refused })
    expect(emmetropicGrowth({ fromAgeYears: ageYears, toAgeYears: 8, curve })).toEqual({ refused })
  })

  it("answers at both ends of its ages", () => {
    for (const ageYears of [6, 24]) expect(emmetropicLength({ ageYears, curve })).toHaveProperty("mm")
  })
})

describe("the infancy mean", () => {
  it.each([0.2, 6.51])("refuses age %d", (ageYears) => {
    expect(infancyMeanAt({ ageYears, sex: "male", curve: infancyMean })).toEqual({
      refused: `the infancy curve mutti2018-eq covers 0.25 to 6.5 years; age ${ageYears} lies outside`,
    })
  })
})
