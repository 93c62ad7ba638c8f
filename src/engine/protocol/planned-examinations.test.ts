import { describe, expect, it } from "vitest"
import { child, drops, fullVisit } from "../../../test/spec/protocol/child.js"
import type { TreatmentChoice } from "../course.js"
import { plannedExaminations } from "./planned-examinations.js"
import { standardProtocol } from "./standard.js"

const weak: TreatmentChoice = { kind: "atropine", concentrationPercent: 0.01 }
const strong: TreatmentChoice = { kind: "atropine", concentrationPercent: 0.05 }

function plan(story: Parameters<typeof child>[0], treatment: TreatmentChoice | null, months = 36) {
  const today = "2025-01-10"
  const { course } = child(story).on(today)
  return plannedExaminations({ course, protocol: standardProtocol, treatment, today, months }).map(
    ({ date, step }) => `${date} ${step}`,
  )
}

describe("a treatment begun today", () => {
  it("is the seven visits of the standard course, and the observation after them", () => {
    expect(plan({ visits: [] }, strong)).toEqual([
      "2025-01-10 baseline",
      "2025-02-10 1-month check",
      "2025-07-10 6-month review",
      "2026-01-10 12-month review",
      "2026-07-10 18-month review",
      "2027-01-10 24-month review",
      "2027-07-10 check 6 months after the stop",
      "2028-01-10 observation",
    ])
  })

  it("needs no second baseline where everything is known", () => {
    expect(plan({ visits: [fullVisit("2025-01-03")] }, strong, 5)).toEqual(["2025-02-10 1-month check"])
  })

  it("takes the place of another strength, whose course goes on with a new safety check", () => {
    const story = {
      treatments: [drops("2024-07-10", 0.01)],
      visits: [fullVisit("2024-07-10"), fullVisit("2024-08-10"), fullVisit("2025-01-10")],
    }
    expect(plan(story, strong, 11)).toEqual([
      "2025-02-10 1-month check after the change of strength",
      "2025-07-10 12-month review",
    ])
    expect(plan(story, weak, 11)).toEqual(["2025-07-10 12-month review"])
  })
})

describe("observation", () => {
  it("of a child not treated is a visit every 6 months from the last one", () => {
    expect(plan({ visits: [fullVisit("2025-01-03")] }, null, 13)).toEqual([
      "2025-07-03 observation",
      "2026-01-03 observation",
    ])
  })

  it("of a child on drops means a stop today, with the check after it", () => {
    const story = { treatments: [drops("2024-01-10", 0.05)], visits: [fullVisit("2025-01-10")] }
    expect(plan(story, null, 13)).toEqual([
      "2025-07-10 check 6 months after the stop",
      "2026-01-10 observation",
    ])
  })
})

it("lists what is overdue for today", () => {
  const story = {
    treatments: [drops("2024-06-01", 0.05)],
    visits: [fullVisit("2024-06-01"), fullVisit("2024-07-01")],
  }
  expect(plan(story, strong, 6)[0]).toBe("2025-01-10 6-month review")
})

it("says what each examination is for and what it measures", () => {
  const { course } = child({ visits: [] }).on("2025-01-10")
  const [, check] = plannedExaminations({
    course,
    protocol: standardProtocol,
    treatment: strong,
    today: "2025-01-10",
    months: 3,
  })
  expect(check).toMatchObject({
    stepId: "start-check-1",
    stage: "safety-check",
    measures: ["symptoms", "photopic-pupil", "near-acuity"],
  })
})
