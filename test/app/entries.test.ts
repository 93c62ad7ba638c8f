import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest"
import { api } from "../../src/server/contract/api.js"
import type { ChildView } from "../../src/server/contract/child.js"
import { faults, problemsOf, type TestApp, TODAY, testApp } from "./test-app.js"

let t: TestApp
let childUrl: string
beforeAll(async () => {
  t = await testApp()
  await t.logIn()
})
afterAll(() => t.close())
beforeEach(async () => {
  childUrl = `/api/children/${(await t.addChild()).child.id}`
})

const post = (rest: string, body: unknown) => t.ask("POST", `${childUrl}/${rest}`, { body })
const eye = (mm: number) => ({ axialLength: { mm, readings: 5 } })
const entryOf = ({ entries }: ChildView, kind: string) => entries.findLast((entry) => entry.kind === kind)
const stored = async () => (await t.ask("GET", childUrl)).json().entries.length

describe("a visit", () => {
  it("is answered with the course it became part of", async () => {
    const answer = await post("visits", { date: "2025-01-10", right: eye(24.12), left: eye(24.05) })
    expect(answer.statusCode).toBe(201)
    const { course, entries } = api.addVisit.answer.parse(answer.json())
    expect(course.visits).toEqual([{ date: "2025-01-10", right: eye(24.12), left: eye(24.05) }])
    expect(entries.at(-1)).toMatchObject({ kind: "visit", date: "2025-01-10", author: "Ada Lindqvist" })
  })

  it("is kept as the course file spells it: nulls left out, an axis of 0 as 180", async () => {
    const right = { refraction: { sphere: -2, cylinder: -0.5, axis: 0 }, pupil: null }
    const { course } = (await post("visits", { date: "2025-01-10", right, left: null })).json()
    expect(course.visits).toEqual([
      { date: "2025-01-10", right: { refraction: { sphere: -2, cylinder: -0.5, axis: 180 } } },
    ])
  })

  it("with faults tells every one of them at once, and nothing of it is kept", async () => {
    const answer = await post("visits", {
      date: "2026-01-10",
      right: { axialLength: { mm: 2.41 }, refraction: { sphere: -2, cylinder: -1, axis: 190 } },
      left: { axialLength: { mm: 241 }, refraction: { sphere: -2, cylinder: -1 } },
      symptoms: [{ kind: "light-sensitivity", grade: 4 }],
    })
    expect(answer.statusCode).toBe(422)
    expect(faults(answer).toSorted()).toEqual([
      `date: a day up to ${TODAY}`,
      "left.axialLength.mm: a number from 15 to 40 mm",
      "left.refraction.axis: a number from 0 to 180 degrees, since the cylinder is -1 D",
      "right.axialLength.mm: a number from 15 to 40 mm",
      "right.refraction.axis: a number from 0 to 180 degrees",
      "symptoms[0].grade: 0, 1, 2 or 3",
    ])
    expect(problemsOf(answer).find(({ path }) => path === "right.axialLength.mm")?.message).toBe(
      "right.axialLength.mm must be a number from 15 to 40 mm, not 2.41. Did you mean 24.1?",
    )
    expect(await stored()).toBe(1)
  })

  it.each([
    ["before the birth", "2017-03-13", "date: on or after the day of birth (2017-03-14)"],
    ["in the future", "2025-11-26", `date: a day up to ${TODAY}`],
    ["on no day", "2025-02-30", "date: a day of the calendar written YYYY-MM-DD"],
  ])("is refused %s", async (_, date, fault) => {
    expect(faults(await post("visits", { date }))).toEqual([fault])
  })

  it("is refused a second time on one day, with the way out", async () => {
    await post("visits", { date: "2025-01-10", right: eye(24.12) })
    const answer = await post("visits", { date: "2025-01-10", right: eye(24.2) })
    expect(answer.statusCode).toBe(422)
    expect(faults(answer)).toEqual([
      "date: a day without another visit (the visit of 2025-01-10 has this one)",
    ])
    expect(await stored()).toBe(2)
  })

  it("is recorded once when two people enter it at once", async () => {
    const answers = await Promise.all(
      [24.12, 24.13, 24.14].map((mm) => post("visits", { date: "2025-01-10", right: eye(mm) })),
    )
    expect(answers.map(({ statusCode }) => statusCode).sort()).toEqual([201, 422, 422])
    expect(await stored()).toBe(2)
  })

  it("sent ten times with one id is one visit", async () => {
    const body = { id: crypto.randomUUID(), date: "2025-01-10", right: eye(24.12) }
    const answers = await Promise.all(Array.from({ length: 10 }, () => post("visits", body)))
    expect(answers.every(({ statusCode }) => statusCode === 201)).toBe(true)
    expect(await stored()).toBe(2)
  })

  it("can't take over the id of another entry", async () => {
    const { entries } = (await t.ask("GET", childUrl)).json()
    const answer = await post("visits", { id: entries[0].id, date: "2025-01-10" })
    expect(answer.statusCode).toBe(409)
  })

  it.each([
    [
      "a misspelt field",
      { date: "2025-01-10", right: { axialLenght: { mm: 24 } } },
      "right.axialLenght: a field of the course file",
    ],
    [
      "text for a number",
      { date: "2025-01-10", right: { axialLength: { mm: "24.1" } } },
      "right.axialLength.mm: a number from 15 to 40 mm",
    ],
    ["a list for a visit", [], ": an object { ... }"],
    ["an id that is none", { id: "x", date: "2025-01-10" }, "id: a UUID"],
    ["no date", {}, "date: a day of the calendar written YYYY-MM-DD"],
  ])("is refused with %s", async (_, body, fault) => {
    const answer = await post("visits", body)
    expect(answer.statusCode).toBe(422)
    expect(faults(answer)).toEqual([fault])
  })
})

