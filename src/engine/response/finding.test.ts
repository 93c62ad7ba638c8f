import { describe, expect, it } from "vitest"
import { type SteadyChild, steadyCourse, studyOf } from "../../../test/steady-child.js"
import type { Course } from "../course.js"
import { finding, waldLimits, weighing } from "./finding.js"

const yearsAround = [-24, -18, -12, -6, 0, 6, 12, 18, 24, 30, 36]
const childOf = (child: Partial<SteadyChild>) =>
  steadyCourse({ born: "2015-12-15", months: yearsAround, shareAfter: 0.4, ...child })
function found(course: Course, asOf?: string) {
  const study = asOf === undefined ? studyOf(course) : studyOf(course, asOf)
  return finding(study, weighing(study))
}

describe("Wald's limits", () => {
  it("are 9 and 1/9 at error rates of a tenth", () => {
    const { upper, lower } = waldLimits({ alpha: 0.1, beta: 0.1 })
    expect([upper, 1 / lower]).toEqual([expect.closeTo(9, 12), expect.closeTo(9, 12)])
  })

  it("ask more of the side with the smaller error rate", () => {
    expect(waldLimits({ alpha: 0.05, beta: 0.2 })).toEqual({
      upper: expect.closeTo(16, 12),
      lower: expect.closeTo(0.2 / 0.95, 12),
    })
  })
})

describe("is it the treatment?", () => {
  it("slowed, for a child who grows 0.4 of what it grew before", () => {
    const { state, lean, likelihoodRatio, upper, treatment } = found(childOf({}))
    expect({ state, lean, treatment }).toEqual({
      state: "slowed",
      lean: "slowed",
      treatment: "atropine 0.05 %",
    })
    expect(likelihoodRatio).toBeGreaterThanOrEqual(upper)
  })

  it("not slowed, for a child who grows a little faster than before", () => {
    const { state, lean, likelihoodRatio, lower } = found(childOf({ shareAfter: 1.1 }))
    expect({ state, lean }).toEqual({ state: "not-slowed", lean: "not-slowed" })
    expect(likelihoodRatio).toBeLessThanOrEqual(lower)
  })

  it("cannot tell yet, at half a year, and says how far it is", () => {
    const { state, likelihoodRatio, reasons } = found(childOf({}), "2024-12-20")
    expect(state).toBe("cannot-tell-yet")
    expect(likelihoodRatio).toBeGreaterThan(1)
    expect(reasons.join()).toMatch(/the figures fit both: \d+\.\d : 1 for an effect, 9 : 1 is asked for/)
  })

  it("leans once the ratio passes 3, and not below", () => {
    const half = found(childOf({ shareAfter: 0.55 }), "2024-12-20")
    const year = found(childOf({ shareAfter: 0.4 }), "2025-06-20")
    expect([(half.likelihoodRatio as number) < 3, half.lean]).toEqual([true, null])
    expect([(year.likelihoodRatio as number) > 3, year.lean]).toEqual([true, "slowed"])
  })
})

describe("no answer", () => {
  const open = { likelihoodRatio: null, lean: null }

  it("without a treatment", () => {
    expect(found(childOf({ treatments: [] }))).toMatchObject({
      state: "no-treatment",
      treatment: null,
      ...open,
    })
  })

  it("before the treatment has begun", () => {
    expect(found(childOf({}), "2024-06-14").state).toBe("no-treatment")
  })

  it("about a treatment without a trial", () => {
    const treatments = [{ from: "2024-06-15", kind: "atropine", concentrationPercent: 0.03 } as const]
    expect(found(childOf({ treatments }))).toMatchObject({ state: "cannot-tell-yet", ...open })
  })

  it("about drops whose strength is not stated", () => {
    const treatments = [{ from: "2024-06-15", kind: "atropine" } as const]
    expect(found(childOf({ treatments }))).toMatchObject({ state: "cannot-tell-yet", ...open })
  })

  it("about a child who was not myopic when treatment began", () => {
    const answer = found(childOf({ sphereD: 0.5 }))
    expect(answer).toMatchObject({ state: "cannot-tell-yet", ...open })
    expect(answer.reasons.join()).toMatch(/no myopia/)
  })

  it("without a single length", () => {
    const course = childOf({})
    const visits = course.visits.map(({ date, right }) => ({
      date,
      right: right?.refraction ? { refraction: right.refraction } : {},
    }))
    const answer = found({ ...course, visits })
    expect(answer).toMatchObject({ state: "cannot-tell-yet", ...open })
    expect(answer.reasons.join()).toMatch(/no length/)
  })

  it("from one length", () => {
    const answer = found(childOf({ months: [0] }))
    expect(answer).toMatchObject({ state: "cannot-tell-yet", lean: null })
    expect(answer.reasons.join()).toMatch(/only one length/)
  })

  // The figures alone would make it a finding: five years of earlier record, then a shrinking eye after six weeks.
  it("from an interval shorter than the smallest change told from noise", () => {
    const course = childOf({ months: [...yearsAround.filter((month) => month <= 0), 1.5], shareAfter: -8 })
    const answer = found(course)
    expect(answer.likelihoodRatio).toBeGreaterThan(answer.upper)
    expect(answer).toMatchObject({ state: "cannot-tell-yet", lean: null })
    expect(answer.reasons.join()).toMatch(/too early/)
  })

  it("by ultrasound where optical biometry has one", () => {
    expect(found(childOf({ method: "ultrasound" })).state).toBe("cannot-tell-yet")
  })
})

describe("missed nights", () => {
  const bottle = (opened: string, beyondUse: string) => ({ opened, beyondUse, concentrationPercent: 0.05 })

  it("are named as a reason when fewer than three quarters had a bottle in date", () => {
    const supplies = [bottle("2024-06-15", "2024-12-15")]
    expect(found(childOf({ supplies })).reasons.join()).toMatch(/only 17 % of nights had a bottle in date/)
  })

  it("are not named when the record is full", () => {
    const supplies = [bottle("2024-06-15", "2027-06-15")]
    expect(found(childOf({ supplies })).reasons.join()).not.toMatch(/nights/)
  })

  it("make a child who grows on as before speak less against the drops", () => {
    const ratio = (supplies?: Course["supplies"]) =>
      found(childOf({ shareAfter: 1, ...(supplies ? { supplies } : {}) })).likelihoodRatio as number
    expect(ratio([bottle("2024-06-15", "2024-12-15")])).toBeGreaterThan(ratio())
  })
})
