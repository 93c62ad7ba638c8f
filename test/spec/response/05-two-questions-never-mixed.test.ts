import { describe, expect, it } from "vitest"
import { asked, drops, halfYearly } from "./child.js"

const answersOf = (leftMm: readonly number[]) => {
  const { growth, finding } = asked({ visits: halfYearly("2022-06-15", leftMm), treatments: [drops(0.05)] })
  return { growth: growth.state, treatment: finding.state }
}

describe("Whether the eye grows slowly enough and whether it is the treatment are two answers", () => {
  it("a child who always grew slowly: near normal, and whether the drops do anything cannot be told", () => {
    expect(answersOf([23.7, 23.77, 23.84, 23.9, 23.96, 24.01, 24.06, 24.1, 24.14])).toEqual({
      growth: "near-normal",
      treatment: "cannot-tell-yet",
    })
  })

  it("a child who grew twice natural growth and now grows as much: the drops slow it, and it is not enough", () => {
    expect(answersOf([22, 22.55, 23.06, 23.55, 24, 24.21, 24.41, 24.6, 24.78])).toEqual({
      growth: "as-untreated",
      treatment: "slowed",
    })
  })

  it("a child who grew half of natural growth before the drops and grows the same half on them: slowed growth, not slowed by the treatment", () => {
    expect(answersOf([23.48, 23.62, 23.76, 23.88, 24, 24.12, 24.23, 24.34, 24.44])).toEqual({
      growth: "slowed-growth",
      treatment: "cannot-tell-yet",
    })
  })

  it("without treatment there is an answer about the growth and no second question", () => {
    const visits = halfYearly("2024-06-15", [24, 24.21, 24.41])
    const { growth, finding, chances } = asked({ visits })
    expect(growth.state).toBe("as-untreated")
    expect(finding).toMatchObject({
      state: "no-treatment",
      treatment: null,
      likelihoodRatio: null,
      reasons: ["no treatment has begun"],
    })
    expect(chances).toEqual([])
  })
})

describe("Neither answer is read from the other", () => {
  const visits = halfYearly("2022-06-15", [23, 23.27, 23.53, 23.77, 24, 24.11, 24.21, 24.3, 24.39])

  it("the strength on the label changes what is said of the drops, and hardly the growth", () => {
    const [weak, strong] = [0.01, 0.05].map((percent) => asked({ visits, treatments: [drops(percent)] }))
    expect([weak?.finding.state, strong?.finding.state]).toEqual(["cannot-tell-yet", "slowed"])
    expect(weak?.growth.mmPerYear).toBeCloseTo(strong?.growth.mmPerYear as number, 2)
    expect(weak?.growth.state).toBe(strong?.growth.state)
  })
})
