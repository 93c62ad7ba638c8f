import { describe, expect, it } from "vitest"
import type { DecisionKind } from "../../../src/engine/course.js"
import { child, drops, fullVisit } from "./child.js"

const STOP = "decision to stop at 24 months"
const RESTART = "decision on 12 more months"
const decided = (date: string, kind: DecisionKind) => ({ date, kind, reason: "told in a test" })
const visits = ["2025-01-10", "2026-12-20"].map(fullVisit)
const goingOn = { treatments: [drops("2025-01-10", 0.05)], visits }
const stopped = { treatments: [drops("2025-01-10", 0.05, "2027-01-10")], visits }

describe("At 24 months, with the window open since 11 December 2026", () => {
  const state = (kind: DecisionKind, date: string) =>
    child({ ...goingOn, decisions: [decided(date, kind)] })
      .on("2027-01-10")
      .state(STOP)

  it.each(["stop", "continue", "taper", "change-strength", "add", "switch", "restart", "discharge"] as const)(
    "%s settles whether to stop",
    (kind) => {
      expect(state(kind, "2026-12-11")).toBe("done")
    },
  )

  it.each(["refer", "decline"] as const)("%s leaves it open", (kind) => {
    expect(state(kind, "2026-12-11")).toBe("open")
  })

  it("a decision before the window opened was about something else", () => {
    expect(state("continue", "2026-12-10")).toBe("open")
  })

  it("a decision dated after the day asked about is not known yet", () => {
    expect(state("continue", "2027-01-11")).toBe("open")
  })
})

describe("At the check after the stop, with the window open since 10 June 2027", () => {
  const state = (kind: DecisionKind) =>
    child({ ...stopped, decisions: [decided("2027-06-10", kind)] })
      .on("2027-07-10")
      .state(RESTART)

  it.each(["restart", "start", "switch", "decline", "discharge", "stop", "continue"] as const)(
    "%s settles whether treatment is taken up again",
    (kind) => {
      expect(state(kind)).toBe("done")
    },
  )

  it.each(["refer", "taper"] as const)("%s leaves it open", (kind) => {
    expect(state(kind)).toBe("open")
  })
})

describe("After a discharge", () => {
  const discharged = { ...stopped, decisions: [decided("2027-02-01", "discharge")] }

  it("nothing is next, on any day", () => {
    for (const day of ["2027-02-01", "2027-07-10", "2031-01-01"]) {
      expect(child(discharged).on(day).next).toBeNull()
    }
  })

  it("a decision to restart asks for an examination that day", () => {
    const decisions = [...discharged.decisions, decided("2028-03-01", "restart")]
    const then = child({ ...discharged, decisions }).on("2028-03-01")
    expect(then.next).toMatchObject({ step: "observation", due: "2028-03-01", state: "open" })
  })

  it("figures that another practice passes on open nothing", () => {
    const elsewhere = { ...fullVisit("2027-09-01"), from: "another practice" }
    expect(child({ ...discharged, visits: [...visits, elsewhere] }).on("2027-10-01").next).toBeNull()
  })

  it("treatment taken up again within the longest pause is a new course all the same", () => {
    const treatments = [...stopped.treatments, drops("2027-04-01", 0.05)]
    const then = child({ ...discharged, treatments }).on("2027-04-02")
    expect(then.duty("decision to stop after 12 more months").due).toBe("2028-04-01")
  })

  it("drops still running ask for no bottle and no consent", () => {
    const running = { ...goingOn, decisions: [decided("2027-02-01", "discharge")] }
    const kinds = child(running)
      .on("2027-05-01")
      .duties.filter(({ state }) => state !== "done" && state !== "missed")
    expect(kinds).toEqual([])
  })
})
