import { describe, expect, it } from "vitest"
import { child, consentTo, drops, fullVisit, growthVisit, visitWithout } from "./child.js"

const story = {
  treatments: [drops("2025-01-10", 0.05)],
  consents: [consentTo("2025-01-10", 0.05)],
  supplies: [{ opened: "2025-01-10", beyondUse: "2026-12-31" }],
  visits: [fullVisit("2025-01-10"), fullVisit("2025-02-10")],
}

describe("What comes first", () => {
  it("is the next coming step when nothing is open", () => {
    expect(child(story).on("2025-03-01").next?.step).toBe("6-month review")
  })

  it("is what is overdue before what is open", () => {
    const supplies = [{ opened: "2025-06-10", beyondUse: "2025-07-09" }]
    expect(child({ ...story, supplies }).on("2025-07-10").next?.step).toBe("next bottle")
  })

  it("is the consent before the bottle when both are owed since the same day", () => {
    const next = child({ treatments: story.treatments }).on("2025-01-10").next
    expect(next?.kind).toBe("consent")
  })

  it("is the first visit for a child of whom nothing is known", () => {
    expect(child({}).on("2025-01-10").next).toMatchObject({
      step: "baseline",
      due: "2025-01-10",
      state: "open",
    })
  })
})

describe("The coming reviews of length", () => {
  it("are those of the course and the check after the planned stop, with when treatment is to end", () => {
    const visits = [...story.visits, fullVisit("2025-07-10"), fullVisit("2026-01-10")]
    expect(child({ ...story, visits }).on("2026-03-01").plan).toEqual({
      reviews: [
        { step: "18-month review", date: "2026-07-10", treated: true },
        { step: "24-month review", date: "2027-01-10", treated: true },
        { step: "check 6 months after the stop", date: "2027-07-10", treated: false },
      ],
      plannedStop: "2027-01-10",
    })
  })

  it("leave out the 1-month check, which measures no length", () => {
    const { reviews } = child({ ...story, visits: [fullVisit("2025-01-10")] }).on("2025-01-11").plan
    expect(reviews.map(({ step }) => step)).not.toContain("1-month check")
  })

  it("plan an overdue review for today", () => {
    expect(child(story).on("2025-08-20").plan.reviews[0]).toEqual({
      step: "6-month review",
      date: "2025-08-20",
      treated: true,
    })
  })

  it("leave out an open review whose length is known already", () => {
    const visits = [...story.visits, visitWithout("2025-07-10", "pupil")]
    const then = child({ ...story, visits }).on("2025-07-11")
    expect(then.state("6-month review")).toBe("open")
    expect(then.plan.reviews[0]?.step).toBe("12-month review")
  })

  it("follow a recorded end rather than the protocol's", () => {
    const treatments = [drops("2025-01-10", 0.05, "2026-02-01")]
    expect(child({ ...story, treatments }).on("2025-08-01").plan).toMatchObject({
      plannedStop: "2026-02-01",
      reviews: [
        { step: "6-month review", treated: true },
        { step: "12-month review", treated: true },
        { step: "check 6 months after the stop", date: "2026-08-01", treated: false },
      ],
    })
  })

  it("plan the stop for today while its decision is open", () => {
    const visits = ["2025-01-10", "2025-02-10", "2027-01-10"].map(fullVisit)
    expect(child({ ...story, visits }).on("2027-01-20").plan.plannedStop).toBe("2027-01-20")
  })

  it("go on every 6 months with no stop in sight when the decision has passed", () => {
    const visits = ["2025-01-10", "2025-02-10", "2027-01-10"].map(fullVisit)
    const { reviews, plannedStop } = child({ ...story, visits }).on("2027-03-01").plan
    expect(plannedStop).toBeNull()
    expect(reviews.map(({ date, treated }) => [date, treated])).toEqual([
      ["2027-07-10", true],
      ["2028-01-10", true],
      ["2028-07-10", true],
      ["2029-01-10", true],
    ])
  })

  it("are the observations of the next two years for a child not treated", () => {
    const { reviews, plannedStop } = child({ visits: [growthVisit("2025-08-31")] }).on("2025-09-01").plan
    expect(plannedStop).toBeNull()
    expect(reviews).toEqual([
      { step: "observation", date: "2026-02-28", treated: false },
      { step: "observation", date: "2026-08-31", treated: false },
      { step: "observation", date: "2027-02-28", treated: false },
      { step: "observation", date: "2027-08-31", treated: false },
    ])
  })

  it("start today for a child that stayed away", () => {
    const { reviews } = child({ visits: [growthVisit("2024-01-10")] }).on("2025-09-01").plan
    expect(reviews.map(({ date }) => date)).toEqual(["2025-09-01", "2026-03-01", "2026-09-01", "2027-03-01"])
  })

  it("are counted from a start that is only planned", () => {
    const planned = { treatments: [drops("2025-02-01", 0.05)], visits: [fullVisit("2025-01-10")] }
    expect(child(planned).on("2025-01-10").plan.reviews[0]).toEqual({
      step: "6-month review",
      date: "2025-08-01",
      treated: true,
    })
  })
})
