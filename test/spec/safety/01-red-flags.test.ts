import { describe, expect, it } from "vitest"
import { child, drops, no, visit, yes } from "./child.js"

// Signs and duty: COLLEGE-FLASHES (full-text excerpt), CD-112 to CD-114; the words "same day" are general practice.
const story = {
  treatments: [drops("2025-01-10", 0.05)],
  visits: [
    visit("2025-01-10", { pupil: { photopic: 3.8 } }),
    visit(
      "2025-02-10",
      { pupil: { photopic: 7 } },
      { answers: [yes("floaters", "since Saturday"), yes("flashes")] },
    ),
  ],
}

describe("Flashes, floaters, a curtain, pain or sudden loss of vision", () => {
  it("ask for care on the same day, before everything else that is open", () => {
    const { open } = child(story).on("2025-02-10")
    expect(open.map(({ kind }) => kind)).toEqual(["red-flag", "pupil"])
    expect(open[0]?.what).toBe(
      "Flashes, floaters: told on 2025-02-10. Noted: since Saturday. Same-day care: the front vitreous and the dilated " +
        "retina are looked at, or the child goes to someone who can. Nobody reassures without an examination.",
    )
  })

  it.each(["flashes", "floaters", "curtain", "eye-pain", "sudden-vision-loss"])(
    "count one by one: %s",
    (question) => {
      expect(
        child({ visits: [visit("2025-02-10", {}, { answers: [yes(question)] })] }).on("2025-02-10").kinds,
      ).toEqual(["red-flag"])
    },
  )

  it("raise nothing when answered with no", () => {
    expect(
      child({ visits: [visit("2025-02-10", {}, { answers: [no("flashes")] })] }).on("2025-02-10").open,
    ).toEqual([])
  })

  it("count in a child who was never treated", () => {
    const untreated = { visits: [visit("2025-02-10", {}, { answers: [yes("curtain")] })] }
    expect(child(untreated).on("2025-02-10").kinds).toEqual(["red-flag"])
  })
})

describe("A red flag is not dismissed", () => {
  const later = visit("2025-07-10", { pupil: { photopic: 4 } }, { answers: [no("floaters"), no("flashes")] })
  const withLater = { ...story, visits: [...story.visits, later] }

  it("by a later visit at which everything is well", () => {
    expect(child(withLater).on("2025-07-10").kinds).toEqual(["red-flag"])
  })

  it("by a record that is still open: that has an owner now", () => {
    const record = { opened: "2025-02-10", kind: "red-flag", what: "floaters", owner: "Dr Osei" }
    const { open } = child({ ...withLater, concerns: [record] }).on("2025-07-10")
    expect(open).toHaveLength(1)
    expect(open[0]).toMatchObject({ isRedFlag: true, owner: "Dr Osei" })
  })

  it("by the closed record of another day", () => {
    const other = {
      opened: "2025-03-01",
      kind: "red-flag",
      what: "asked again",
      closed: "2025-03-01",
      outcome: "nothing found",
    }
    expect(child({ ...withLater, concerns: [other] }).on("2025-07-10").kinds).toEqual(["red-flag"])
  })

  it("but by closing the record of its day, with a note", () => {
    const record = {
      opened: "2025-02-10",
      kind: "red-flag",
      what: "floaters",
      closed: "2025-02-10",
      outcome: "dilated view: no break, no pigment",
    }
    expect(child({ ...withLater, concerns: [record] }).on("2025-07-10").open).toEqual([])
  })
})
