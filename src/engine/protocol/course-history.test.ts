import { expect, it } from "vitest"
import { child, drops, fullVisit } from "../../../test/spec/protocol/child.js"
import { courseHistory } from "./course-history.js"
import { standardProtocol } from "./standard.js"

const story = {
  treatments: [drops("2025-01-10", 0.05, "2025-09-10"), drops("2026-07-01", 0.05)],
  visits: ["2025-01-10", "2025-02-10", "2026-07-01"].map(fullVisit),
}
const history = (today: string) =>
  courseHistory({ course: child(story).on(today).course, protocol: standardProtocol, today })

it("keeps what was done and what was missed in a course after the next one has begun", () => {
  const [past, ...others] = history("2026-08-01")
  expect(others).toEqual([])
  expect(past).toMatchObject({ start: "2025-01-10", stop: "2025-09-10", until: "2026-06-30", isLater: false })
  expect(past?.duties.map(({ step, state }) => `${step} ${state}`)).toEqual([
    "consent to atropine 0.05 % missed",
    "baseline done",
    "1-month check done",
    "6-month review missed",
    "observation overdue",
    "check 6 months after the stop missed",
    "decision on 12 more months overdue",
  ])
})

it("is empty while the first course is the current one", () => {
  expect(history("2026-06-30")).toEqual([])
})
