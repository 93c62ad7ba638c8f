import { describe, expect, it } from "vitest"
import { defaultSettings } from "../../../src/engine/settings.js"
import { asked, drops, halfYearly } from "./child.js"

// Two years of natural growth before the drops, then half-yearly visits.
const before = [23, 23.27, 23.53, 23.77, 24]
const then = (...after: number[]) => ({
  visits: halfYearly("2022-06-15", [...before, ...after]),
  treatments: [drops(0.05)],
})
const findingOf = (...after: number[]) => asked(then(...after)).finding

describe("How many times likelier are these lengths if the drops work as in the trials than if they do nothing?", () => {
  it("nine times or more: slowed, with the treatment by name and the day of the length that settled it", () => {
    const found = findingOf(24.07, 24.14, 24.2, 24.26)
    expect(found).toMatchObject({
      state: "slowed",
      lean: "slowed",
      treatment: "atropine 0.05 %",
      earliestAnswer: "2026-06-15",
    })
    expect(found.likelihoodRatio).toBeGreaterThanOrEqual(9)
  })

  it("a ninth or less: not slowed", () => {
    const found = findingOf(24.24, 24.46, 24.67, 24.86)
    expect(found).toMatchObject({ state: "not-slowed", lean: "not-slowed", earliestAnswer: "2026-06-15" })
    expect(found.likelihoodRatio).toBeLessThanOrEqual(1 / 9)
  })

  it("between the two: cannot tell yet, with the ratio in words", () => {
    const found = findingOf(24.13)
    expect(found.state).toBe("cannot-tell-yet")
    expect(found.reasons).toEqual([
      expect.stringMatching(/^the figures fit both: \d\.\d : 1 (for|against) an effect, 9 : 1 is asked for$/),
    ])
  })
})

describe("The limits follow from the error rates the practice accepts", () => {
  it("a tenth and a tenth: nine and a ninth", () => {
    const { upper, lower } = findingOf(24.13)
    expect([upper, lower]).toEqual([expect.closeTo(9, 9), expect.closeTo(1 / 9, 9)])
  })

  it("a twentieth and a twentieth: 19 and 1/19", () => {
    const settings = { ...defaultSettings, alpha: 0.05, beta: 0.05 }
    const { upper, lower } = asked(then(24.13), undefined, settings).finding
    expect([upper, lower]).toEqual([expect.closeTo(19, 9), expect.closeTo(1 / 19, 9)])
  })

  it("the same lengths that are an answer at a tenth are none yet at a hundredth", () => {
    const story = then(24.11, 24.21, 24.3, 24.39)
    expect(asked(story).finding.state).toBe("slowed")
    const settings = { ...defaultSettings, alpha: 0.01, beta: 0.01 }
    expect(asked(story, undefined, settings).finding).toMatchObject({
      state: "cannot-tell-yet",
      lean: "slowed",
    })
  })
})

describe("Short of an answer there may be a lean", () => {
  it.each([
    ["towards slowed from 3 on", [24.1, 24.2], "slowed"],
    ["towards not slowed from a third down", [24.24, 24.46], "not-slowed"],
    ["none between", [24.14, 24.27], null],
  ] as const)("%s", (_, after, lean) => {
    const found = findingOf(...after)
    const ratio = found.likelihoodRatio as number
    expect(found).toMatchObject({ state: "cannot-tell-yet", lean })
    expect(ratio >= 3 ? "slowed" : ratio <= 1 / 3 ? "not-slowed" : null).toBe(lean)
  })
})

describe("A record from before treatment is what an answer rests on", () => {
  it("the same two years on drops tell less when nothing is known of the years before", () => {
    const alone = asked({
      visits: halfYearly("2024-06-15", [24, 24.11, 24.21, 24.3, 24.39]),
      treatments: [drops(0.05)],
    })
    expect(alone.finding.state).toBe("cannot-tell-yet")
    expect(findingOf(24.11, 24.21, 24.3, 24.39).state).toBe("slowed")
  })
})
