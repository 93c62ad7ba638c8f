import { describe, expect, it } from "vitest"
import { firstVisitCourse, slowedCourse } from "../../../test/e2e/courses.js"
import type { Course } from "../../engine/course.js"
import { noRules } from "../../engine/practice-rules.js"
import { defaultSettings } from "../../engine/settings.js"
import { readCourse } from "../reading.js"
import type { StageChoice } from "./visit-draft.js"
import { visitPlan } from "./visit-plan.js"

const today = "2026-11-25"

function planOn(course: Course, choice: StageChoice, date = today) {
  const reading = readCourse(course, { today, settings: defaultSettings, rules: noRules })
  return visitPlan({ reading, date, choice, isBeforeMyopia: false })
}
const names = ({ plan }: ReturnType<typeof planOn>) => plan.items.map(({ name }) => name)

describe("the plan of a visit", () => {
  it("is the examination that is owed, with its own title", () => {
    expect(planOn(slowedCourse, "owed")).toMatchObject({
      title: "18-month review",
      found: { stage: "review", owed: { state: "overdue" } },
    })
  })

  it("asks after drops only while there are some", () => {
    expect(names(planOn(slowedCourse, "owed"))).toContain("missed drops")
    expect(names(planOn(firstVisitCourse, "owed"))).not.toContain("missed drops")
  })

  it("follows the stage chosen by hand", () => {
    expect(planOn(slowedCourse, "discharge")).toMatchObject({
      title: "discharge",
      plan: { stage: "discharge" },
    })
  })

  it("owes next to nothing at an extra visit", () => {
    expect(names(planOn(slowedCourse, "extra"))).toHaveLength(5)
  })

  it("is the examination of the visit's own day, not of today", () => {
    expect(planOn(slowedCourse, "owed", "2025-04-17").plan.stage).toBe("safety-check")
  })
})
