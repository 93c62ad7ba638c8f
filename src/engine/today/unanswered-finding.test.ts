import { describe, expect, it } from "vitest"
import type { Course, Visit } from "../course.js"
import { telling, unansweredFinding } from "./unanswered-finding.js"

const visit = (date: string): Visit => ({ date, right: { axialLength: { mm: 24 } } })
const course: Course = {
  lengthwise: 1,
  child: { born: "2017-01-10", sex: "female" },
  visits: [visit("2026-01-05"), visit("2026-07-05"), { date: "2026-08-01", symptoms: [] }],
}
const assessed = (
  growth: "faster" | "near-normal",
  finding: "not-slowed" | "no-treatment" = "no-treatment",
) =>
  ({
    growth: { state: growth, mmPerYear: 0.52 },
    finding: { state: finding, treatment: "atropine 0.05 %" },
  }) as never
const asked = (more: Partial<Course> = {}, assessment = assessed("faster")) =>
  unansweredFinding({ course: { ...course, ...more }, today: "2026-08-10", assessment })

describe("a finding that nobody has answered", () => {
  it("waits since the last visit that measured a length", () => {
    expect(asked()).toEqual({ what: "grows faster than untreated, 0.52 mm per year", since: "2026-07-05" })
  })

  it("is answered by a decision on or after that visit, not by one before it", () => {
    const decided = (date: string) => asked({ decisions: [{ date, kind: "continue", reason: "wait" }] })
    expect(decided("2026-07-05")).toBeNull()
    expect(decided("2026-07-04")).not.toBeNull()
  })

  it("is answered by a change of treatment", () => {
    expect(asked({ treatments: [{ from: "2026-07-10", kind: "lenslet-spectacles" }] })).toBeNull()
  })

  it("is none where the eye grows slowly and nothing speaks against the treatment", () => {
    expect(asked({}, assessed("near-normal"))).toBeNull()
    expect(telling({ assessment: assessed("near-normal", "not-slowed") })).toBe("atropine 0.05 %: not slowed")
  })
})
