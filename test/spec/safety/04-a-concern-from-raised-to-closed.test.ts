import { describe, expect, it } from "vitest"
import type { SafetyConcern } from "../../../src/engine/course.js"
import { child, drops, visit } from "./child.js"

const START = "2025-01-10"
const story = {
  treatments: [drops(START, 0.05)],
  visits: [visit(START, { pupil: { photopic: 3.8 } }), visit("2025-02-10", { pupil: { photopic: 7 } })],
}
const record: SafetyConcern = { opened: "2025-02-10", kind: "pupil", what: "wide pupil", owner: "Dr Osei" }
const closed: SafetyConcern = { ...record, closed: "2025-02-20", outcome: "tinted lenses, comfortable" }
const again = visit("2025-07-10", { pupil: { photopic: 7.1 } })

describe("Raised by the figures", () => {
  it("it is open without an owner, since the visit that raised it", () => {
    expect(child(story).on("2025-03-01").open).toMatchObject([
      { kind: "pupil", since: "2025-02-10", owner: null, recorded: null },
    ])
  })
})

describe("Taken up", () => {
  it("it is the same concern, once, with its owner and still with its figures", () => {
    const { open } = child({ ...story, concerns: [record] }).on("2025-03-01")
    expect(open).toHaveLength(1)
    expect(open[0]).toMatchObject({ owner: "Dr Osei", what: expect.stringContaining("7.0 mm on 2025-02-10") })
  })

  it("a later visit that raises it again finds the open record", () => {
    const { open } = child({ ...story, visits: [...story.visits, again], concerns: [record] }).on(
      "2025-07-10",
    )
    expect(open).toHaveLength(1)
    expect(open[0]).toMatchObject({
      since: "2025-02-10",
      what: expect.stringContaining("7.1 mm on 2025-07-10"),
    })
  })

  it("it stays open when the figures are well again, until somebody closes it", () => {
    const well = visit("2025-07-10", { pupil: { photopic: 4 } })
    const { open } = child({ ...story, visits: [...story.visits, well], concerns: [record] }).on("2025-07-10")
    expect(open).toMatchObject([{ kind: "pupil", what: "wide pupil", raised: [] }])
  })
})

describe("Closed with a note", () => {
  it("it is open no more", () => {
    expect(child({ ...story, concerns: [closed] }).on("2025-03-01").open).toEqual([])
  })

  it("it was open until the day it was closed", () => {
    expect(child({ ...story, concerns: [closed] }).on("2025-02-19").kinds).toEqual(["pupil"])
  })

  it("it is raised anew by a later visit", () => {
    const { open } = child({ ...story, visits: [...story.visits, again], concerns: [closed] }).on(
      "2025-07-10",
    )
    expect(open).toMatchObject([{ since: "2025-07-10", recorded: null }])
  })
})

describe("Records and figures of different kinds", () => {
  it("do not stand for each other", () => {
    const other: SafetyConcern = { ...closed, kind: "redness" }
    expect(child({ ...story, concerns: [other] }).on("2025-03-01").kinds).toEqual(["pupil"])
  })

  it("a record filed as symptom stands for every symptom", () => {
    const visits = [
      visit(
        "2025-02-10",
        {},
        {
          symptoms: [
            { kind: "headache", grade: 2 },
            { kind: "near-blur", grade: 3 },
          ],
        },
      ),
    ]
    const symptom: SafetyConcern = { opened: "2025-02-10", kind: "symptom", what: "both" }
    const { open } = child({ visits, concerns: [symptom] }).on("2025-03-01")
    expect(open).toHaveLength(1)
    expect(open[0]?.raised).toHaveLength(2)
  })
})