describe("correcting a visit", () => {
  let visitId: string
  beforeEach(async () => {
    await post("visits", { date: "2024-07-10", right: eye(23.9) })
    const view = (await post("visits", { date: "2025-01-10", right: eye(24.21) })).json()
    visitId = entryOf(view, "visit")?.id ?? ""
  })
  const correct = (body: unknown) => post(`visits/${visitId}/correction`, body)
  const visit = { date: "2025-01-10", right: eye(24.12) }

  it("puts the new figures into the course and keeps the old entry", async () => {
    const answer = await correct({ visit, reason: "digits exchanged" })
    expect(answer.statusCode).toBe(201)
    const { course, entries } = api.correctVisit.answer.parse(answer.json())
    expect(course.visits.map(({ right }) => right?.axialLength?.mm)).toEqual([23.9, 24.12])
    expect(entries.find(({ id }) => id === visitId)?.supersededBy).toBe(entries.at(-1)?.id)
    expect(entries.at(-1)?.reason).toBe("digits exchanged")
  })

  it("may move the visit to another day, but not onto another visit", async () => {
    expect((await correct({ visit: { ...visit, date: "2025-01-11" }, reason: "wrong day" })).statusCode).toBe(
      201,
    )
    const { entries } = (await t.ask("GET", childUrl)).json()
    visitId = entries.at(-1).id
    expect(faults(await correct({ visit: { ...visit, date: "2024-07-10" }, reason: "wrong day" }))).toEqual([
      "visit.date: a day without another visit (the visit of 2024-07-10 has this one)",
    ])
  })

  it("needs a reason and sound figures, and says both at once", async () => {
    const answer = await correct({ visit: { ...visit, right: eye(241.2) }, reason: "" })
    expect(faults(answer)).toEqual([
      "visit.right.axialLength.mm: a number from 15 to 40 mm",
      "reason: why it is corrected, in words",
    ])
  })

  it("is refused once it was corrected already", async () => {
    await correct({ visit, reason: "digits exchanged" })
    const answer = await correct({ visit, reason: "again" })
    expect(answer.statusCode).toBe(409)
    expect(problemsOf(answer)[0]?.message).toMatch(/^already corrected on/)
  })

  it("may itself be corrected", async () => {
    const { entries } = (await correct({ visit, reason: "digits exchanged" })).json()
    const again = await post(`visits/${entries.at(-1).id}/correction`, {
      visit: { ...visit, right: eye(24.13) },
      reason: "misread",
    })
    expect(again.statusCode).toBe(201)
    expect(again.json().course.visits).toContainEqual({ ...visit, right: eye(24.13) })
  })

  it("of another child or of no visit is not found", async () => {
    const other = await t.addChild({ name: "Tomas Brandl" })
    for (const url of [
      `/api/children/${other.child.id}/visits/${visitId}`,
      `${childUrl}/visits/${other.child.id}`,
    ]) {
      const answer = await t.ask("POST", `${url}/correction`, { body: { visit, reason: "slip" } })
      expect(answer.statusCode).toBe(404)
    }
  })

  it("by withdrawal takes it out of the course and leaves it in the record", async () => {
    const answer = await post(`entries/${visitId}/withdrawal`, { reason: "belongs to another child" })
    const { course, entries } = api.withdrawEntry.answer.parse(answer.json())
    expect(course.visits).toHaveLength(1)
    expect(entries).toHaveLength(4)
  })
})

