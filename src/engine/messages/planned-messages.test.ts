import { describe, expect, it } from "vitest"
import type { Duty } from "../assessment.js"
import type { Owed } from "../today/owed.js"
import type { FamilyContact } from "./family-contact.js"
import { plannedMessages } from "./planned-messages.js"

const CONTACT: FamilyContact = {
  name: "Ines Solberg",
  relation: "mother",
  language: "en",
  email: "ines@family.example",
  reachedBy: "email",
  agreed: { on: "2026-01-01", to: ["visits", "bottles"] },
}
// A window of eight weeks around 1 June.
const REVIEW: Duty = {
  kind: "examination",
  step: "6-month review",
  opens: "2026-05-04",
  due: "2026-06-01",
  closes: "2026-06-29",
  state: "upcoming",
  needs: [],
}
const BOTTLE: Duty = {
  kind: "bottle",
  step: "next bottle",
  opens: "2026-05-01",
  due: "2026-05-08",
  closes: "2026-05-08",
  state: "upcoming",
  needs: [],
}
const rowOf = ({ kind, step, opens, due, closes }: Duty, changes: Partial<Owed> = {}): Owed => ({
  group: kind === "bottle" ? "supply" : "see",
  what: step,
  why: "",
  since: opens,
  due,
  closes,
  state: "open",
  role: "front-desk",
  action: kind === "bottle" ? "supply" : "visit",
  ...changes,
})

const planned = (
  today: string,
  duties: readonly Duty[],
  changes: { readonly contact?: FamilyContact; readonly owed?: readonly Owed[] } = {},
) =>
  plannedMessages({
    child: "child-1",
    contact: CONTACT,
    duties,
    owed: duties.filter(({ state }) => state !== "upcoming").map((duty) => rowOf(duty)),
    today,
    rules: { daysBefore: 14 },
    ...changes,
  })
const said = (...given: Parameters<typeof planned>) =>
  planned(...given).map(({ kind, on }) => `${kind} ${on}`)

describe("a visit that is to come", () => {
  it("is spoken of before its window opens, and once more before it is due", () => {
    expect(said("2026-03-01", [REVIEW])).toEqual(["visit-ahead 2026-04-20", "visit-due 2026-05-18"])
  })
  it("is spoken of once where both would fall within a week", () => {
    const narrow = { ...REVIEW, opens: "2026-05-28" }
    expect(said("2026-03-01", [narrow])).toEqual(["visit-ahead 2026-05-14"])
  })
  it("has only its last reminder once that day has come", () => {
    expect(said("2026-05-20", [{ ...REVIEW, state: "open" }])).toEqual(["visit-due 2026-05-18"])
  })
  it("is not spoken of two weeks too late", () => {
    expect(said("2026-05-04", [REVIEW])[0]).toBe("visit-ahead 2026-04-20")
    expect(said("2026-05-05", [{ ...REVIEW, state: "open" }])).toEqual(["visit-due 2026-05-18"])
  })
  it("has no reminder after the day it was due, while its window is open", () => {
    expect(said("2026-06-02", [{ ...REVIEW, state: "open" }])).toEqual([])
  })
  it("is one visit where two examinations are due on one day", () => {
    expect(planned("2026-03-01", [REVIEW, { ...REVIEW, step: "another" }])).toHaveLength(2)
  })
})

describe("a visit that was not made", () => {
  const late: Duty = { ...REVIEW, state: "overdue" }
  it("is spoken of on the day after its window closed", () => {
    expect(said("2026-06-30", [late])).toEqual(["visit-overdue 2026-06-30"])
  })
  it("is left to the practice once it has begun", () => {
    expect(said("2026-06-30", [late], { owed: [rowOf(late, { role: "technician" })] })).toEqual([])
  })
  it("is not news for ever", () => {
    expect(said("2026-07-15", [late])).toEqual([])
  })
})

describe("a bottle", () => {
  it("is spoken of as many days before its end as the pharmacy takes", () => {
    expect(said("2026-04-01", [BOTTLE])).toEqual(["bottle 2026-05-01"])
    expect(said("2026-05-02", [{ ...BOTTLE, state: "open" }])).toEqual(["bottle 2026-05-01"])
  })
  it("is not spoken of when the next one is ordered already", () => {
    expect(said("2026-05-02", [{ ...BOTTLE, state: "open" }], { owed: [] })).toEqual([])
  })
  it("is spoken of after its end under the same key, so that it is not said twice", () => {
    const keys = [
      ...planned("2026-05-02", [{ ...BOTTLE, state: "open" }]),
      ...planned("2026-05-20", [{ ...BOTTLE, state: "overdue" }]),
    ].map(({ key }) => key)
    expect(keys).toEqual(["child-1 bottle 2026-05-08", "child-1 bottle 2026-05-08"])
  })
  it("that is the first of a course is handed over in the practice", () => {
    const first: Duty = { ...BOTTLE, opens: "2026-05-08", state: "open" }
    expect(said("2026-05-08", [first])).toEqual([])
  })
})

describe("a family", () => {
  const of = (changes: Partial<FamilyContact>) =>
    said("2026-04-25", [REVIEW, BOTTLE], { contact: { ...CONTACT, ...changes } })
  it("is told only of what it agreed to", () => {
    expect(of({ agreed: { on: "2026-01-01", to: ["bottles"] } })).toEqual(["bottle 2026-05-01"])
    const { agreed: _, ...never } = CONTACT
    expect(said("2026-04-25", [REVIEW, BOTTLE], { contact: never })).toEqual([])
  })
  it("is told nothing from the day it took that back, and everything until then", () => {
    expect(of({ agreed: { on: "2026-01-01", to: ["visits"], until: "2026-04-26" } })).not.toEqual([])
    expect(of({ agreed: { on: "2026-01-01", to: ["visits"], until: "2026-04-25" } })).toEqual([])
  })
  it("without an address for its way of being reached is told nothing", () => {
    expect(of({ reachedBy: "sms" })).toEqual([])
    expect(of({ reachedBy: "none" })).toEqual([])
  })
  it("is not written to about consents and decisions", () => {
    const others: readonly Duty[] = [
      { ...REVIEW, kind: "consent" },
      { ...REVIEW, kind: "decision" },
    ]
    expect(said("2026-04-25", others)).toEqual([])
  })
})
