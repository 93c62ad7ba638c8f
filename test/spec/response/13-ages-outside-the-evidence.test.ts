import { describe, expect, it } from "vitest"
import { asked, drops, lengths } from "./child.js"

const on = "2025-06-15"
const bornOn = (born: string) =>
  asked(
    { child: { born }, visits: [lengths("2024-06-15", 24), lengths(on, 24.3)], treatments: [drops(0.05)] },
    on,
  )

describe("The growth evidence covers children of 6 to 18 years", () => {
  it("the sixth birthday itself counts", () => {
    expect(bornOn("2019-06-15").refused).toBeUndefined()
  })

  it("the eighteenth birthday itself counts", () => {
    expect(bornOn("2007-06-15").refused).toBeUndefined()
  })

  it.each([
    ["a week before the sixth", "2019-06-22"],
    ["a week after the eighteenth", "2007-06-08"],
  ])("%s does not", (_, born) => {
    expect(bornOn(born).refused).toMatch(/covers children of 6 to 18 years/)
  })
})

describe.each([
  ["5", "2020-06-15", "5 years and 0 months"],
  ["25", "2000-06-15", "25 years and 0 months"],
])("A child of %s years is refused by name", (_, born, age) => {
  const answer = bornOn(born)
  const why = `the growth evidence covers children of 6 to 18 years; this child is ${age} old on ${on}`

  it("with the ages that are covered and the child's own", () => {
    expect(answer.refused).toBe(why)
  })

  it("and no number is given of either eye", () => {
    const nothing = {
      length: null,
      rate: null,
      natural: null,
      emmetropic: null,
      detectableChangeMm: null,
      position: { refused: why },
    }
    expect(answer.eyes).toEqual({ right: nothing, left: nothing })
  })

  it("nor of the growth or the treatment", () => {
    expect(answer.growth).toEqual({ state: "unclear", probabilities: null, mmPerYear: null, reasons: [why] })
    expect(answer.finding).toMatchObject({
      state: "cannot-tell-yet",
      treatment: null,
      likelihoodRatio: null,
      lean: null,
      earliestAnswer: null,
      reasons: [why],
    })
    expect(answer.chances).toEqual([])
    expect(answer.beliefs).toEqual([])
  })
})

describe("A child refused without treatment", () => {
  it("has no treatment, and is not left waiting for an answer about one", () => {
    expect(asked({ child: { born: "2020-06-15" }, visits: [lengths(on, 22)] }, on).finding.state).toBe(
      "no-treatment",
    )
  })
})