describe("earlier glasses", () => {
  it("become visits with nothing but their refractions and where they are from", async () => {
    const answer = await post("glasses", [
      { date: "2023-09-01", right: { sphere: -1 }, left: { sphere: -0.75 } },
      { date: "2024-09-01", right: { sphere: -1.75, cylinder: -0.5, axis: 10 }, from: "referring practice" },
    ])
    expect(answer.statusCode).toBe(201)
    expect(api.addGlasses.answer.parse(answer.json()).course.visits).toEqual([
      {
        date: "2023-09-01",
        from: "old glasses",
        right: { refraction: { sphere: -1 } },
        left: { refraction: { sphere: -0.75 } },
      },
      {
        date: "2024-09-01",
        from: "referring practice",
        right: { refraction: { sphere: -1.75, cylinder: -0.5, axis: 10 } },
      },
    ])
  })

  it("are all kept or none, with every fault in its place", async () => {
    await post("visits", { date: "2024-01-10" })
    const answer = await post("glasses", [
      { date: "2023-09-01", right: { sphere: -1 } },
      { date: "2024-01-10", right: { sphere: -1, cylinder: -0.5 } },
      { date: "2023-09-01", left: { sphere: -45 } },
      { date: "2022-01-01" },
    ])
    expect(answer.statusCode).toBe(422)
    expect(faults(answer).toSorted()).toEqual([
      "[1].date: a day without another visit (the visit of 2024-01-10 has this one)",
      "[1].right.axis: a number from 0 to 180 degrees, since the cylinder is -0.5 D",
      "[2].date: a day without another visit (the visit of 2023-09-01 has this one)",
      "[2].left.sphere: a number from -30 to 30 D",
      "[3]: a prescription for at least one eye",
    ])
    expect(await stored()).toBe(2)
  })

  it.each([[{}], [[]], [null], ["glasses"]])("are refused as %j", async (body) => {
    const answer = await post("glasses", body)
    expect(answer.statusCode).toBeGreaterThanOrEqual(400)
    expect(answer.statusCode).toBeLessThan(500)
    expect(await stored()).toBe(1)
  })
})

describe("treatment, bottles and consent", () => {
  const drops = { from: "2025-01-10", kind: "atropine", concentrationPercent: 0.05 }

  it("are part of the course at once", async () => {
    await post("consents", { date: "2025-01-10", covers: { kind: "atropine", concentrationPercent: 0.05 } })
    await post("treatments", drops)
    const { course } = (await post("supplies", { dispensed: "2025-01-12", volumeMl: 5, lot: "L-1" })).json()
    expect(course).toMatchObject({
      treatments: [drops],
      supplies: [{ dispensed: "2025-01-12", volumeMl: 5, lot: "L-1" }],
      consents: [{ date: "2025-01-10", covers: { kind: "atropine", concentrationPercent: 0.05 } }],
    })
  })

  it("a treatment ends by an entry of its own", async () => {
    const started = entryOf((await post("treatments", drops)).json(), "treatment")
    const answer = await post(`treatments/${started?.id}/end`, { to: "2025-07-10" })
    const { course, entries } = api.endTreatment.answer.parse(answer.json())
    expect(course.treatments).toEqual([{ ...drops, to: "2025-07-10" }])
    expect(entries.at(-1)).toMatchObject({ supersedes: started?.id, reason: "ended on 2025-07-10" })
  })

  it("a treatment does not end before it starts", async () => {
    const started = entryOf((await post("treatments", drops)).json(), "treatment")
    const answer = await post(`treatments/${started?.id}/end`, { to: "2025-01-10" })
    expect(faults(answer)).toEqual(["to: after the day it starts (2025-01-10)"])
  })

  it("the day a treatment ended may be corrected", async () => {
    const started = entryOf((await post("treatments", drops)).json(), "treatment")
    const ended = entryOf(
      (await post(`treatments/${started?.id}/end`, { to: "2025-07-10" })).json(),
      "treatment",
    )
    const { course } = (await post(`treatments/${ended?.id}/end`, { to: "2025-07-01" })).json()
    expect(course.treatments).toEqual([{ ...drops, to: "2025-07-01" }])
  })

  it("a second strength does not start before the first has ended", async () => {
    await post("treatments", drops)
    const answer = await post("treatments", { ...drops, from: "2025-06-01", concentrationPercent: 0.025 })
    expect(answer.statusCode).toBe(422)
    expect(faults(answer)).toEqual([
      "from: on or after the end of atropine 0.05 % from 2025-01-10, which is of the same kind and has no end",
    ])
  })

  it.each([
    ["treatments", { from: "2025-01-10", kind: "atropine" }, "concentrationPercent"],
    ["treatments", { from: "2025-01-10", kind: "miracle" }, "kind"],
    ["supplies", { dispensed: "2025-01-12", opened: "2025-01-11" }, "opened"],
    ["consents", { date: "2025-01-10" }, "covers"],
  ])("%s is refused with the field named: %j", async (rest, body, path) => {
    const answer = await post(rest, body)
    expect(answer.statusCode).toBe(422)
    expect(problemsOf(answer).map((problem) => problem.path)).toEqual([path])
  })
})

it("whatever was refused or corrected, the chain stays whole", async () => {
  await post("visits", { date: "2025-01-10" })
  await post("visits", { date: "2025-01-10" })
  expect(await t.record.verifyChain()).toMatchObject({ whole: true })
})
