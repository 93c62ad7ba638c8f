import { describe, expect, it } from "vitest"
import type { Consent } from "../../../src/engine/course.js"
import { child, consentTo, drops, fullVisit } from "./child.js"

const CONSENT = "consent to atropine 0.05 %"
const started = { treatments: [drops("2025-01-10", 0.05)], visits: [fullVisit("2025-01-10")] }

describe("Consent comes before treatment", () => {
  it("a consent on the day of the start is in time", () => {
    const story = { ...started, consents: [consentTo("2025-01-10", 0.05)] }
    expect(child(story).on("2025-02-01").duty(CONSENT)).toMatchObject({ state: "done", needs: [] })
  })

  it("treatment without one is overdue from the day after the start", () => {
    expect(child(started).on("2025-01-10").state(CONSENT)).toBe("open")
    expect(child(started).on("2025-01-11").duty(CONSENT)).toMatchObject({
      state: "overdue",
      needs: ["a consent that covers atropine 0.05 %"],
    })
  })

  it.each<[string, Consent]>([
    ["another strength", consentTo("2025-01-10", 0.01)],
    ["no strength", { date: "2025-01-10", covers: { kind: "atropine" } }],
    ["another treatment", { date: "2025-01-10", covers: { kind: "orthokeratology" } }],
  ])("a consent to %s does not cover it", (_, consent) => {
    expect(
      child({ ...started, consents: [consent] })
        .on("2025-02-01")
        .state(CONSENT),
    ).toBe("overdue")
  })

  it("a consent given later leaves the gap on record", () => {
    const story = { ...started, consents: [consentTo("2025-01-20", 0.05)] }
    expect(child(story).on("2025-02-01").duty(CONSENT)).toMatchObject({
      state: "missed",
      needs: ["consent is dated 2025-01-20, after the start on 2025-01-10"],
    })
  })

  it("a planned start asks for it 30 days ahead", () => {
    const story = { treatments: [drops("2025-03-15", 0.05)], visits: [fullVisit("2025-01-10")] }
    expect(child(story).on("2025-02-12").state(CONSENT)).toBe("upcoming")
    expect(child(story).on("2025-02-13").state(CONSENT)).toBe("open")
  })

  it("a planned change of strength asks for one as well", () => {
    const treatments = [drops("2025-01-10", 0.05, "2025-07-10"), drops("2025-07-10", 0.025)]
    expect(
      child({ ...started, treatments })
        .on("2025-07-01")
        .state("consent to atropine 0.025 %"),
    ).toBe("open")
  })

  it("on the first day without treatment a review no longer asks for consent", () => {
    const treatments = [drops("2025-01-10", 0.05, "2025-07-10")]
    const needs = child({ ...started, treatments })
      .on("2025-07-10")
      .duty("6-month review").needs
    expect(needs).not.toContain("consent to atropine 0.05 %")
  })

  it("a treatment that ended without one can no longer get it", () => {
    const story = { ...started, treatments: [drops("2025-01-10", 0.05, "2025-04-01")] }
    expect(child(story).on("2025-05-01").state(CONSENT)).toBe("missed")
  })

  it("a review names a consent not in force among its needs", () => {
    expect(child(started).on("2025-07-10").duty("6-month review").needs).toContain(
      "consent to atropine 0.05 %",
    )
  })
})

describe("A child on drops never runs out", () => {
  const bottle = {
    dispensed: "2025-03-01",
    opened: "2025-03-05",
    concentrationPercent: 0.05,
    beyondUse: "2025-04-04",
  }
  const supplied = { ...started, supplies: [bottle] }

  it.each([
    ["2025-03-20", "upcoming"],
    ["2025-03-21", "open"],
    ["2025-04-04", "open"],
    ["2025-04-05", "overdue"],
  ])("on %s the next bottle is %s when the last is good until 4 April", (today, state) => {
    expect(child(supplied).on(today).duty("next bottle")).toMatchObject({ due: "2025-04-04", state })
  })

  it("a bottle without a beyond-use date is good for 30 days after opening", () => {
    const { beyondUse: _, ...undated } = bottle
    expect(
      child({ ...started, supplies: [undated] })
        .on("2025-03-20")
        .duty("next bottle").due,
    ).toBe("2025-04-04")
  })

  it("the bottle that ends last counts", () => {
    const supplies = [{ ...bottle, dispensed: "2025-04-01", beyondUse: "2025-05-10" }, bottle]
    expect(
      child({ ...started, supplies })
        .on("2025-04-20")
        .duty("next bottle").due,
    ).toBe("2025-05-10")
  })

  it("with nothing recorded one thing is owed: the record of the first bottle", () => {
    const bottles = child(started)
      .on("2025-03-20")
      .duties.filter(({ kind }) => kind === "bottle")
    expect(bottles).toHaveLength(1)
    expect(bottles[0]).toMatchObject({ state: "open", needs: ["record the first bottle of atropine 0.05 %"] })
  })

  it("a bottle of the old strength is none of the new one", () => {
    const treatments = [drops("2025-01-10", 0.05, "2025-03-20"), drops("2025-03-20", 0.025)]
    expect(
      child({ ...supplied, treatments })
        .on("2025-03-20")
        .duty("first bottle").needs,
    ).toEqual(["record the first bottle of atropine 0.025 %"])
  })

  it("nothing is owed where treatment ends while the last bottle is good", () => {
    const treatments = [drops("2025-01-10", 0.05, "2025-04-05")]
    expect(child({ ...supplied, treatments }).on("2025-03-25").steps).not.toContain("next bottle")
  })

  it("a review names a bottle out of date among its needs, but only where bottles are recorded", () => {
    const need = "a bottle of atropine 0.05 % in date"
    expect(child(supplied).on("2025-07-10").duty("6-month review").needs).toContain(need)
    expect(child(started).on("2025-07-10").duty("6-month review").needs).not.toContain(need)
    const lasting = { ...started, supplies: [{ ...bottle, beyondUse: "2025-07-10" }] }
    expect(child(lasting).on("2025-07-10").duty("6-month review").needs).not.toContain(need)
  })
})
