import { describe, expect, it } from "vitest"
import type { Treatment } from "../../../src/engine/course.js"
import { asked, drops, halfYearly, START } from "./child.js"

const before = [23, 23.27, 23.53, 23.77, 24]
const bottle = (opened: string, beyondUse: string) => ({ opened, beyondUse, concentrationPercent: 0.05 })

describe("Nights without a bottle in date", () => {
  const visits = halfYearly("2022-06-15", [...before, 24.24, 24.46, 24.67, 24.86])
  const onDrops = (...supplies: ReturnType<typeof bottle>[]) =>
    asked({ visits, treatments: [drops(0.05)], ...(supplies.length > 0 ? { supplies } : {}) }).finding

  it("are named when they are many: six months of bottles in two years", () => {
    expect(onDrops(bottle("2024-06-15", "2024-12-15")).reasons[0]).toBe(
      "only 25 % of nights had a bottle in date: missed nights may explain what is seen",
    )
  })

  it("are not named when the record is full, nor when there is no record", () => {
    expect(onDrops(bottle("2024-06-15", "2026-07-15")).reasons.join()).not.toMatch(/nights/)
    expect(onDrops().reasons.join()).not.toMatch(/nights/)
  })

  it("speak against a verdict on the drops: not slowed with every night covered, cannot tell with a quarter", () => {
    expect(onDrops(bottle("2024-06-15", "2026-07-15")).state).toBe("not-slowed")
    expect(onDrops(bottle("2024-06-15", "2024-12-15")).state).toBe("cannot-tell-yet")
  })
})

describe("A treatment that was stopped and came back", () => {
  // Drops for a year, a year without, drops again: slow, fast, slow.
  const visits = halfYearly("2024-06-15", [24, 24.11, 24.21, 24.4, 24.58, 24.66, 24.74])
  const treatments = [drops(0.05, "2024-06-15", "2025-06-15"), drops(0.05, "2026-06-15")]
  const back = asked({ visits, treatments })

  it("is one treatment, asked about over both stretches", () => {
    expect(back.finding.treatment).toBe("atropine 0.05 %")
    expect(back.beliefs).toHaveLength(2)
  })

  it("and growth that falls, rises and falls with it speaks louder than one fall", () => {
    const once = asked({ visits: visits.slice(0, 3), treatments: [drops(0.05)] })
    expect(back.finding.likelihoodRatio).toBeGreaterThan(1.5 * (once.finding.likelihoodRatio as number))
  })

  it("growth is asked about since it came back", () => {
    expect(back.growth.from).toBe("2026-06-15")
  })

  it("another strength in between is another treatment, and the last one is asked about", () => {
    const changed = [...treatments.slice(0, 1), drops(0.01, "2026-06-15")]
    const answer = asked({ visits, treatments: changed })
    expect(answer.finding.treatment).toBe("atropine 0.01 %")
    expect(answer.beliefs.map(({ what }) => what)).toEqual([
      expect.stringMatching(/^pace/),
      expect.stringMatching(/0\.05 %$/),
      expect.stringMatching(/0\.01 %$/),
    ])
  })

  it("and when the first strength comes back after another, it is asked about again", () => {
    const there = [
      drops(0.05, "2024-06-15", "2025-06-15"),
      drops(0.01, "2025-06-15", "2026-06-15"),
      drops(0.05, "2026-06-15"),
    ]
    expect(asked({ visits, treatments: there }).finding.treatment).toBe("atropine 0.05 %")
  })
})

describe("Two treatments at once are never added up", () => {
  const visits = halfYearly("2022-06-15", [...before, 24.11, 24.21])
  const together = (...treatments: Treatment[]) => {
    const { beliefs, finding } = asked({ visits, treatments })
    return { withheld: beliefs.at(-1)?.prior.mean, finding }
  }
  const glasses: Treatment = { kind: "lenslet-spectacles", from: START }

  it("drops with glasses are expected to withhold what the better of the two does alone", () => {
    const [dropsAlone, glassesAlone] = [together(drops(0.05)), together(glasses)]
    const both = together(drops(0.05), glasses)
    expect(both.withheld).toBe(Math.max(dropsAlone.withheld as number, glassesAlone.withheld as number))
  })

  it("and it is said that no trial of both was read", () => {
    expect(together(drops(0.05), glasses).finding).toMatchObject({
      treatment: "atropine 0.05 % with lenslet spectacles",
      reasons: expect.arrayContaining([expect.stringMatching(/never a sum$/)]),
    })
  })

  it("where a trial of both exists it is used: orthokeratology with 0.01 %", () => {
    const { withheld, finding } = together(drops(0.01), { kind: "orthokeratology", from: START })
    const alone = [together(drops(0.01)), together({ kind: "orthokeratology", from: START })]
    expect(withheld).not.toBe(Math.max(...alone.map((one) => one.withheld as number)))
    expect(finding.reasons.join()).not.toMatch(/sum/)
  })
})
