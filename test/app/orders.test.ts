import { afterEach, beforeEach, describe, expect, it } from "vitest"
import type { ChildView } from "../../src/server/contract/child.js"
import { faults, problemsOf, type TestApp, testApp } from "./test-app.js"

let practice: TestApp
let child: string

beforeEach(async () => {
  practice = await testApp()
  await practice.logIn()
  child = (await practice.addChild()).child.id
})
afterEach(() => practice.close())

const order = { date: "2025-11-20", concentrationPercent: 0.05, bottles: 3, volumeMl: 5 }
const post = (path: string, body: unknown) => practice.ask("POST", `/api/children/${child}/${path}`, { body })
const consent = (more: object = {}) =>
  post("consents", { date: "2025-11-10", covers: { kind: "atropine", concentrationPercent: 0.05 }, ...more })
const entryOf = (view: ChildView) => {
  const entry = view.entries.find(({ kind, supersededBy }) => kind === "order" && supersededBy === null)
  if (!entry) throw new Error("no order in force")
  return entry
}

describe("an order", () => {
  it("is taken where a consent in force covers its strength", async () => {
    await consent()
    const answer = await post("orders", order)
    expect(answer.statusCode).toBe(201)
    expect(answer.json().course.orders).toEqual([order])
  })

  it("is blocked without a consent, and the refusal says what to do", async () => {
    const answer = await post("orders", order)
    expect(answer.statusCode).toBe(409)
    expect(problemsOf(answer)[0]).toMatchObject({
      path: "override",
      message:
        "no consent to atropine 0.05 % is recorded; record a consent to atropine 0.05 % first, or say under override why it is ordered all the same",
    })
  })

  it("is blocked where the consent names another strength, is given later or is withdrawn", async () => {
    await consent({ covers: { kind: "atropine", concentrationPercent: 0.01 } })
    expect((await post("orders", order)).statusCode).toBe(409)
    await consent({ date: "2025-11-21" })
    expect((await post("orders", order)).statusCode).toBe(409)
    await consent({ date: "2025-11-01", until: "2025-11-15" })
    expect((await post("orders", order)).statusCode).toBe(409)
  })

  it("goes out with the reason of an override, which is kept", async () => {
    const override = "consent signed on paper, to be scanned on Monday"
    const answer = await post("orders", { ...order, override })
    expect(answer.statusCode).toBe(201)
    expect(answer.json().course.orders[0].override).toBe(override)
    expect((await post("orders", { ...order, date: "2025-11-21", override: "  " })).statusCode).toBe(409)
  })

  it("tells faults of its fields before it speaks of consent", async () => {
    const answer = await post("orders", { ...order, bottles: 0 })
    expect(answer.statusCode).toBe(422)
    expect(faults(answer)).toEqual(["bottles: a whole number from 1 to 100"])
  })

  it("sent twice with one id is recorded once", async () => {
    await consent()
    const id = crypto.randomUUID()
    await post("orders", { ...order, id })
    expect((await post("orders", { ...order, id })).json().course.orders).toHaveLength(1)
  })
})

describe("an order taken further", () => {
  const amend = (entryId: string, fields: object, reason = "the pharmacy called") =>
    post(`entries/${entryId}/amendment`, { fields, reason })

  it("is confirmed, received and joined by a bottle with its lot", async () => {
    await consent()
    const ordered = entryOf((await post("orders", order)).json())
    const confirmed = await amend(ordered.id, { ...order, confirmed: "2025-11-21" })
    expect(confirmed.statusCode).toBe(201)
    const received = { ...order, confirmed: "2025-11-21", received: "2025-11-25" }
    const view = await amend(entryOf(confirmed.json()).id, received)
    expect(view.json().course.orders).toEqual([received])
    const supply = { dispensed: "2025-11-25", lot: "L-7", concentrationPercent: 0.05, volumeMl: 5 }
    expect((await post("supplies", supply)).json().course.supplies).toEqual([supply])
  })

  it("is received even when the consent was withdrawn meanwhile", async () => {
    await consent()
    const ordered = entryOf((await post("orders", order)).json())
    await consent({ date: "2025-11-15", until: "2025-11-19" })
    expect((await amend(ordered.id, { ...order, received: "2025-11-25" })).statusCode).toBe(201)
  })

  it("is cancelled with a reason that the record keeps", async () => {
    await consent()
    const ordered = entryOf((await post("orders", order)).json())
    const view = await amend(ordered.id, { ...order, cancelled: "2025-11-22" }, "strength changes")
    expect(entryOf(view.json())).toMatchObject({ reason: "strength changes" })
  })

  it("cannot become an order of a strength that nobody consented to", async () => {
    await consent()
    const ordered = entryOf((await post("orders", order)).json())
    const answer = await amend(ordered.id, { ...order, concentrationPercent: 0.1 })
    expect(answer.statusCode).toBe(409)
    expect(problemsOf(answer)[0]?.message).toMatch(/names 0.05 %, not 0.1 %/)
  })

  it("has its days in order", async () => {
    await consent()
    const ordered = entryOf((await post("orders", order)).json())
    expect(faults(await amend(ordered.id, { ...order, received: "2025-11-19" }))).toEqual([
      "fields.received: on or after date (2025-11-20)",
    ])
  })
})

describe("the paper of a pharmacy", () => {
  const syringe = { name: "syringe", smallestVolumeMl: 0.5, graduationMl: 0.05, toleranceFraction: 0.02 }
  const pharmacy = {
    id: "lantern",
    name: "Lantern Street Pharmacy",
    leadDays: 7,
    stockPercents: [1],
    smallestVolumeMl: 0.5,
    bottleMl: 5,
    isPreserved: false,
    daysAfterOpening: 30,
    devices: [syringe],
    stockTolerance: 0.02,
  }
  const record = (body: object) => practice.ask("POST", "/api/rules/pharmacy", { body: { body } })

  it("keeps what it measures with and how far its stock may be off", async () => {
    const answer = await record(pharmacy)
    expect(answer.statusCode).toBe(201)
    expect(answer.json().rules.pharmacies).toEqual([pharmacy])
  })

  it("is told every fault of a device by its place", async () => {
    const faulty = { ...syringe, largestVolumeMl: 0.2, toleranceFraction: 1 }
    expect(faults(await record({ ...pharmacy, stockTolerance: -0.1, devices: [syringe, faulty] }))).toEqual([
      "body.devices[1].toleranceFraction: a share from 0 to below 1",
      "body.devices[1].largestVolumeMl: at least the smallest volume",
      "body.stockTolerance: a share from 0 to below 1",
    ])
  })
})
