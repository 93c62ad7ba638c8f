import { describe, expect, it } from "vitest"
import { addMonths } from "../../../src/engine/calendar.js"
import { asked, drops, halfYearly, lengths } from "./child.js"

const slowing = [23, 23.27, 23.53, 23.77, 24, 24.07, 24.14, 24.2, 24.26]
const treatments = [drops(0.05)]

describe("Ultrasound is some ten times coarser than optical biometry", () => {
  const by = (method: "optical-biometry" | "ultrasound") =>
    asked({ visits: halfYearly("2022-06-15", slowing, { method }), treatments })

  it("the smallest change that can be told is half a millimetre instead of seven hundredths", () => {
    expect(by("ultrasound").eyes.left.detectableChangeMm).toBeCloseTo(0.5, 2)
    expect(by("optical-biometry").eyes.left.detectableChangeMm).toBeCloseTo(0.07, 2)
  })

  it("so the same figures that are an answer by light are none by sound", () => {
    expect(by("optical-biometry").finding.state).toBe("slowed")
    expect(by("ultrasound").finding.state).toBe("cannot-tell-yet")
  })

  it("and the growth stays unclear, because a year of growth is less than it can tell", () => {
    expect(by("ultrasound").growth).toMatchObject({
      state: "unclear",
      reasons: [expect.stringMatching(/^too early or too coarse to tell: .*less than the 0\.50 mm/)],
    })
  })
})

describe("Another instrument between two visits", () => {
  const changedAt = (place: number) =>
    asked({
      visits: slowing.map((mm, i) =>
        lengths(addMonths("2022-06-15", 6 * i), mm, mm + 0.1, { device: i < place ? "A" : "B" }),
      ),
      treatments,
    })
  const [never, atStart] = [changedAt(99), changedAt(5)]

  it("costs certainty: the interval of the growth is wider", () => {
    // The first figure by B stands within the last twelve months.
    const late = changedAt(8)
    const width = ({ growth }: typeof never) => (growth.high95 as number) - (growth.low95 as number)
    expect(width(late)).toBeGreaterThan(1.2 * width(never))
  })

  it("costs an answer about the drops part of its strength", () => {
    expect(atStart.finding.likelihoodRatio).toBeLessThan(never.finding.likelihoodRatio as number)
  })

  it("makes the smallest change that can be told larger", () => {
    expect(changedAt(8).eyes.left.detectableChangeMm).toBeGreaterThan(
      1.3 * (never.eyes.left.detectableChangeMm as number),
    )
  })

  it("costs nothing where it was there from the first visit", () => {
    expect(changedAt(0).finding.likelihoodRatio).toBeCloseTo(never.finding.likelihoodRatio as number, 9)
  })
})

describe("More readings at a visit", () => {
  it("help only a little, since the time of day does not average out", () => {
    const by = (readings: number) =>
      asked({ visits: halfYearly("2024-06-15", [24, 24.1], { readings }) }).eyes.left
        .detectableChangeMm as number
    expect(by(12)).toBeLessThan(by(3))
    expect(by(12)).toBeGreaterThan(0.7 * by(3))
  })
})
