import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { addDays, addMonths } from "../../src/engine/calendar.js"
import type { CalendarDate, Course, DecisionKind } from "../../src/engine/course.js"
import { protocolFor } from "../../src/engine/protocol/choose-protocol.js"
import { duties } from "../../src/engine/protocol/duties.js"
import { api } from "../../src/server/contract/api.js"
import type { ChildView } from "../../src/server/contract/child.js"
import { type TestApp, testApp } from "./test-app.js"

/**
 * The whole course of one child, from first visit to discharge and back for another year, lived through the API with
 * the day moved forward. Each stage's duties appear and clear by themselves.
 */

let t: TestApp
let id = ""
let mm = 23.9
const FIRST = "2025-11-25"

beforeAll(async () => {
  t = await testApp()
  await t.logIn()
})
afterAll(() => t.close())

/** Moves the practice to a day; sessions end overnight, so the person logs in again. */
const goTo = async (day: CalendarDate) => {
  t.moveTo(day)
  t.pass(13 * 60 * 60 * 1000)
  await t.logIn()
}
const post = async (path: string, body: object): Promise<ChildView> => {
  const answer = await t.ask("POST", `/api/children/${id}/${path}`, { body })
  expect([answer.statusCode, answer.statusCode === 201 ? "" : answer.body]).toEqual([201, ""])
  return answer.json()
}
const course = async (): Promise<Course> => (await t.ask("GET", `/api/children/${id}`)).json().course

/** What is owed now by the protocol, as "kind: step". */
const owedOn = async (today: CalendarDate) => {
  const now = await course()
  const protocol = protocolFor({ course: now, today, rules: { protocols: [] } })
  return duties({ course: now, protocol, today })
    .filter(({ state }) => state === "open" || state === "overdue")
    .map(({ kind, step }) => `${kind}: ${step}`)
}
/** What the Today page lists, as "group: what". */
const todayLists = async () =>
  api.today.answer
    .parse((await t.ask("GET", "/api/today")).json())
    .groups.flatMap(({ group, rows }) => rows.map(({ what }) => `${group}: ${what}`))

const examine = async (date: CalendarDate, grownMm: number) => {
  mm += grownMm
  const eye = {
    axialLength: { mm: Number(mm.toFixed(2)), readings: 5, method: "optical-biometry", device: "A" },
    refraction: { sphere: -2, cycloplegic: true, method: "autorefraction" },
    pupil: { photopic: 4.2 },
    accommodation: { dioptres: 12, method: "push-up" },
    acuity: { distanceLogMAR: 0, nearLogMAR: 0.1 },
  }
  await post("visits", { date, right: eye, left: eye, symptoms: [] })
  await post("explanations", { date, to: "family" })
}
const drops = { kind: "atropine", concentrationPercent: 0.05 } as const
const decide = (date: CalendarDate, kind: DecisionKind, more: object = {}) =>
  post("decide", { date, kind, reason: "discussed with the family", ...more })
const bottles = async (from: CalendarDate, months: number) => {
  for (let month = 0; month < months; month++) {
    const opened = addDays(from, 30 * month)
    await post("supplies", {
      dispensed: opened,
      opened,
      concentrationPercent: 0.05,
      volumeMl: 5,
      beyondUse: addDays(opened, 29),
      lot: `L${opened}`,
    })
  }
}

