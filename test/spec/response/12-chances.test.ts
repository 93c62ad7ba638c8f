import { describe, expect, it } from "vitest"
import type { Chance } from "../../../src/engine/assessment.js"
import { asked, drops, halfYearly, lengths } from "./child.js"

const yearBefore = [lengths("2023-06-15", 23.53), lengths("2024-06-15", 24)]
const startOf = (percent: number) => asked({ visits: yearBefore, treatments: [drops(percent)] })

describe("Before anyone starts, the chance of an answer by each coming review is told", () => {
  const start = startOf(0.05)

  it("once if the drops work as in the trials, once if they do nothing, for every review with a length", () => {
    expect(start.chances.map(({ step, review }) => `${review} ${step}`)).toEqual([
      "2024-12-15 6-month review",
      "2025-06-15 12-month review",
      "2025-12-15 18-month review",
      "2026-06-15 24-month review",
      "2026-12-15 check 6 months after the stop",
    ])
  })

  it("it grows from review to review", () => {
    for (const which of ["ifItWorks", "ifNot"] as const) {
      const told = start.chances.map((chance) => chance[which])
      expect(told).toEqual(told.toSorted((a, b) => a - b))
      expect(told.at(-1)).toBeGreaterThan(told[0] as number)
    }
  })

  it("with 0.05 % and a year of lengths before it is a real chance by two years, and no promise", () => {
    const by24 = start.chances[3] as Chance
    expect(by24.ifItWorks).toBeGreaterThan(0.2)
    expect(by24.ifItWorks).toBeLessThan(0.6)
  })

  it("with 0.01 % practically never: below one in twenty at every review", () => {
    const { chances } = startOf(0.01)
    expect(chances.length).toBeGreaterThan(3)
    for (const { ifItWorks, ifNot } of chances) expect(Math.max(ifItWorks, ifNot)).toBeLessThan(0.05)
  })
})

describe("The first day on which an answer is at least as likely as not", () => {
  it("is not named when no planned review reaches even odds", () => {
    const start = startOf(0.01)
    expect(start.finding.earliestAnswer).toBeNull()
  })

  it("is a planned review when one does: a strong drop and three years of lengths before it", () => {
    const start = asked({
      visits: halfYearly("2022-06-15", [23, 23.27, 23.53, 23.77, 24]),
      treatments: [drops(1)],
    })
    const { earliestAnswer } = start.finding
    expect(start.chances.map(({ review }) => review)).toContain(earliestAnswer)
    const odds = start.chances.find(({ review }) => review === earliestAnswer) as Chance
    expect(Math.max(odds.ifItWorks, odds.ifNot)).toBeGreaterThanOrEqual(0.5)
  })
})

describe("Once there is an answer there is no chance of one to tell", () => {
  const answered = asked({
    visits: halfYearly("2022-06-15", [23, 23.27, 23.53, 23.77, 24, 24.05, 24.1, 24.14]),
    treatments: [drops(0.05)],
  })

  it("none are listed, though reviews are still to come", () => {
    expect(answered.finding.state).toBe("slowed")
    expect(answered.chances).toEqual([])
  })

  it("and the day of the answer is that of the last length", () => {
    expect(answered.finding.earliestAnswer).toBe("2025-12-15")
  })
})

describe("What raises the chance, by the engine's own calculation", () => {
  const by24 = (story: Parameters<typeof asked>[0]) => (asked(story).chances[3] as Chance).ifItWorks
  const treatments = [drops(0.05)]
  const alone = by24({ visits: [lengths("2024-06-15", 24)], treatments })

  it("lengths from before treatment", () => {
    expect(by24({ visits: yearBefore, treatments })).toBeGreaterThan(alone + 0.05)
  })

  it("a younger eye, which grows more", () => {
    const at = (born: string) => by24({ child: { born }, visits: [lengths("2024-06-15", 24)], treatments })
    expect(at("2017-12-15")).toBeGreaterThan(at("2012-12-15") + 0.1)
  })

  it("not a hundred readings at each visit", () => {
    expect(by24({ visits: [lengths("2024-06-15", 24, 24.1, { readings: 100 })], treatments })).toBeLessThan(
      alone + 0.05,
    )
  })

  it("and ultrasound takes most of it away", () => {
    const visits = [lengths("2024-06-15", 24, 24.1, { method: "ultrasound" })]
    expect(by24({ visits, treatments })).toBeLessThan(alone / 2)
  })
})
