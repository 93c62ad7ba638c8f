import { afterEach, beforeEach, describe, expect, it } from "vitest"
import type { FeeSchedule } from "../../src/engine/practice-rules.js"
import { demoFees } from "../../src/engine/simulate/demo-fees.js"
import { faults, type TestApp, testApp } from "./test-app.js"

let t: TestApp
beforeEach(async () => {
  t = await testApp()
  await t.logIn()
})
afterEach(() => t.close())

const record = (body: FeeSchedule, more: object = {}) =>
  t.ask("POST", "/api/rules/fees", { body: { body, ...more } })

describe("a fee schedule", () => {
  it("is kept when its fees do not get in each other's way", async () => {
    const answer = await record(demoFees)
    expect(answer.statusCode).toBe(201)
    expect(answer.json().rules.feeSchedules).toEqual([demoFees])
  })

  it("is refused with every fault that its fields do not show one by one", async () => {
    const [baseline, , , length] = demoFees.fees
    const fees = [...demoFees.fees, { ...baseline!, title: "Once more" }, { ...length!, id: "length-2" }]
    expect(faults(await record({ ...demoFees, fees }))).toEqual([
      "body.fees[8].id: unlike every other id (fees[0] has it)",
      'body.fees[8].charged: an occasion that no other fee is for ("First examination" is charged for it already)',
      'body.fees[9].charged: an occasion that no other fee is for ("Length measurement" is charged for it already)',
    ])
    expect((await t.ask("GET", "/api/rules")).json().papers).toEqual([])
  })

  it("may be followed by a later one in the same currency, and by no other on the same day", async () => {
    await record(demoFees)
    expect((await record({ ...demoFees, title: "Later", from: "2026-01-01" })).statusCode).toBe(201)
    const { title } = demoFees
    expect(faults(await record(demoFees))).toEqual([
      `body.from: a day on which no other schedule begins ("${title}" begins then)`,
    ])
    expect(faults(await record({ ...demoFees, currency: "CHF", from: "2027-01-01" }))).toEqual([
      "body.currency: EUR, the currency of the schedule from 2023-01-01",
    ])
  })

  it("takes the place of the one it corrects, from the same day", async () => {
    const first = (await record(demoFees)).json().papers[0]
    const answer = await record(
      { ...demoFees, title: "Corrected" },
      { supersedes: first.id, reason: "a slip of the pen" },
    )
    expect(answer.json().rules.feeSchedules).toMatchObject([{ title: "Corrected" }])
  })

  it("may be sent once more after the answer was lost", async () => {
    const id = crypto.randomUUID()
    await record(demoFees, { id })
    expect((await record(demoFees, { id })).statusCode).toBe(201)
    expect((await t.ask("GET", "/api/rules")).json().papers).toHaveLength(1)
  })

  it("is in the currency in which families have paid", async () => {
    const { child } = await t.addChild()
    const payment = { date: "2025-06-01", cents: 4000, currency: "CHF" }
    await t.ask("POST", `/api/children/${child.id}/payments`, { body: payment })
    expect(faults(await record(demoFees))).toEqual([
      "body.currency: CHF, the currency in which payments are recorded",
    ])
  })
})

describe("a payment", () => {
  it("in another currency than the fees is refused at its field, and nothing is lost", async () => {
    const { child } = await t.addChild()
    await record(demoFees)
    const pay = (currency: string) =>
      t.ask("POST", `/api/children/${child.id}/payments`, {
        body: { date: "2025-06-01", cents: 4000, currency },
      })
    await pay("EUR")
    expect(faults(await pay("USD"))).toEqual(["currency: EUR, the currency of the fee schedule"])
    expect((await t.ask("GET", `/api/children/${child.id}`)).json().course.payments).toEqual([
      { date: "2025-06-01", cents: 4000, currency: "EUR" },
    ])
  })
})
