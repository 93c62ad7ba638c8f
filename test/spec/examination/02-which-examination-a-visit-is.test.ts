import { describe, expect, it } from "vitest"
import type { Course } from "../../../src/engine/course.js"
import {
  answeredThisYear,
  examinationOn,
  isOnAtropine,
  stepOfStage,
} from "../../../src/engine/protocol/examination-on.js"
import { standardProtocol } from "../../../src/engine/protocol/standard.js"
import { drops, fullVisit } from "../protocol/child.js"

// Intervals of the standard protocol: common practice, no source. The children are invented.
const course = (more: Partial<Course> = {}): Course => ({
  lengthwise: 1,
  child: { born: "2016-05-20", sex: "female" },
  visits: [fullVisit("2025-01-10")],
  treatments: [drops("2025-01-10", 0.05)],
  ...more,
})
const on = (date: string, of: Course = course()) =>
  examinationOn({ course: of, protocol: standardProtocol, date })

describe("Which examination a visit is", () => {
  it("the baseline, before any treatment", () => {
    expect(on("2025-01-10", course({ visits: [], treatments: [] })).stage).toBe("baseline")
  })

  it("the baseline itself, although that day has its visit already and is being corrected", () => {
    expect(on("2025-01-10").owed?.step.id).toBe("baseline")
  })

  it("the check a month after the start", () => {
    expect(on("2025-02-12")).toMatchObject({ stage: "safety-check", owed: { state: "open" } })
  })

  it("the next one that is coming when none is open", () => {
    expect(on("2025-01-20")).toMatchObject({ stage: "safety-check", owed: { state: "upcoming" } })
  })

  it("the check after the stop", () => {
    const stopped = course({ treatments: [drops("2025-01-10", 0.05, "2027-01-10")] })
    expect(on("2027-07-10", stopped).stage).toBe("washout")
  })

  it("a stage chosen by hand has a step of the protocol, where the protocol has one", () => {
    expect(stepOfStage(standardProtocol, "washout")?.id).toBe("after-stop-6")
    expect(stepOfStage(standardProtocol, "discharge")).toBeUndefined()
  })
})

describe("Whether it is on drops", () => {
  it("from the first day until the day before the stop", () => {
    const treatments = [drops("2025-01-10", 0.05, "2025-03-01")]
    const at = (date: string) => isOnAtropine({ course: { treatments }, date, stage: "review" })
    expect(["2025-01-09", "2025-01-10", "2025-02-28", "2025-03-01"].map(at)).toEqual([
      false,
      true,
      true,
      false,
    ])
  })

  it("at a baseline also when drops are planned", () => {
    expect(isOnAtropine({ course: course(), date: "2025-01-02", stage: "baseline" })).toBe(true)
  })
})

describe("What was answered within the year", () => {
  it("is asked again by the visit a year later, and was never answered when it was left out", () => {
    const answered = course({
      visits: [
        {
          date: "2025-01-10",
          answers: [
            { question: "quality-of-life", answer: "yes" },
            { question: "advice-long-term-risk", answer: "not-done" },
          ],
        },
      ],
    })
    expect(answeredThisYear(answered, "2025-07-10")).toEqual(["quality-of-life"])
    expect(answeredThisYear(answered, "2026-01-10")).toEqual([])
  })
})
