import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { api } from "../../src/server/contract/api.js"
import type { ChildView } from "../../src/server/contract/child.js"
import { faults, type TestApp, testApp } from "./test-app.js"

let t: TestApp
let child: ChildView["child"]
beforeAll(async () => {
  t = await testApp()
  await t.logIn()
  child = (await t.addChild({ number: "E-1042" })).child
  const record = async (path: string, body: unknown) => {
    const answer = await t.ask("POST", `/api/children/${child.id}/${path}`, { body })
    if (answer.statusCode !== 201) throw new Error(answer.body)
  }
  await record("visits", { date: "2025-01-10", right: { pupil: { photopic: 3.8 } } })
  await record("treatments", { from: "2025-01-10", kind: "atropine", concentrationPercent: 0.05 })
  await record("supplies", { opened: "2025-01-12", concentrationPercent: 0.05, lot: "L-1" })
  await record("concerns", {
    opened: "2025-02-01",
    kind: "redness",
    what: "=1+1 red after the drops",
    adverseEvent: true,
    seriousness: "mild",
  })
  await record("concerns", { opened: "2025-03-01", kind: "pupil", what: "wide pupil" })
  await t.addChild({ name: "Tomas Brandl" })
})
afterAll(() => t.close())

const events = (query = "") => t.ask("GET", `/api/adverse-events${query}`)

describe("the adverse events of the practice", () => {
  it("are those kept as such, with treatment, strength and lot of their day", async () => {
    const answer = api.adverseEvents.answer.parse((await events()).json())
    expect(answer).toMatchObject({
      children: 2,
      events: [
        {
          child: "E-1042",
          opened: "2025-02-01",
          treatment: "atropine 0.05 %",
          concentrationPercent: 0.05,
          lot: "L-1",
        },
      ],
    })
  })

  it("tell no name unless asked", async () => {
    expect((await events()).body).not.toContain("Mira Solberg")
    expect((await events("?format=csv")).body).not.toContain("Mira Solberg")
    expect((await events("?names=yes&format=csv")).body).toContain('"Mira Solberg"')
  })

  it.each([
    ["?from=2025-02-02", 0],
    ["?to=2025-01-31", 0],
    ["?from=2025-02-01&to=2025-02-01", 1],
  ])("are of the days asked for: %s", async (query, count) => {
    expect((await events(query)).json().events).toHaveLength(count)
  })

  it("come as a table to download, in which nothing runs", async () => {
    const answer = await events("?format=csv")
    expect(answer.headers["content-type"]).toBe("text/csv; charset=utf-8")
    expect(answer.headers["content-disposition"]).toBe('attachment; filename="adverse-events.csv"')
    expect(answer.body).toContain(`"'=1+1 red after the drops"`)
  })

  it("are refused for a day that is none", async () => {
    const answer = await events("?from=2025-02-30")
    expect(answer.statusCode).toBe(422)
    expect(faults(answer)).toEqual(["from: a day of the calendar written YYYY-MM-DD"])
  })

  it("are told to nobody who is not logged in", async () => {
    const answer = await t.app.inject("/api/adverse-events")
    expect(answer.statusCode).toBe(401)
  })
})

describe("a concern", () => {
  it("is closed with a note and stays in the record with what it said before", async () => {
    const before: ChildView = (await t.ask("GET", `/api/children/${child.id}`)).json()
    const entry = before.entries.findLast(({ kind }) => kind === "concern")
    const fields = { ...(entry?.body as object), owner: "Ada Lindqvist", closed: "2025-03-02" }
    const close = (more: object) =>
      t.ask("POST", `/api/children/${child.id}/entries/${entry?.id}/amendment`, {
        body: { fields: { ...fields, ...more }, reason: "closed" },
      })
    expect(faults(await close({}))).toEqual([
      "fields.outcome: how it ended, in words, since it was closed on 2025-03-02",
    ])
    const after: ChildView = (await close({ outcome: "pupil back" })).json()
    expect(after.course.concerns?.find(({ kind }) => kind === "pupil")).toMatchObject({
      outcome: "pupil back",
    })
    expect(after.entries.filter(({ kind }) => kind === "concern")).toHaveLength(3)
  })
})
