import { describe, expect, it } from "vitest"
import { child, consentTo, drops, fullVisit } from "./child.js"

const CHECK_AGAIN = "1-month check after the change of strength"

describe("A change of strength restarts the 1-month check", () => {
  const story = {
    treatments: [drops("2025-01-10", 0.01, "2025-07-12"), drops("2025-07-12", 0.05)],
    visits: [fullVisit("2025-01-10"), fullVisit("2025-02-10"), fullVisit("2025-07-12")],
    consents: [consentTo("2025-01-10", 0.01)],
  }

  it("a second check is due 1 month after the change", () => {
    expect(child(story).on("2025-07-12").duty(CHECK_AGAIN)).toMatchObject({
      due: "2025-08-12",
      state: "upcoming",
    })
  })

  it("the first check stays done", () => {
    expect(child(story).on("2025-07-12").state("1-month check")).toBe("done")
  })

  it("the reviews are still counted from the start", () => {
    expect(child(story).on("2025-07-12").duty("12-month review").due).toBe("2026-01-10")
  })

  it("the new strength needs a consent of its own", () => {
    const then = child(story).on("2025-07-12")
    expect(then.state("consent to atropine 0.01 %")).toBe("done")
    expect(then.state("consent to atropine 0.05 %")).toBe("open")
  })

  it("the same strength written down again is no change", () => {
    const treatments = [drops("2025-01-10", 0.01, "2025-07-12"), drops("2025-07-12", 0.01)]
    expect(child({ ...story, treatments }).on("2025-07-12").steps).not.toContain(CHECK_AGAIN)
  })
})

describe("A change before the first check was done", () => {
  const treatments = [drops("2025-01-10", 0.05, "2025-02-01"), drops("2025-02-01", 0.025)]

  it("replaces it by the one counted from the change", () => {
    const then = child({ treatments, visits: [fullVisit("2025-01-10")] }).on("2025-02-01")
    expect(then.steps).not.toContain("1-month check")
    expect(then.duty(CHECK_AGAIN).due).toBe("2025-03-01")
  })

  it("leaves a check on record that was missed long before the change", () => {
    const late = [drops("2025-01-10", 0.05, "2025-09-01"), drops("2025-09-01", 0.025)]
    const visits = [fullVisit("2025-01-10"), fullVisit("2025-07-10")]
    expect(child({ treatments: late, visits }).on("2025-09-01").state("1-month check")).toBe("missed")
  })

  it("keeps it when the visit of the change was that check", () => {
    const visits = [fullVisit("2025-01-10"), fullVisit("2025-02-01")]
    const then = child({ treatments, visits }).on("2025-02-01")
    expect(then.state("1-month check")).toBe("done")
    expect(then.state(CHECK_AGAIN)).toBe("upcoming")
  })
})

describe("Drops added to spectacles", () => {
  const story = {
    treatments: [{ kind: "lenslet-spectacles" as const, from: "2025-01-10" }, drops("2025-07-10", 0.05)],
    visits: [fullVisit("2025-01-10"), fullVisit("2025-02-10"), fullVisit("2025-07-10")],
  }

  it("are a new strength: the check is owed, with pupil and near acuity", () => {
    expect(child(story).on("2025-08-10").duty(CHECK_AGAIN).needs).toContain("photopic pupil")
  })

  it("do not move the start of the course", () => {
    expect(child(story).on("2025-08-10").duty("24-month review").due).toBe("2027-01-10")
  })
})

describe("Drops given up for spectacles", () => {
  it("need no pupil and no accommodation at the reviews after", () => {
    const treatments = [
      drops("2025-01-10", 0.05, "2025-03-01"),
      { kind: "lenslet-spectacles" as const, from: "2025-03-01" },
    ]
    expect(child({ treatments }).on("2025-06-10").duty("6-month review").needs).not.toContain(
      "photopic pupil",
    )
  })
})

describe("One visit in two windows", () => {
  it("serves both the check and the review", () => {
    const story = {
      treatments: [drops("2025-01-10", 0.01, "2025-05-25"), drops("2025-05-25", 0.05)],
      visits: [fullVisit("2025-01-10"), fullVisit("2025-02-10"), fullVisit("2025-06-25")],
    }
    const then = child(story).on("2025-06-25")
    expect([then.state(CHECK_AGAIN), then.state("6-month review")]).toEqual(["done", "done"])
  })
})
