import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { api } from "../../src/server/contract/api.js"
import { faults, type TestApp, testApp } from "./test-app.js"

let t: TestApp
const ids = new Map<string, string>()
beforeAll(async () => {
  t = await testApp()
  await t.logIn()
  for (const [name, lot] of [
    ["Zora Quint", "LT-07/a"],
    ["Anselm Reyes", " lt-07/A "],
    ["Bela Fuchs", "LT-08"],
  ] as const) {
    const { child } = await t.addChild({ name })
    ids.set(name, child.id)
    const body = { dispensed: "2025-10-01", opened: "2025-10-02", concentrationPercent: 0.05, lot }
    await t.ask("POST", `/api/children/${child.id}/supplies`, { body })
  }
})
afterAll(() => t.close())

const lot = async (name: string) =>
  api.lot.answer.parse((await t.ask("GET", `/api/lots/${encodeURIComponent(name)}`)).json())

describe("a lot", () => {
  it("is answered with every child who had a bottle of it, however it was written", async () => {
    const { children } = await lot("LT-07/A")
    expect(children.map(({ name }) => name)).toEqual(["Anselm Reyes", "Zora Quint"])
    expect(children[1]?.bottles).toEqual([
      {
        dispensed: "2025-10-01",
        opened: "2025-10-02",
        beyondUse: null,
        concentrationPercent: 0.05,
        pharmacy: null,
      },
    ])
  })

  it("of a bottle that was withdrawn names no child", async () => {
    const url = `/api/children/${ids.get("Bela Fuchs")}`
    expect((await lot("LT-08")).children).toHaveLength(1)
    const { entries } = (await t.ask("GET", url)).json()
    const entry = entries.find(({ kind }: { kind: string }) => kind === "supply")
    const body = { reason: "entered for another child" }
    await t.ask("POST", `${url}/entries/${entry.id}/withdrawal`, { body })
    expect((await lot("LT-08")).children).toEqual([])
  })

  it("that nobody had is an empty list", async () => {
    expect(await lot("none")).toEqual({ lot: "none", children: [] })
  })

  it("is told to nobody who is not logged in", async () => {
    const stranger = await t.app.inject({ method: "GET", url: "/api/lots/LT-07" })
    expect(stranger.statusCode).toBe(401)
  })
})

describe("a bottle", () => {
  const post = (body: object) => t.ask("POST", `/api/children/${ids.get("Zora Quint")}/supplies`, { body })

  it("opened before it was handed out is refused at its field", async () => {
    expect(faults(await post({ dispensed: "2025-11-05", opened: "2025-11-01" }))).toEqual([
      "opened: on or after the day it was dispensed (2025-11-05)",
    ])
  })

  it("of a lot known in another strength is refused at its lot", async () => {
    const [fault] = faults(
      await post({ dispensed: "2025-11-05", concentrationPercent: 0.01, lot: "LT-07/a" }),
    )
    expect(fault).toMatch(/^lot: a lot of one strength/)
  })
})
