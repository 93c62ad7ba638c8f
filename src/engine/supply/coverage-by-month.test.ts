import { describe, expect, it } from "vitest"
import { ageYears } from "../calendar.js"
import type { Course } from "../course.js"
import { coverageByMonth } from "./coverage-by-month.js"

const born = "2016-03-14"
const monthsOf = (course: Partial<Course>, today = "2025-07-02") =>
  coverageByMonth({ lengthwise: 1, child: { born, sex: "female" }, visits: [], ...course }, today)
const sharesOf = (...asked: Parameters<typeof monthsOf>) =>
  monthsOf(...asked)?.map(({ share }) => Math.round(100 * share))
const drops = { kind: "atropine", concentrationPercent: 0.05, from: "2025-01-01" } as const
const all = [{ opened: "2025-01-01", beyondUse: "2025-12-31", concentrationPercent: 0.05 }]

describe("nights covered month by month", () => {
  it("begin at the age of the first night", () => {
    expect(monthsOf({ treatments: [drops], supplies: all })?.[0]).toEqual({
      age: ageYears({ born, on: "2025-01-01" }),
      share: 1,
    })
  })

  it("of a taper are full: a night left out on purpose is covered", () => {
    expect(sharesOf({ treatments: [{ ...drops, nightsPerWeek: 3 }], supplies: all })).toEqual([
      100, 100, 100, 100, 100, 100,
    ])
  })

  it("are less by the missed nights told of", () => {
    const missedNights = [{ from: "2025-01-01", to: "2025-01-30", nights: 15 }]
    expect(sharesOf({ treatments: [drops], supplies: all, missedNights })?.slice(0, 2)).toEqual([51, 100])
    expect(sharesOf({ treatments: [drops], missedNights })?.slice(0, 2)).toEqual([51, 100])
  })

  it("of two strengths, one for each eye, are told once, by the worse covered", () => {
    const treatments = [
      { ...drops, eye: "right" },
      { ...drops, eye: "left", concentrationPercent: 0.01 },
    ] as const
    const supplies = [...all, { opened: "2025-01-01", beyondUse: "2025-03-02", concentrationPercent: 0.01 }]
    expect(sharesOf({ treatments, supplies })).toEqual([100, 100, 0, 0, 0, 0])
  })

  it("are not known without any record", () => {
    expect(monthsOf({ treatments: [drops] })).toBeNull()
    expect(monthsOf({ supplies: all })).toBeNull()
  })
})