describe("the life of one course", () => {
  it("begins with a first visit that is owed a baseline", async () => {
    const view = await t.addChild({ name: "Mira Solberg", born: "2017-03-14", ancestry: "east-asian" })
    id = view.child.id
    await post("visits", { date: FIRST, symptoms: [] })
    expect(await owedOn(FIRST)).toEqual(["examination: baseline"])
    const [visit] = (await t.ask("GET", `/api/children/${id}`))
      .json()
      .entries.filter(({ kind }: { kind: string }) => kind === "visit")
    await post(`entries/${visit.id}/withdrawal`, { reason: "entered in full instead" })
    await examine(FIRST, 0)
    expect(await owedOn(FIRST)).toEqual([])
  })

  it("goes on with a decision, after which consent and a first bottle are owed", async () => {
    await decide(FIRST, "start", { treatments: [drops], from: "2025-12-01" })
    expect(await owedOn(FIRST)).toEqual(["consent: consent to atropine 0.05 %"])
    expect(await todayLists()).toEqual(["sign: consent to atropine 0.05 %"])
  })

  it("lets no bottle be ordered before there is a consent", async () => {
    const order = { date: FIRST, concentrationPercent: 0.05, bottles: 3, volumeMl: 5 }
    const refused = await t.ask("POST", `/api/children/${id}/orders`, { body: order })
    expect(refused.statusCode).toBe(409)
    await post("consents", { date: FIRST, covers: drops, by: { relation: "mother" }, assent: "given" })
    const { entries } = await post("orders", order)
    expect(await todayLists()).toEqual(["supply: order of 3 bottles of 0.05 % not confirmed"])
    const fields = { ...order, confirmed: FIRST, received: FIRST }
    await post(`entries/${entries.at(-1)?.id}/amendment`, { fields, reason: "confirmed and received" })
    expect(await todayLists()).toEqual([])
  })

  it("owes the first bottle from the start, and a check after a month", async () => {
    await goTo("2025-12-01")
    expect(await owedOn("2025-12-01")).toEqual(["bottle: first bottle"])
    await bottles("2025-12-01", 1)
    expect(await owedOn("2025-12-01")).toEqual([])
    await goTo("2025-12-30")
    expect(await owedOn("2025-12-30")).toEqual(["bottle: next bottle", "examination: 1-month check"])
    await examine("2025-12-30", 0.01)
    expect(await owedOn("2025-12-30")).toEqual(["bottle: next bottle"])
  })

  it.each([
    [6, "6-month review"],
    [12, "12-month review"],
    [18, "18-month review"],
  ])("owes a review at %i months and clears it", async (months, step) => {
    const day = addMonths("2025-12-01", months)
    await goTo(day)
    await bottles(addDays(addMonths("2025-12-01", months - 6), 30), 6)
    expect(await owedOn(day)).toEqual([`examination: ${step}`])
    await examine(day, 0.08)
    await decide(day, "continue", { treatments: [drops] })
    expect(await owedOn(day)).toEqual([])
  })

  it("owes at 24 months a review and a decision to stop; both clear", async () => {
    const day = "2027-12-01"
    await goTo(day)
    await bottles(addDays("2027-06-01", 30), 6)
    expect(await owedOn(day)).toEqual([
      "examination: 24-month review",
      "decision: decision to stop at 24 months",
    ])
    await examine(day, 0.08)
    expect(await owedOn(day)).toEqual(["decision: decision to stop at 24 months"])
    await decide(day, "stop")
    expect(await owedOn(day)).toEqual([])
    expect((await course()).treatments).toEqual([{ ...drops, from: "2025-12-01", to: day }])
  })

  it("looks for rebound 6 months after the stop, and asks whether to take treatment up again", async () => {
    const day = "2028-06-01"
    await goTo(day)
    expect(await owedOn(day)).toEqual([
      "examination: check 6 months after the stop",
      "decision: decision on 12 more months",
    ])
    await examine(day, 0.35)
    expect(await owedOn(day)).toEqual(["decision: decision on 12 more months"])
    await decide(day, "restart", { treatments: [drops], from: "2028-06-05" })
    expect(await owedOn(day)).not.toContain("decision: decision on 12 more months")
  })

  it("owes the second course its own check, reviews and stop", async () => {
    await goTo("2028-07-05")
    await bottles("2028-06-05", 1)
    expect(await owedOn("2028-07-05")).toContain("examination: 1-month check")
    await examine("2028-07-05", 0.02)
    await goTo("2028-12-05")
    await bottles("2028-07-05", 6)
    expect(await owedOn("2028-12-05")).toContain("examination: 6-month review")
    await examine("2028-12-05", 0.07)
    await goTo("2029-06-05")
    await bottles("2029-01-01", 6)
    expect(await owedOn("2029-06-05")).toEqual([
      "examination: 12-month review",
      "decision: decision to stop after 12 more months",
    ])
    await examine("2029-06-05", 0.06)
    await decide("2029-06-05", "stop")
    expect(await owedOn("2029-06-05")).toEqual([])
  })

  it("ends with a discharge, after which nothing is owed", async () => {
    await goTo("2029-12-05")
    expect(await owedOn("2029-12-05")).toContain("examination: check 6 months after the stop")
    await examine("2029-12-05", 0.03)
    await decide("2029-12-05", "discharge")
    expect(await owedOn("2029-12-05")).toEqual([])
    await goTo("2030-12-05")
    expect(await owedOn("2030-12-05")).toEqual([])
    expect(await todayLists()).toEqual([])
  })

  it("opens again when the child comes back for another year", async () => {
    await examine("2030-12-05", 0.3)
    await decide("2030-12-05", "restart", { treatments: [drops], from: "2030-12-10" })
    await goTo("2031-01-10")
    expect(await owedOn("2031-01-10")).toContain("examination: 1-month check")
    // The bottles of years ago are over, so a new one is owed at once.
    expect(await owedOn("2031-01-10")).toContain("bottle: next bottle")
  })

  it("keeps a whole chain of everything that was recorded", async () => {
    const report = await t.record.verifyChain()
    expect(report).toMatchObject({ whole: true })
  })
})
