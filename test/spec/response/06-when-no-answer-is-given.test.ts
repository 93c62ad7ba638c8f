import { describe, expect, it } from "vitest"
import { asked, drops, halfYearly, lengths } from "./child.js"

const before = halfYearly("2022-06-15", [23, 23.27, 23.53, 23.77, 24])

describe("No finding from one length", () => {
  it("however long the drops are given", () => {
    const answer = asked({ visits: [lengths("2024-06-15", 24)], treatments: [drops(0.05)] }, "2026-06-15")
    expect(answer.finding).toMatchObject({
      state: "cannot-tell-yet",
      lean: null,
      reasons: ["only one length has been measured"],
    })
  })

  it("and none without any", () => {
    const answer = asked({ visits: [{ date: "2024-06-15" }], treatments: [drops(0.05)] })
    expect(answer.finding).toMatchObject({
      state: "cannot-tell-yet",
      likelihoodRatio: null,
      reasons: ["no length has been measured"],
    })
  })
})

describe("No finding before the eye, untreated, would have grown more than the instrument can tell", () => {
  // An eye that shrinks by 0.35 mm in six weeks would be an answer if the figures alone were asked.
  const answer = asked({ visits: [...before, lengths("2024-07-27", 23.65)], treatments: [drops(0.05)] })

  it("not even from figures that would be one", () => {
    expect(answer.finding.likelihoodRatio).toBeGreaterThan(9)
    expect(answer.finding).toMatchObject({ state: "cannot-tell-yet", lean: null })
  })

  it("and the two lengths that are compared are named", () => {
    expect(answer.finding.reasons).toEqual([
      "too early: untreated, the eye would have grown 0.05 mm since the start, less than the 0.07 mm that can be told",
    ])
  })

  it("at three months that is past", () => {
    const later = asked({ visits: [...before, lengths("2024-09-15", 24.1)], treatments: [drops(0.05)] })
    expect(later.finding.reasons).toEqual([expect.stringMatching(/^the figures fit both/)])
  })
})

describe("No finding about a treatment that no trial was read of", () => {
  const onThese = (percent?: number) =>
    asked({
      visits: [...before, ...halfYearly("2024-12-15", [24.05, 24.1, 24.14, 24.18])],
      treatments: [percent === undefined ? { kind: "atropine", from: "2024-06-15" } : drops(percent)],
    })

  it.each([
    ["0.03 %", 0.03],
    ["0.015 %", 0.015],
    ["a strength nobody wrote down", undefined],
  ])("%s", (_, percent) => {
    expect(onThese(percent).finding).toMatchObject({
      state: "cannot-tell-yet",
      likelihoodRatio: null,
      lean: null,
      reasons: [expect.stringMatching(/^no trial of this treatment at this strength was read/)],
    })
  })

  it("and no chances of one either", () => {
    expect(onThese(0.03).chances).toEqual([])
  })

  it("but the growth is judged as ever", () => {
    expect(onThese(0.03).growth.state).toBe("near-normal")
  })
})

describe("No treatment to judge", () => {
  it("on the day before it begins", () => {
    const answer = asked({ visits: before, treatments: [drops(0.05, "2024-06-16")] })
    expect(answer.finding.state).toBe("no-treatment")
  })

  it("when 'none' is what was written down", () => {
    const answer = asked({ visits: before, treatments: [{ kind: "none", from: "2022-06-15" }] })
    expect(answer.finding.state).toBe("no-treatment")
  })
})
