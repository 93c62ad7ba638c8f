import { describe, expect, it } from "vitest"
import { defaultSettings } from "../../../src/engine/settings.js"
import { asked, halfYearly, lengths } from "./child.js"

// From 9 and a half to 10 and a half this girl would grow 0.36 mm untreated and 0.09 mm without myopia, two years
// from the start 0.78 mm and 0.20 mm. The four states divide the way between the two lines at a quarter and three
// quarters, and at half as much again beyond natural growth.
const grewTo = (...mm: number[]) => asked({ visits: halfYearly("2024-06-15", [24, ...mm]) }).growth

describe("Four states, each a stretch of the scale from emmetropic to natural growth", () => {
  it("near normal: 0.07 mm in the last year", () => {
    expect(grewTo(24.04, 24.08, 24.12, 24.15).state).toBe("near-normal")
  })

  it("slowed growth: 0.20 mm", () => {
    expect(grewTo(24.12, 24.22, 24.32, 24.42).state).toBe("slowed-growth")
  })

  it("as untreated: 0.37 mm", () => {
    expect(grewTo(24.21, 24.41, 24.6, 24.78).state).toBe("as-untreated")
  })

  it("faster: 0.65 mm", () => {
    expect(grewTo(24.38, 24.74, 25.08, 25.39).state).toBe("faster")
  })

  it("each with its probability, which together make one", () => {
    const { probabilities } = grewTo(24.21, 24.41, 24.6, 24.78)
    expect(Object.keys(probabilities ?? {})).toEqual([
      "near-normal",
      "slowed-growth",
      "as-untreated",
      "faster",
    ])
    expect(Object.values(probabilities ?? {}).reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 9)
  })

  it("beside them the rate with its interval, and both lines over the same dates", () => {
    const { mmPerYear, low95, high95, naturalMmPerYear, emmetropicMmPerYear } = grewTo(
      24.21,
      24.41,
      24.6,
      24.78,
    )
    expect(mmPerYear).toBeCloseTo(0.37, 2)
    expect(low95).toBeLessThan(0.37)
    expect(high95).toBeGreaterThan(0.37)
    expect(naturalMmPerYear).toBeCloseTo(0.364, 3)
    expect(emmetropicMmPerYear).toBeCloseTo(0.085, 3)
  })
})

describe("Unclear, when no state is certain enough", () => {
  const between = grewTo(24.11, 24.2, 24.29, 24.36)

  it("says which is likeliest, how certain it is, and what is asked for", () => {
    expect(between.state).toBe("unclear")
    expect(between.reasons[0]).toMatch(
      /^the likeliest state, (near normal|slowed growth), is only \d\d % certain; 80 % is asked for$/,
    )
  })

  it("names two neighbouring states when they are certain together", () => {
    expect(between.reasons[1]).toMatch(/^near normal or slowed growth together: (9\d|over 99) % certain$/)
  })

  it("names no pair when two together are not certain enough either", () => {
    const visits = [lengths("2024-06-15", 24), lengths("2024-09-20", 24.07)]
    const reasonsAt = (certainty: number) =>
      asked({ visits }, undefined, { ...defaultSettings, certainty }).growth.reasons
    expect(reasonsAt(0.8)[1]).toMatch(/^slowed growth or as untreated together/)
    expect(reasonsAt(0.95)).toEqual([expect.stringMatching(/95 % is asked for$/)])
  })

  it("is less often said by a practice that asks for less certainty", () => {
    const visits = halfYearly("2024-06-15", [24, 24.11, 24.2, 24.29, 24.36])
    const settings = { ...defaultSettings, certainty: 0.5 }
    expect(asked({ visits }, undefined, settings).growth.state).not.toBe("unclear")
  })
})

describe("Unclear, when the two lines lie closer together than the instrument can tell", () => {
  it("because the interval is short: six weeks", () => {
    const { state, reasons } = asked({
      visits: [lengths("2024-06-15", 24), lengths("2024-07-27", 24.05)],
    }).growth
    expect(state).toBe("unclear")
    expect(reasons).toEqual([
      expect.stringMatching(
        /^too early or too coarse to tell: natural and emmetropic growth lie only 0\.04 mm apart/,
      ),
    ])
  })

  it("because growth is ending: half a year at 16", () => {
    const { state, reasons } = asked({
      child: { born: "2008-06-15" },
      visits: [lengths("2024-06-15", 25), lengths("2024-12-15", 25.05)],
    }).growth
    expect(state).toBe("unclear")
    expect(reasons).toEqual([expect.stringMatching(/^growth is ending: .* less than the 0\.07 mm/)])
  })

  it("the probabilities are shown all the same, so that nobody takes silence for safety", () => {
    const { probabilities } = asked({
      visits: [lengths("2024-06-15", 24), lengths("2024-07-27", 24.05)],
    }).growth
    expect(probabilities).not.toBeNull()
  })
})

describe("Unclear, when there is nothing to tell growth from", () => {
  it.each([
    ["one visit", [lengths("2024-06-15", 24)]],
    [
      "the right eye at one visit and the left at the next",
      [
        { date: "2024-06-15", right: { axialLength: { mm: 24 } } },
        { date: "2025-06-15", left: { axialLength: { mm: 24.3 } } },
      ],
    ],
  ])("%s", (_, visits) => {
    expect(asked({ visits }).growth).toMatchObject({
      state: "unclear",
      probabilities: null,
      mmPerYear: null,
      reasons: ["there are not yet two lengths of the same eye to tell growth from"],
    })
  })
})

describe("One eye is enough", () => {
  it("a child with lengths of the left eye alone has a state", () => {
    const visits = halfYearly("2024-06-15", [24, 24.21, 24.41, 24.6, 24.78]).map(({ date, left }) => ({
      date,
      left,
    }))
    expect(asked({ visits }).growth.state).toBe("as-untreated")
    expect(asked({ visits }).eyes.right.length).toBeNull()
  })
})
