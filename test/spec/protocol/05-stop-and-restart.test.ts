import { describe, expect, it } from "vitest"
import { child, drops, fullVisit, growthVisit } from "./child.js"

const STOP = "decision to stop at 24 months"
const AFTER_STOP = "check 6 months after the stop"
const RESTART = "decision on 12 more months"
const ONWARDS = "review while treatment goes on"

const reviews = ["2025-01-10", "2025-02-10", "2025-07-10", "2026-01-10", "2026-07-10", "2027-01-10"].map(
  fullVisit,
)
const stopped = { treatments: [drops("2025-01-10", 0.05, "2027-01-10")], visits: reviews }

describe("At 24 months somebody decides", () => {
  const goingOn = { treatments: [drops("2025-01-10", 0.05)], visits: reviews }

  it("the decision is open in its window and overdue after it, for nothing ends a treatment by itself", () => {
    expect(child(goingOn).on("2027-01-10").state(STOP)).toBe("open")
    expect(child(goingOn).on("2027-02-10").state(STOP)).toBe("overdue")
    expect(child(goingOn).on("2029-02-10").state(STOP)).toBe("overdue")
  })

  it("a child seen again and treated on still waits for it", () => {
    const visits = [...reviews, fullVisit("2027-07-10")]
    expect(
      child({ ...goingOn, visits })
        .on("2027-07-11")
        .state(STOP),
    ).toBe("overdue")
  })

  it("a change of strength on the first day of its window settles it", () => {
    const treatments = [drops("2025-01-10", 0.05, "2026-12-11"), drops("2026-12-11", 0.025)]
    expect(child({ treatments, visits: reviews }).on("2027-01-12").state(STOP)).toBe("done")
  })

  it("a stop settles it", () => {
    expect(child(stopped).on("2027-01-10").state(STOP)).toBe("done")
  })

  it("a new entry settles it as well: treatment goes on", () => {
    const treatments = [drops("2025-01-10", 0.05, "2027-01-10"), drops("2027-01-10", 0.05)]
    const then = child({ treatments, visits: reviews }).on("2027-01-12")
    expect(then.state(STOP)).toBe("done")
    expect(then.duty(ONWARDS).due).toBe("2027-07-10")
  })

  it("a child treated on is seen every 6 months from the last visit", () => {
    expect(child(goingOn).on("2027-03-01").duty(ONWARDS)).toMatchObject({
      due: "2027-07-10",
      state: "upcoming",
    })
  })
})

describe("A stop before 24 months", () => {
  const early = { treatments: [drops("2025-01-10", 0.05, "2025-09-15")], visits: reviews.slice(0, 3) }

  it("takes away the reviews whose window had not opened", () => {
    const { steps } = child(early).on("2025-10-01")
    expect(steps).toContain("6-month review")
    expect(steps).not.toContain("12-month review")
    expect(steps).not.toContain(STOP)
  })

  it("leaves a review whose window was open when treatment ended", () => {
    const treatments = [drops("2025-01-10", 0.05, "2025-06-20")]
    expect(
      child({ treatments, visits: reviews.slice(0, 2) })
        .on("2025-07-01")
        .state("6-month review"),
    ).toBe("open")
  })

  it("is checked 6 months later all the same", () => {
    expect(child(early).on("2025-10-01").duty(AFTER_STOP)).toMatchObject({
      due: "2026-03-15",
      state: "upcoming",
    })
  })

  it("asks for no more bottles from its first day on", () => {
    expect(
      child(early)
        .on("2025-09-14")
        .duties.map(({ kind }) => kind),
    ).toContain("bottle")
    expect(
      child(early)
        .on("2025-09-15")
        .duties.map(({ kind }) => kind),
    ).not.toContain("bottle")
    expect(
      child(early)
        .on("2025-10-01")
        .duties.map(({ kind }) => kind),
    ).not.toContain("bottle")
  })
})

describe("6 months after the stop the eye is measured for rebound", () => {
  it("the check needs length, refraction and symptoms", () => {
    expect(child(stopped).on("2027-07-10").duty(AFTER_STOP)).toMatchObject({
      due: "2027-07-10",
      state: "open",
      needs: ["axial length", "refraction with cycloplegia", "symptoms"],
    })
  })

  it("12 more months are a decision and never follow by themselves", () => {
    const then = child({ ...stopped, visits: [...reviews, growthVisit("2027-07-08")] }).on("2027-07-10")
    expect(then.state(AFTER_STOP)).toBe("done")
    expect(then.state(RESTART)).toBe("open")
    expect(then.examinations("upcoming")).toEqual(["observation"])
  })

  it("an entry of no treatment settles the decision", () => {
    const treatments = [...stopped.treatments, { kind: "none" as const, from: "2027-07-10" }]
    expect(
      child({ ...stopped, treatments })
        .on("2027-07-10")
        .state(RESTART),
    ).toBe("done")
  })

  it("a child seen later without treatment has let the decision pass", () => {
    const visits = [...reviews, growthVisit("2027-07-08"), growthVisit("2028-01-08")]
    expect(
      child({ ...stopped, visits })
        .on("2028-01-08")
        .state(RESTART),
    ).toBe("missed")
  })

  it("a check that has not happened can still be made up for in the 3 months after it", () => {
    expect(child(stopped).on("2027-10-01").state(AFTER_STOP)).toBe("overdue")
    const late = child({ ...stopped, visits: [...reviews, growthVisit("2027-10-01")] }).on("2027-10-01")
    expect(late.state(AFTER_STOP)).toBe("done")
  })

  it("a check that never happened is missed after 9 months, and observation is owed instead", () => {
    const then = child(stopped).on("2027-10-20")
    expect(then.state(AFTER_STOP)).toBe("missed")
    expect(then.duty("observation")).toMatchObject({ due: "2027-07-10", state: "overdue" })
  })
})

