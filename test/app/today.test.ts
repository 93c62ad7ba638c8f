import { afterEach, beforeEach, describe, expect, it } from "vitest"
import { api } from "../../src/server/contract/api.js"
import { FIRST_ROWS } from "../../src/server/contract/today.js"
import { todayList } from "../../src/server/today.js"
import { faults, type TestApp, testApp } from "./test-app.js"

let t: TestApp
beforeEach(async () => {
  t = await testApp()
  await t.logIn()
})
afterEach(() => t.close())

const today = async (query = "") => api.today.answer.parse((await t.ask("GET", `/api/today${query}`)).json())

/** A child whose 0.05 % was begun without a consent and without a bottle. */
const addTreated = async (name: string): Promise<string> => {
  const { child } = await t.addChild({ name })
  const url = `/api/children/${child.id}`
  await t.ask("POST", `${url}/visits`, { body: { date: "2025-11-01", symptoms: [] } })
  const body = { from: "2025-11-02", kind: "atropine", concentrationPercent: 0.05 }
  await t.ask("POST", `${url}/treatments`, { body })
  return child.id
}
const groupOf = async (group: string, query = "") =>
  (await today(query)).groups.find((one) => one.group === group)

describe("today", () => {
  it("is empty, and says so, in a practice without children", async () => {
    expect(await today()).toMatchObject({ things: 0, children: 0, read: 0, total: 0 })
  })

  it("names what is owed with its child, its role and its one action", async () => {
    const id = await addTreated("Tomas Brandl")
    const answer = await today()
    expect(answer).toMatchObject({ read: 1, total: 1, children: 1 })
    const sign = answer.groups.find(({ group }) => group === "sign")
    expect(sign).toMatchObject({
      count: 1,
      rows: [{ child: { id, name: "Tomas Brandl" }, role: "clinician", action: "consent", state: "overdue" }],
    })
  })

  it("drops a row as soon as what it asks for is recorded", async () => {
    const id = await addTreated("Tomas Brandl")
    expect((await groupOf("sign"))?.count).toBe(1)
    const covers = { kind: "atropine", concentrationPercent: 0.05 }
    await t.ask("POST", `/api/children/${id}/consents`, { body: { date: "2025-11-25", covers } })
    expect((await groupOf("sign"))?.count).toBe(0)
  })

  it("is filtered by role and searched by name", async () => {
    await addTreated("Tomas Brandl")
    await addTreated("Aiko Renner")
    expect((await today("?role=front-desk")).groups.find(({ group }) => group === "sign")?.count).toBe(0)
    expect((await groupOf("sign", "?role=clinician"))?.count).toBe(2)
    const found = await groupOf("sign", "?search=renner")
    expect(found?.rows.map(({ child }) => child.name)).toEqual(["Aiko Renner"])
  })

  it("shows the first rows of each group, and one group a page at a time", async () => {
    for (let n = 0; n < FIRST_ROWS + 2; n++) await addTreated(`Child ${String(n).padStart(2, "0")}`)
    const first = await groupOf("sign")
    expect([first?.count, first?.rows.length]).toEqual([FIRST_ROWS + 2, FIRST_ROWS])
    expect((await groupOf("sign", "?group=sign"))?.rows.length).toBe(FIRST_ROWS + 2)
    expect((await groupOf("supply", "?group=sign"))?.rows).toEqual([])
  })

  it("counts from the practice's day: a bottle not yet owed becomes owed as days pass", async () => {
    const id = await addTreated("Tomas Brandl")
    const body = {
      dispensed: "2025-11-20",
      opened: "2025-11-21",
      concentrationPercent: 0.05,
      beyondUse: "2025-12-20",
    }
    await t.ask("POST", `/api/children/${id}/supplies`, { body })
    expect((await groupOf("supply"))?.count).toBe(0)
    t.moveTo("2025-12-15")
    await t.logIn()
    expect((await groupOf("supply"))?.rows).toMatchObject([{ due: "2025-12-20", role: "front-desk" }])
  })

  it("says which roles and groups there are when asked for another", async () => {
    const answer = await t.ask("GET", "/api/today?role=cook&group=lunch")
    expect(answer.statusCode).toBe(422)
    expect(faults(answer)).toEqual([
      "role: one of clinician, technician, front-desk",
      "group: one of concern, decide, see, supply, sign, tell",
    ])
  })

  it("is for people who are logged in", async () => {
    expect((await t.app.inject({ method: "GET", url: "/api/today" })).statusCode).toBe(401)
  })
})

describe("the rules of the practice", () => {
  const fees = { title: "Fees 2026", currency: "EUR", from: "2026-01-01", fees: [] }

  it("are empty at first, and part of what the practice answers", async () => {
    const practice = (await t.ask("GET", "/api/practice")).json()
    expect(practice.rules).toMatchObject({ protocols: [], feeSchedules: [], pharmacies: [] })
  })

  it("hold a paper from when it is recorded, and keep every version of it", async () => {
    const first = await t.ask("POST", "/api/rules/fees", { body: { body: fees } })
    expect(first.statusCode).toBe(201)
    const [paper] = first.json().papers
    const second = await t.ask("POST", "/api/rules/fees", {
      body: { body: { ...fees, title: "Fees, corrected" }, supersedes: paper.id, reason: "a slip" },
    })
    expect(second.json().rules.feeSchedules).toMatchObject([{ title: "Fees, corrected" }])
    expect(second.json().papers).toMatchObject([
      { id: paper.id, body: fees, author: "Ada Lindqvist", supersededBy: second.json().papers[1].id },
      { reason: "a slip", supersededBy: null },
    ])
  })

  it("refuse a paper with its faults, each with its place", async () => {
    const answer = await t.ask("POST", "/api/rules/fees", {
      body: { body: { ...fees, currency: "euro", from: "2026-13-01" } },
    })
    expect(answer.statusCode).toBe(422)
    expect(faults(answer)).toEqual([
      "body.currency: an ISO 4217 code such as EUR",
      "body.from: a day of the calendar written YYYY-MM-DD",
    ])
    const protocol = await t.ask("POST", "/api/rules/protocol", { body: { body: { id: "own" } } })
    expect(faults(protocol)).toContain("body.title: a text that is not empty")
  })

  it("are no child of the practice", async () => {
    await t.ask("POST", "/api/rules/fees", { body: { body: fees } })
    expect((await t.ask("GET", "/api/children")).json().total).toBe(0)
    expect((await t.ask("GET", `/api/children/${t.record.practice.id}`)).statusCode).toBe(422)
  })
})

describe("a server that closes while the list is still being read", () => {
  it("waits for the children at hand and reads no more of them", async () => {
    const children = Array.from({ length: 200 }, (_, n) => ({ id: String(n) }))
    let done = 0
    const context = {
      record: { everyChild: async () => children },
      clock: { today: () => "2026-11-25" },
      rules: { now: async () => ({}) },
    }
    const readings = {
      known: () => undefined,
      read: async (some: readonly unknown[]) => {
        await new Promise((next) => setTimeout(next, 5))
        done += some.length
      },
    }
    const list = todayList(context as never, readings as never)
    const warmed = list.warm()
    while (done === 0) await new Promise((next) => setTimeout(next, 1))
    await list.stop()
    const atClose = done
    await warmed
    expect(done).toBe(atClose)
    expect(done).toBeLessThan(200)
  })
})
