import { describe, expect, it } from "vitest"
import { child, consentTo, drops, fullVisit } from "./child.js"

// Intervals, windows and lists of the standard protocol: common practice, no source. A practice edits copies.
describe("The standard course has seven visits", () => {
  const story = {
    treatments: [drops("2025-01-10", 0.05)],
    consents: [consentTo("2025-01-10", 0.05)],
    visits: [fullVisit("2025-01-10")],
  }

  it("a baseline before the first drop, a check after 1 month, and reviews every 6 months to 24", () => {
    const examinations = child(story)
      .on("2025-01-10")
      .duties.filter(({ kind }) => kind === "examination")
    expect(examinations.map(({ step, due }) => `${due} ${step}`)).toEqual([
      "2025-01-10 baseline",
      "2025-02-10 1-month check",
      "2025-07-10 6-month review",
      "2026-01-10 12-month review",
      "2026-07-10 18-month review",
      "2027-01-10 24-month review",
    ])
  })

  it("a seventh 6 months after the stop, which is planned but not owed before the stop is decided", () => {
    const then = child(story).on("2025-01-10")
    expect(then.plan.reviews.at(-1)).toEqual({
      step: "check 6 months after the stop",
      date: "2027-07-10",
      treated: false,
    })
    expect(then.steps).not.toContain("check 6 months after the stop")
  })

  it("a decision to stop at 24 months", () => {
    expect(child(story).on("2025-01-10").duty("decision to stop at 24 months")).toMatchObject({
      kind: "decision",
      due: "2027-01-10",
      state: "upcoming",
    })
  })
})

describe("What is measured", () => {
  const story = { treatments: [drops("2025-01-10", 0.05)], consents: [consentTo("2025-01-10", 0.05)] }

  it("at the baseline: growth, and under atropine what the drops may change", () => {
    expect(child(story).on("2025-01-10").duty("baseline").needs).toEqual([
      "axial length",
      "refraction with cycloplegia",
      "symptoms",
      "photopic pupil",
      "amplitude of accommodation",
      "near acuity",
    ])
  })

  it("at 1 month: pupil, near vision and symptoms, no length", () => {
    expect(child(story).on("2025-02-10").duty("1-month check").needs).toEqual([
      "symptoms",
      "photopic pupil",
      "near acuity",
    ])
  })

  it("at a review: length, refraction, symptoms, pupil and accommodation", () => {
    expect(child(story).on("2025-07-10").duty("6-month review").needs).toEqual([
      "axial length",
      "refraction with cycloplegia",
      "symptoms",
      "photopic pupil",
      "amplitude of accommodation",
    ])
  })
})

describe("An optical treatment follows the same steps", () => {
  const story = { treatments: [{ kind: "defocus-spectacles" as const, from: "2025-01-10" }] }

  it("without pupil, accommodation or near acuity", () => {
    const then = child(story).on("2025-02-10")
    expect(then.duty("1-month check").needs).toEqual(["symptoms", "consent to defocus spectacles"])
    expect(then.duty("6-month review").needs).toEqual([
      "axial length",
      "refraction with cycloplegia",
      "symptoms",
    ])
  })

  it("without bottles", () => {
    expect(
      child(story)
        .on("2025-02-10")
        .duties.map(({ kind }) => kind),
    ).not.toContain("bottle")
  })
})
