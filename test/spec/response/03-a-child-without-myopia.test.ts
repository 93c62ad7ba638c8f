import { describe, expect, it } from "vitest"
import { asked, drops, halfYearly } from "./child.js"

const visits = halfYearly("2024-06-15", [23.2, 23.26, 23.32, 23.37, 23.41])
const untreated = asked({ visits, refractionD: 0.5 })

describe("A child who is not myopic is set against the emmetropic curve alone", () => {
  it("it has its growth and the emmetropic line", () => {
    expect(untreated.growth.mmPerYear).toBeCloseTo(0.09, 1)
    expect(untreated.growth.emmetropicMmPerYear).toBeCloseTo(0.085, 3)
  })

  it("no line of untreated myopia, on the child or on either eye", () => {
    expect(untreated.growth.naturalMmPerYear).toBeUndefined()
    expect(untreated.eyes.right.natural).toBeNull()
    expect(untreated.eyes.left.natural).toBeNull()
  })

  it("and no state, with the reason", () => {
    expect(untreated.growth).toMatchObject({ state: "unclear", probabilities: null })
    expect(untreated.growth.reasons).toEqual([expect.stringMatching(/^no myopia: .* emmetropic curve alone/)])
  })

  it("at -0.50 D it is myopic", () => {
    expect(asked({ visits, refractionD: -0.5 }).growth.naturalMmPerYear).toBeCloseTo(0.364, 3)
  })

  it("at -0.25 D it is not", () => {
    expect(asked({ visits, refractionD: -0.25 }).growth.naturalMmPerYear).toBeUndefined()
  })
})

describe("Drops given before there was myopia", () => {
  const treated = asked({ visits, refractionD: 0.5, treatments: [drops(0.05)] })

  it("are not judged, because the trials behind the test were of myopic children", () => {
    expect(treated.finding).toMatchObject({
      state: "cannot-tell-yet",
      treatment: "atropine 0.05 %",
      likelihoodRatio: null,
      lean: null,
      earliestAnswer: null,
      reasons: [expect.stringMatching(/^no myopia before the treatment/)],
    })
  })

  it("and no chance of an answer is held out", () => {
    expect(treated.chances).toEqual([])
  })
})

describe("A child whom nobody refracted", () => {
  const unknown = asked({ visits, refractionD: null })

  it("is taken as myopic, and that is said", () => {
    expect(unknown.growth.naturalMmPerYear).toBeCloseTo(0.364, 3)
    expect(unknown.checks).toContainEqual(
      expect.objectContaining({ kind: "refraction-missing", why: expect.stringMatching(/taken as myopic/) }),
    )
  })
})
