import { expect, it } from "vitest"
import type { Duty, DutyState } from "../assessment.js"
import { nextDuty } from "./duties.js"

const duty = (state: DutyState, due: string): Duty => ({
  kind: "examination",
  step: `${state} ${due}`,
  opens: due,
  due,
  closes: due,
  state,
  needs: [],
})

it("is the one longest overdue, before any that is open or to come", () => {
  const list = [
    duty("upcoming", "2026-01-01"),
    duty("open", "2026-02-01"),
    duty("overdue", "2026-04-01"),
    duty("overdue", "2026-03-01"),
  ]
  expect(nextDuty(list)?.step).toBe("overdue 2026-03-01")
})

it("is none when everything is done or missed", () => {
  expect(nextDuty([duty("done", "2026-01-01"), duty("missed", "2026-01-01")])).toBeNull()
})