describe("Treatment taken up again after the check", () => {
  const again = {
    treatments: [drops("2025-01-10", 0.05, "2027-01-10"), drops("2027-07-08", 0.05)],
    visits: [...reviews, fullVisit("2027-07-08")],
  }

  it("is a new course of 12 months", () => {
    const examinations = child(again)
      .on("2027-07-08")
      .duties.filter(({ kind }) => kind === "examination" || kind === "decision")
    expect(examinations.map(({ step, due }) => `${due} ${step}`)).toEqual([
      "2027-07-08 baseline",
      "2027-08-08 1-month check",
      "2028-01-08 6-month review",
      "2028-07-08 12-month review",
      "2028-07-08 decision to stop after 12 more months",
    ])
  })

  it("leaves the check after the stop owed while it is only planned", () => {
    const treatments = [drops("2025-01-10", 0.05, "2027-01-10"), drops("2027-09-01", 0.05)]
    expect(child({ treatments, visits: reviews }).on("2027-07-01").state(AFTER_STOP)).toBe("open")
  })

  it("takes the check after the stop as its baseline", () => {
    expect(child(again).on("2027-07-09").state("baseline")).toBe("done")
  })
})

describe("A pause is not a stop", () => {
  const paused = {
    treatments: [drops("2025-01-10", 0.05, "2025-08-01"), drops("2025-10-15", 0.05)],
    visits: reviews.slice(0, 3),
  }

  it("the course goes on as counted from its first start", () => {
    expect(child(paused).on("2025-10-15").duty("12-month review").due).toBe("2026-01-10")
  })

  it("of up to 150 days", () => {
    const resumed = (from: string) =>
      child({ treatments: [drops("2025-01-10", 0.05, "2025-08-01"), drops(from, 0.05)] })
    expect(resumed("2025-12-29").on("2026-01-05").duty("12-month review").due).toBe("2026-01-10")
    expect(resumed("2025-12-30").on("2026-01-05").duty("12-month review").due).toBe("2026-12-30")
  })

  it("the same strength after a pause needs no new check", () => {
    expect(
      child(paused)
        .on("2025-10-15")
        .steps.filter((step) => step.startsWith("1-month")),
    ).toEqual(["1-month check"])
  })
})

describe("A child never treated", () => {
  const watched = { visits: [growthVisit("2025-01-10")] }

  it("has a baseline and then an observation 6 months after the last visit", () => {
    const then = child(watched).on("2025-02-01")
    expect(then.state("baseline")).toBe("done")
    expect(then.duty("observation")).toMatchObject({ due: "2025-07-10", state: "upcoming" })
    expect(then.steps).toEqual(["baseline", "observation"])
  })

  it("has the next observation 6 months after the visit that did take place, however late", () => {
    const late = { visits: [growthVisit("2025-01-10"), growthVisit("2025-10-03")] }
    expect(child(late).on("2025-10-03").duty("observation").due).toBe("2026-04-03")
  })

  it("is overdue when it stays away", () => {
    expect(child(watched).on("2026-06-01").state("observation")).toBe("overdue")
  })

  it("owes what the first visit left out until it is measured", () => {
    const visits = [
      { date: "2025-01-10", right: { axialLength: { mm: 24 } }, left: { axialLength: { mm: 24 } } },
    ]
    expect(child({ visits }).on("2025-03-01").duty("baseline")).toMatchObject({
      state: "overdue",
      needs: ["refraction with cycloplegia", "symptoms"],
    })
  })
})

describe("A baseline not taken before the first drop", () => {
  it("cannot be taken after it: what is missing is named and the step is missed", () => {
    const story = {
      treatments: [drops("2025-01-10", 0.05)],
      visits: [growthVisit("2025-01-10"), fullVisit("2025-01-20")],
    }
    expect(child(story).on("2025-01-20").duty("baseline")).toMatchObject({
      state: "missed",
      needs: ["photopic pupil", "amplitude of accommodation", "near acuity"],
    })
  })

  it("may be gathered over several visits before it", () => {
    const story = {
      treatments: [drops("2025-01-10", 0.05)],
      visits: [growthVisit("2024-12-01"), fullVisit("2025-01-10")],
    }
    expect(child(story).on("2025-01-20").state("baseline")).toBe("done")
  })

  it("is too old after 90 days", () => {
    const story = { treatments: [drops("2025-01-10", 0.05)], visits: [fullVisit("2024-10-11")] }
    expect(child(story).on("2025-01-20").state("baseline")).toBe("missed")
  })
})

describe("A stop planned for later than the next review", () => {
  it("leaves the child seen every 6 months until then", () => {
    const treatments = [drops("2025-01-10", 0.05, "2027-09-10")]
    const then = child({ treatments, visits: reviews }).on("2027-02-01")
    expect(then.duty(ONWARDS)).toMatchObject({ due: "2027-07-10", state: "upcoming" })
    expect(then.duty(AFTER_STOP)).toMatchObject({ due: "2028-03-10", state: "upcoming" })
  })
})
