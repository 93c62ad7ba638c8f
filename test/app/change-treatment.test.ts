import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest"
import { api } from "../../src/server/contract/api.js"
import { faults, problemsOf, type TestApp, testApp } from "./test-app.js"

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
const stored = async () => (await t.ask("GET", childUrl)).json().entries.length
const drops = { from: "2025-01-10", kind: "atropine", concentrationPercent: 0.05 }

describe("a change of strength", () => {
  const stronger = { to: "2025-07-10", kind: "atropine", concentrationPercent: 0.1 }
  const start = async () => (await post("treatments", drops)).json().entries.at(-1).id as string
  const change = (entryId: string, body: unknown) => post(`treatments/${entryId}/change`, body)

  it("ends the one and starts the other on the same day", async () => {
    const running = await start()
    const answer = await change(running, stronger)
    expect(answer.statusCode).toBe(201)
    const { course, entries } = api.changeTreatment.answer.parse(answer.json())
    expect(course.treatments).toEqual([
      { ...drops, to: "2025-07-10" },
      { from: "2025-07-10", kind: "atropine", concentrationPercent: 0.1 },
    ])
    expect(entries.at(-2)).toMatchObject({
      supersedes: running,
      reason: "changed to atropine 0.1 % on 2025-07-10",
    })
    expect(entries.at(-1)).toMatchObject({ supersedes: null, date: "2025-07-10" })
  })

  it("may be to another kind, with a reason of its own", async () => {
    const answer = await change(await start(), {
      to: "2025-07-10",
      kind: "orthokeratology",
      reason: "glare",
    })
    const { course, entries } = answer.json()
    expect(course.treatments[1]).toEqual({ from: "2025-07-10", kind: "orthokeratology" })
    expect(entries.at(-2).reason).toBe("glare")
  })

  it.each([
    [{ ...stronger, to: "2025-01-10" }, ["to: after the day it starts (2025-01-10)"]],
    [{ ...stronger, to: "2025-02-30" }, ["to: a day of the calendar written YYYY-MM-DD"]],
    [{ ...stronger, to: undefined }, ["to: a day of the calendar written YYYY-MM-DD"]],
    [
      { ...stronger, concentrationPercent: 0.05 },
      ["concentrationPercent: another than the atropine 0.05 % of now"],
    ],
    [
      { ...stronger, concentrationPercent: 5 },
      ["concentrationPercent: a number above 0 and up to 1.5 % w/v"],
    ],
    [
      { to: "2024-01-01", kind: "atropine" },
      [
        "to: after the day it starts (2025-01-10)",
        "concentrationPercent: a number above 0 and up to 1.5 % w/v, since the treatment is atropine",
      ],
    ],
  ])("is refused as %j and nothing of it is kept", async (body, expected) => {
    const running = await start()
    const before = await stored()
    const answer = await change(running, body)
    expect(answer.statusCode).toBe(422)
    expect(faults(answer)).toEqual(expected)
    expect(await stored()).toBe(before)
  })

  it("is all or nothing when the second half stands in the way of another treatment", async () => {
    const running = await start()
    await post("treatments", { from: "2025-03-01", kind: "orthokeratology" })
    const before = await stored()
    const answer = await change(running, { to: "2025-07-10", kind: "orthokeratology" })
    expect(faults(answer)).toEqual([
      "to: on or after the end of orthokeratology from 2025-03-01, which is of the same kind and has no end",
    ])
    expect(await stored()).toBe(before)
  })

  it("does not lengthen a treatment that has ended", async () => {
    const running = await start()
    const { entries } = (await post(`treatments/${running}/end`, { to: "2025-06-01" })).json()
    const answer = await change(entries.at(-1).id, stronger)
    expect(faults(answer)).toEqual(["to: before 2025-06-01, when the treatment ends already"])
  })

  it("sent ten times with one id is one change", async () => {
    const running = await start()
    const body = { ...stronger, id: crypto.randomUUID() }
    const before = await stored()
    const answers = await Promise.all(Array.from({ length: 10 }, () => change(running, body)))
    expect(answers.map(({ statusCode }) => statusCode)).toEqual(Array(10).fill(201))
    expect(await stored()).toBe(before + 2)
  })

  it("of a treatment that was changed already is refused", async () => {
    const running = await start()
    await change(running, stronger)
    const answer = await change(running, { ...stronger, concentrationPercent: 0.02 })
    expect(answer.statusCode).toBe(409)
    expect(problemsOf(answer)[0]?.message).toMatch(/^this treatment was stopped, changed or corrected/)
  })

  it.each([[[]], [null], ["text"], [{}]])("is refused as %j", async (body) => {
    const answer = await change(await start(), body)
    expect([400, 415, 422]).toContain(answer.statusCode)
  })

  it("of another child's treatment is not found", async () => {
    const other = await t.addChild({ name: "Tomas Brandl" })
    const running = await start()
    const url = `/api/children/${other.child.id}/treatments/${running}/change`
    expect((await t.ask("POST", url, { body: stronger })).statusCode).toBe(404)
  })
})
