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
const decide = (body: object) => post("decide", { date: "2025-07-10", reason: "talked over", ...body })
const stored = async () => (await t.ask("GET", childUrl)).json().entries.length
const drops = { kind: "atropine", concentrationPercent: 0.05 }
const stronger = { kind: "atropine", concentrationPercent: 0.1 }
const lenses = { kind: "orthokeratology" }
const running = async (...treatments: object[]) => {
  const ids: string[] = []
  for (const treatment of treatments) {
    const { entries } = (await post("treatments", { from: "2025-01-10", ...treatment })).json()
    ids.push(entries.at(-1).id)
  }
  return ids
}
const courseAfter = async (body: object) => {
  const answer = await decide(body)
  expect(answer.statusCode, answer.body).toBe(201)
  return api.decide.answer.parse(answer.json()).course
}

describe("a decision and the treatments it implies", () => {
  it("start: the treatment begins on the day, with the options and figures as they were shown", async () => {
    const offered = ["no treatment", "atropine 0.05 %"]
    const figures = [{ label: "Growth withheld in the next year", value: "0.17 mm (0.04 to 0.34)" }]
    const course = await courseAfter({ kind: "start", treatments: [drops], offered, figures })
    expect(course.treatments).toEqual([{ from: "2025-07-10", ...drops }])
    expect(course.decisions).toEqual([
      { date: "2025-07-10", kind: "start", reason: "talked over", treatment: drops, offered, figures },
    ])
  })

  it("start of two that were studied together", async () => {
    const weak = { kind: "atropine", concentrationPercent: 0.01 }
    const { treatments } = await courseAfter({ kind: "start", treatments: [weak, lenses] })
    expect(treatments).toEqual([
      { from: "2025-07-10", ...weak },
      { from: "2025-07-10", ...lenses },
    ])
  })

  it.each([
    ["change-strength", stronger],
    ["switch", lenses],
  ])("%s: the one ends, the other begins", async (kind, next) => {
    await running(drops)
    const { treatments } = await courseAfter({ kind, treatments: [next] })
    expect(treatments).toEqual([
      { from: "2025-01-10", to: "2025-07-10", ...drops },
      { from: "2025-07-10", ...next },
    ])
  })

  it("add: the old one goes on", async () => {
    await running(drops)
    const { treatments } = await courseAfter({ kind: "add", treatments: [lenses] })
    expect(treatments).toEqual([
      { from: "2025-01-10", ...drops },
      { from: "2025-07-10", ...lenses },
    ])
  })

  it("stop: it ends", async () => {
    await running(drops)
    const { treatments, decisions } = await courseAfter({ kind: "stop" })
    expect(treatments).toEqual([{ from: "2025-01-10", to: "2025-07-10", ...drops }])
    expect(decisions?.[0]?.treatment).toEqual(drops)
  })

  it("taper: the same strength on fewer nights, in the eye it is given in", async () => {
    await running({ ...drops, eye: "right" })
    const { treatments } = await courseAfter({ kind: "taper", nightsPerWeek: 3 })
    expect(treatments).toEqual([
      { from: "2025-01-10", to: "2025-07-10", ...drops, eye: "right" },
      { from: "2025-07-10", ...drops, eye: "right", nightsPerWeek: 3 },
    ])
  })

  it("restart: what had ended begins again", async () => {
    await running({ ...drops, to: "2025-03-01" })
    const { treatments } = await courseAfter({ kind: "restart", treatments: [drops] })
    expect(treatments?.at(-1)).toEqual({ from: "2025-07-10", ...drops })
  })

  it("discharge: everything in use ends", async () => {
    await running(drops, lenses)
    const { treatments } = await courseAfter({ kind: "discharge" })
    expect(treatments?.map(({ to }) => to)).toEqual(["2025-07-10", "2025-07-10"])
  })

  it.each(["continue", "refer", "decline"])("%s: the treatments stay as they are", async (kind) => {
    await running(drops)
    const { treatments, decisions } = await courseAfter({ kind })
    expect(treatments).toEqual([{ from: "2025-01-10", ...drops }])
    expect(decisions).toHaveLength(1)
  })

  it("may take effect on a later day than it is made", async () => {
    const { treatments, decisions } = await courseAfter({
      kind: "start",
      treatments: [drops],
      from: "2025-08-01",
    })
    expect(treatments?.[0]?.from).toBe("2025-08-01")
    expect(decisions?.[0]?.date).toBe("2025-07-10")
  })

  it("keeps why in the entry that ends the treatment", async () => {
    const [id] = await running(drops)
    const { entries } = (await decide({ kind: "stop" })).json()
    expect(entries.at(-1)).toMatchObject({ supersedes: id, reason: "decided on 2025-07-10: talked over" })
  })
})

