import { describe, expect, it } from "vitest"
import type { Treatment } from "../../../src/engine/course.js"
import { evidence } from "../../../src/evidence/index.js"
import { rebound } from "../../../src/evidence/treatments.js"
import { asked, drops, halfYearly, lengths } from "./child.js"

/**
 * Two years of drops from 15 June 2024, stopped on 15 June 2026. In the year after the stop an untreated eye of hers
 * is expected to grow 0.32 mm.
 */
const STOP = "2026-06-15"
const until = [23, 23.27, 23.53, 23.77, 24, 24.11, 24.21, 24.3, 24.38]
const stopped = (
  after: readonly number[],
  treatments: readonly Treatment[] = [drops(0.05, "2024-06-15", STOP)],
) => asked({ visits: halfYearly("2022-06-15", [...until, ...after]), treatments })

describe("Two words after a stop", () => {
  it("loss of effect: growth is natural again, which is to be expected where the treatment worked, and no rebound", () => {
    const { afterStop, growth } = stopped([24.54, 24.69])
    expect(growth.state).toBe("as-untreated")
    expect(afterStop?.likelihoodRatio).toBeLessThan(1)
    expect(afterStop?.growthMm).toBeCloseTo(0.31, 2)
    expect(afterStop?.naturalMm).toBeCloseTo(0.32, 2)
  })

  it("rebound: growth well above natural", () => {
    const { afterStop } = stopped([24.68, 24.98])
    expect(afterStop).toMatchObject({
      state: "rebound-likely",
      why: expect.stringMatching(/^0\.58 mm since the stop/),
    })
  })

  it("half a year of it leans that way and is not enough", () => {
    const { afterStop } = stopped([24.68])
    expect(afterStop?.likelihoodRatio).toBeGreaterThan(3)
    expect(afterStop).toMatchObject({
      state: "cannot-tell-yet",
      why: expect.stringMatching(/9 : 1 is asked for$/),
    })
  })

  it("an eye that had always been fast and is as fast again does not rebound", () => {
    // Half as fast again as natural before the drops, and after them.
    const visits = halfYearly(
      "2022-06-15",
      [22.6, 23, 23.39, 23.75, 24.1, 24.24, 24.38, 24.5, 24.62, 24.87, 25.11],
    )
    const { afterStop } = asked({ visits, treatments: [drops(0.05, "2024-06-15", STOP)] })
    expect(afterStop?.growthMm).toBeGreaterThan(1.4 * (afterStop?.naturalMm as number))
    expect(afterStop?.state).toBe("cannot-tell-yet")
  })
})

describe("Nothing is said of rebound", () => {
  it("while a treatment runs, or where none ever did", () => {
    expect(stopped([], [drops(0.05)]).afterStop).toBeNull()
    expect(stopped([], []).afterStop).toBeNull()
    expect(
      stopped([24.54], [drops(0.05, "2024-06-15", STOP), drops(0.01, "2026-07-15")]).afterStop,
    ).toBeNull()
  })

  it("before a length was measured after the stop", () => {
    expect(stopped([]).afterStop).toEqual({
      state: "cannot-tell-yet",
      likelihoodRatio: null,
      growthMm: null,
      naturalMm: null,
      why: "no length has been measured since the stop on 2026-06-15",
    })
  })

  it("before natural growth since the stop is more than the instrument can tell", () => {
    const visits = [...halfYearly("2022-06-15", until), lengths("2026-07-15", 24.42)]
    const { afterStop } = asked({ visits, treatments: [drops(0.05, "2024-06-15", STOP)] })
    expect(afterStop).toMatchObject({ likelihoodRatio: null, why: expect.stringMatching(/^too early/) })
  })

  it("while a figure is in doubt", () => {
    const { afterStop } = stopped([24.68, 25.6])
    expect(afterStop).toMatchObject({ likelihoodRatio: null, why: expect.stringMatching(/is in doubt/) })
  })
})

describe("How much a rebound is expected to be", () => {
  const effect = (id: string) => evidence.rebound?.find((one) => one.id === id)
  const row = (trial: string) =>
    rebound.entries.find((entry) => entry.trial === trial) as unknown as Record<string, number>

  it("comes from what was read of eyes that stopped, against eyes never treated: WA-ATOM for 0.01 %", () => {
    const waAtom = row("WA-ATOM")
    expect(effect("rebound-atropine-0.01")?.extraMm).toBeCloseTo(
      (waAtom.dAL_off as number) - (waAtom.control_dAL_off as number),
      12,
    )
    expect(stopped([24.54, 24.69], [drops(0.01, "2024-06-15", STOP)]).afterStop?.why).toMatch(
      /0\.07 mm above natural growth in the 12 months .*ATOM-J found none/,
    )
  })

  it("and for other strengths from a review of all, with what a trial of 0.05 % found against it", () => {
    const review = rebound.entries.find(({ trial }) => trial === "Rebound review (RCTs)") as {
      finding: string
    }
    expect(review.finding).toContain("AL 0.10 (SD 0.07) mm")
    expect(review.finding).toContain("10.2 (7.4) months off")
    expect(review.finding).toContain("optical only: 0.04 (0.04) mm")
    expect(effect("rebound-atropine")).toMatchObject({ extraMm: 0.1, extraMmSd: 0.07, overMonths: 10.2 })
    expect(effect("rebound-optical")).toMatchObject({ extraMm: 0.04, extraMmSd: 0.04, overMonths: 10.2 })
    const chinese = row("Chinese 0.05% RCT")
    expect(effect("rebound-atropine")?.against).toContain(
      `${chinese.dAL_off} against ${chinese.control_dAL_off} mm`,
    )
  })
})
