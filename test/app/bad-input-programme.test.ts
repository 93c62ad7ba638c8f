import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { api } from "../../src/server/contract/api.js"
import { faults, type TestApp, testApp } from "./test-app.js"

/** Bad input of the programme sent to the server: refused at its field, and nothing of it is kept. */

let t: TestApp
let id: string
beforeAll(async () => {
  t = await testApp()
  await t.logIn()
  id = (await t.addChild()).child.id
  for (const [path, body] of [
    ["treatments", drops],
    ["supplies", { dispensed: "2025-01-10", opened: "2025-01-12", concentrationPercent: 0.05, lot: "LT-7" }],
  ] as const) {
    const answer = await t.ask("POST", `/api/children/${id}/${path}`, { body })
    if (answer.statusCode !== 201) throw new Error(answer.body)
  }
})
afterAll(() => t.close())

const day = "2025-01-10"
const drops = { from: day, kind: "atropine", concentrationPercent: 0.05 }
const order = { date: day, concentrationPercent: 0.05, bottles: 3, volumeMl: 5, override: "no time" }
const kept = async () => api.child.answer.parse((await t.ask("GET", `/api/children/${id}`)).json()).entries

const cases: readonly (readonly [what: string, path: string, body: object, fault: RegExp])[] = [
  ["drops that overlap", "treatments", { ...drops, from: "2025-03-01" }, /^from: on or after the end of/],
  [
    "a bottle opened before it was dispensed",
    "supplies",
    { dispensed: day, opened: "2025-01-09" },
    /^opened: on or after the day it was dispensed \(2025-01-10\)/,
  ],
  [
    "a lot used for two strengths",
    "supplies",
    { dispensed: day, concentrationPercent: 0.01, lot: "lt-7" },
    /^lot: .*0\.05 %/,
  ],
  [
    "a question answered twice",
    "visits",
    { date: day, answers: ["yes", "no"].map((answer) => ({ question: "asthma", answer })) },
    /^answers\[1\]\.question: a question that this visit has not answered yet/,
  ],
  [
    "more nights missed than there were",
    "missed-nights",
    { from: day, to: day, nights: 2 },
    /^nights: at most 1, the nights from/,
  ],
  ["a concern about nothing", "concerns", { opened: day, kind: "light", what: " " }, /^what: /],
  [
    "a concern closed without an outcome",
    "concerns",
    { opened: day, kind: "light", what: "squints", closed: "2025-02-01" },
    /^outcome: how it ended/,
  ],
  [
    "an order received and cancelled",
    "orders",
    { ...order, received: "2025-01-20", cancelled: "2025-01-21" },
    /^cancelled: absent, since the bottles came on 2025-01-20/,
  ],
  [
    "an order before birth",
    "orders",
    { ...order, date: "2001-01-01" },
    /^date: on or after the day of birth/,
  ],
  [
    "a payment of tomorrow",
    "payments",
    { date: "2025-11-26", cents: 1, currency: "EUR" },
    /^date: a day up to/,
  ],
]

describe("is refused at its field, and nothing of it is kept:", () => {
  it.each(cases)("%s", async (_what, path, body, fault) => {
    const before = await kept()
    const answer = await t.ask("POST", `/api/children/${id}/${path}`, { body })
    expect(answer.statusCode).toBeGreaterThanOrEqual(400)
    expect(answer.statusCode).toBeLessThan(500)
    expect(faults(answer)).toEqual([expect.stringMatching(fault)])
    expect(await kept()).toEqual(before)
  })
})