describe("a decision that does not fit", () => {
  it.each([
    [
      { kind: "start", treatments: [stronger] },
      ["kind: add, switch or change of strength, since atropine 0.05 % is in use"],
    ],
    [
      { kind: "start" },
      [
        "treatments: what is to be given from then on",
        "kind: add, switch or change of strength, since atropine 0.05 % is in use",
      ],
    ],
    [{ kind: "taper" }, ["nightsPerWeek: a whole number from 1 to 6 nights of the week"]],
    [{ kind: "change-strength", treatments: [lenses] }, ["treatments: drops; anything else is a switch"]],
    [{ kind: "switch", treatments: [drops] }, ["treatments[0]: another than the atropine 0.05 % in use"]],
    [{ kind: "stop", reason: " " }, ["reason: why, in words"]],
    [{ kind: "stop", date: "2025-12-24" }, ["date: a day up to 2025-11-25"]],
    [{ kind: "stop", date: "2025-01-10" }, ["from: after the day it starts (2025-01-10)"]],
    [
      { kind: "stop", date: "2024-01-10" },
      ["kind: a decision that fits: a treatment in use would be needed"],
    ],
    [
      { kind: "ponder" },
      [
        "kind: one of start, continue, change-strength, add, switch, stop, taper, restart, refer, discharge, decline",
      ],
    ],
    [
      { kind: "change-strength", treatments: [{ kind: "atropine" }], reason: "" },
      [
        "treatments[0].concentrationPercent: a number above 0 and up to 1.5 % w/v, since the treatment is atropine",
        "reason: why, in words",
      ],
    ],
    [
      { kind: "add", treatments: [stronger] },
      [
        "from: on or after the end of atropine 0.05 % from 2025-01-10, which is of the same kind and has no end",
      ],
    ],
  ])("is refused as %j with every fault, and nothing of it is kept", async (body, expected) => {
    await running(drops)
    const before = await stored()
    const answer = await decide(body)
    expect(answer.statusCode).toBe(422)
    expect(faults(answer).toSorted()).toEqual(expected.toSorted())
    expect(await stored()).toBe(before)
  })

  it("asks which one is meant where several are in use", async () => {
    const [, second] = await running(drops, lenses)
    expect(faults(await decide({ kind: "stop" }))).toEqual([
      "ends: at least one of what is in use: atropine 0.05 %, orthokeratology",
    ])
    const { treatments } = await courseAfter({ kind: "stop", ends: [second] })
    expect(treatments?.map(({ to }) => to ?? null)).toEqual([null, "2025-07-10"])
  })

  it("sent ten times with one id is one decision", async () => {
    await running(drops)
    const before = await stored()
    const body = { kind: "switch", treatments: [lenses], id: crypto.randomUUID() }
    const answers = await Promise.all(Array.from({ length: 10 }, () => decide(body)))
    expect(answers.map(({ statusCode }) => statusCode)).toEqual(Array(10).fill(201))
    expect(await stored()).toBe(before + 3)
  })

  it("another decision under the same id is refused", async () => {
    const id = crypto.randomUUID()
    await decide({ kind: "decline", id })
    const answer = await decide({ kind: "refer", id })
    expect(answer.statusCode).toBe(409)
    expect(problemsOf(answer)[0]?.path).toBe("id")
  })

  it.each([[[]], [null], ["text"], [{}]])("is refused as %j", async (body) => {
    expect([400, 415, 422]).toContain((await post("decide", body)).statusCode)
  })
})
