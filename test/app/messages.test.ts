import { afterEach, beforeEach, describe, expect, it } from "vitest"
import { api } from "../../src/server/contract/api.js"
import type { MessageAnswer, MessagesAnswer } from "../../src/server/contract/messages.js"
import { type MailServer, mailServer } from "./mail-server.js"
import { CONTACT, RULES } from "./message-settings.js"
import { type TestApp, testApp } from "./test-app.js"

const HOUR = 3_600_000
// The clock of these tests stands at 09:00 UTC on 25 November 2025.
const TO_NIGHT = 13 * HOUR

let server: MailServer
let t: TestApp
beforeEach(async () => {
  server = await mailServer()
  t = await testApp({ mail: { smtp: server.address } })
  await t.logIn()
})
afterEach(async () => {
  await t.close()
  await server.close()
})

const post = async (url: string, body?: unknown, status = 201) => {
  const answer = await t.ask("POST", url, body === undefined ? {} : { body })
  if (answer.statusCode !== status) throw new Error(`${url} answered ${answer.statusCode}: ${answer.body}`)
  return answer.json()
}
const turnOn = (changes: object = {}) => post("/api/rules/messages", { body: { ...RULES, ...changes } })
/** A child on drops whose last bottle is good until 30 November 2025, five days on. */
const withBottleEnding = async (contact: object | null = CONTACT, name = "Mira Solberg") => {
  const { child } = await t.addChild({ name })
  await post(`/api/children/${child.id}/visits`, {
    date: "2025-06-02",
    right: { axialLength: { mm: 24.1 } },
    left: { axialLength: { mm: 24.2 } },
  })
  await post(`/api/children/${child.id}/treatments`, {
    from: "2025-06-02",
    kind: "atropine",
    concentrationPercent: 0.05,
  })
  await post(`/api/children/${child.id}/supplies`, {
    dispensed: "2025-11-01",
    opened: "2025-11-01",
    concentrationPercent: 0.05,
    beyondUse: "2025-11-30",
  })
  if (contact) await post(`/api/children/${child.id}/family`, { contact })
  return child.id
}
const look = () => post("/api/messages/look")
const list = async (query = ""): Promise<MessagesAnswer> =>
  api.messages.answer.parse((await t.ask("GET", `/api/messages${query}`)).json())
const only = async (kind = "bottle") => {
  const found = (await list()).messages.find((message) => message.kind === kind)
  if (!found) throw new Error(`no message of the kind ${kind}`)
  return found
}
const bottles = () => server.taken.filter((text) => text.includes("Something to arrange"))

describe("messages to families", () => {
  it("are not sent until the practice turns them on", async () => {
    await withBottleEnding()
    expect(await look()).toMatchObject({ added: 0, sent: 0, held: "off" })
    expect(server.taken).toEqual([])
  })

  it("reach a family that agreed, once, however often one looks", async () => {
    await turnOn()
    await withBottleEnding()
    await look()
    await look()
    expect(bottles()).toHaveLength(1)
    expect(await look()).toMatchObject({ added: 0, sent: 0 })
    expect((await only()).state).toBe("sent")
  })

  it("say who writes and how they are stopped, and nothing of the child's eyes", async () => {
    await turnOn()
    await withBottleEnding()
    await look()
    const [mail = ""] = bottles()
    expect(mail).toMatch(/^From: Quiet Harbour <desk@harbour\.example>/m)
    expect(mail).toMatch(/^Reply-To: answers@harbour\.example/m)
    expect(mail).toMatch(/^To: Ines Solberg <ines@family\.example>/m)
    expect(mail).toMatch(/^Auto-Submitted: auto-generated/m)
    expect(mail).toContain("30 November 2025")
    const words = mail.replace(/=\r\n/g, "").replace(/\r\n/g, " ")
    expect(words).toContain("To stop them, answer this message")
    expect(words).not.toMatch(/atropine|myopia|24\.1|0\.05|glasses|diagnos/i)
    expect(/^Subject: .*$/m.exec(mail)?.[0]).not.toMatch(/Mira|Solberg/)
  })

  it.each([
    ["has no contact", null],
    ["agreed to visits only", { ...CONTACT, agreed: { on: "2025-01-10", to: ["visits"] } }],
    ["agreed to nothing", { ...CONTACT, agreed: undefined }],
    ["took it back", { ...CONTACT, agreed: { ...CONTACT.agreed, until: "2025-11-25" } }],
    ["wants none", { ...CONTACT, reachedBy: "none", agreed: undefined }],
  ])("do not go to a family that %s", async (_, contact) => {
    await turnOn()
    await withBottleEnding(contact)
    await look()
    expect(bottles()).toEqual([])
  })

  it("speak the family's language", async () => {
    await turnOn()
    await withBottleEnding({ ...CONTACT, language: "zh-Hans" })
    await look()
    const { id } = await only()
    const { text, subject }: MessageAnswer = (await t.ask("GET", `/api/messages/${id}`)).json()
    expect(text).toMatch(/Mira/)
    expect(`${subject}${text}`).toMatch(/\p{Script=Han}/u)
    expect(text).not.toMatch(/Please|records/)
  })

  it("wait through the quiet hours of the practice's time zone", async () => {
    await turnOn()
    await withBottleEnding()
    t.pass(TO_NIGHT)
    // The session has run out by then.
    await t.logIn()
    expect(await look()).toMatchObject({ sent: 0, held: "quiet" })
    t.pass(11 * HOUR)
    await t.logIn()
    expect((await look()).sent).toBeGreaterThan(0)
  })

  it("are called off when what they are about is done before they leave", async () => {
    await turnOn()
    const child = await withBottleEnding()
    t.pass(TO_NIGHT)
    await t.logIn()
    await look()
    expect((await only()).state).toBe("waiting")
    await post(`/api/children/${child}/supplies`, {
      dispensed: "2025-11-25",
      concentrationPercent: 0.05,
      beyondUse: "2026-03-01",
    })
    await look()
    expect(await only()).toMatchObject({ state: "cancelled", problem: "no-longer-due", changedBy: null })
  })

  it("are none after a discharge", async () => {
    await turnOn()
    const child = await withBottleEnding(null)
    await post(`/api/children/${child}/decisions`, {
      date: "2025-11-20",
      kind: "discharge",
      reason: "moved away",
    })
    await post(`/api/children/${child}/family`, { contact: CONTACT })
    expect(await look()).toMatchObject({ added: 0 })
    expect((await t.ask("GET", "/api/messages/plan")).json().messages).toEqual([])
  })

  it("are planned for the coming days from the same duties as the list of today", async () => {
    await turnOn({ daysBefore: 5 })
    await withBottleEnding()
    const plan = api.messagePlan.answer.parse((await t.ask("GET", "/api/messages/plan")).json())
    expect(plan.until).toBe("2025-12-09")
    for (const { on } of plan.messages) expect(on > plan.today && on <= plan.until).toBe(true)
  })
})

describe("a mail server that does not take a message", () => {
  it("gets it again later, and then it is sent once", async () => {
    await turnOn()
    await withBottleEnding()
    server.next("put-off-recipient", "put-off-recipient", "put-off-recipient")
    await look()
    expect(await only()).toMatchObject({ state: "waiting", problem: "put-off", reply: "451 come back later" })
    expect(bottles()).toEqual([])
    expect((await look()).sent).toBe(0)
    t.pass(60_000)
    server.next("accept")
    await look()
    expect((await list()).counts.waiting).toBeLessThanOrEqual(1)
    t.pass(2 * HOUR)
    await t.logIn()
    await look()
    expect(bottles()).toHaveLength(1)
    expect((await only()).state).toBe("sent")
  })

  it("puts a message off after it was read, and gets it with the same Message-ID", async () => {
    await turnOn()
    await withBottleEnding({ ...CONTACT, agreed: { on: "2025-01-10", to: ["bottles"] } })
    server.next("put-off-message")
    await look()
    expect((await only()).state).toBe("waiting")
    t.pass(60_000)
    await look()
    const ids = server.arrived.map((text) => /^Message-ID: (.*)$/m.exec(text)?.[1]?.trim())
    expect(ids).toHaveLength(2)
    expect(ids[0]).toBe(ids[1])
    expect(ids[0]).toMatch(/^<[0-9a-f]{32}@harbour\.example>$/)
  })

  it("refuses it for good: then it has failed, with the server's words, until a person tries again", async () => {
    await turnOn()
    await withBottleEnding({ ...CONTACT, agreed: { on: "2025-01-10", to: ["bottles"] } })
    server.next("refuse-recipient")
    await look()
    const { id, state, reply } = await only()
    expect([state, reply]).toEqual(["failed", "550 no such mailbox"])
    t.pass(HOUR / 3)
    await look()
    expect((await only()).state).toBe("failed")
    await post(`/api/messages/${id}/retry`)
    await look()
    expect(await only()).toMatchObject({ state: "sent", attempts: 1 })
  })

  it("refuses the practice as sender: then everything waits and the practice is told", async () => {
    await turnOn()
    await withBottleEnding()
    server.next("refuse-sender")
    expect(await look()).toMatchObject({ sent: 0, held: "server-down" })
    const { health, counts } = await list()
    expect(health.failure).toMatchObject({ problem: "sender-refused", reply: "553 sender not allowed" })
    expect(counts.failed).toBe(0)
  })

  it("drops the connection before the message: nothing was given to it, and it is sent later", async () => {
    await turnOn()
    await withBottleEnding({ ...CONTACT, agreed: { on: "2025-01-10", to: ["bottles"] } })
    server.next("drop-before-message")
    expect(await look()).toMatchObject({ sent: 0, held: "server-down" })
    expect((await only()).state).toBe("waiting")
    await look()
    expect(bottles()).toHaveLength(1)
  })

  it.each([
    ["sent", "sent", 1],
    ["not-sent", "sent", 2],
  ])(
    "drops it after the message: nobody knows, until a person says it was %s",
    async (was, state, arrived) => {
      await turnOn()
      await withBottleEnding({ ...CONTACT, agreed: { on: "2025-01-10", to: ["bottles"] } })
      server.next("drop-after-message")
      await look()
      const { id } = await only()
      expect(await only()).toMatchObject({ state: "unknown", problem: "interrupted" })
      t.pass(HOUR / 3)
      await look()
      expect(server.arrived).toHaveLength(1)
      await post(`/api/messages/${id}/resolution`, { was })
      await look()
      expect((await only()).state).toBe(state)
      expect(server.arrived).toHaveLength(arrived)
      const { events }: MessageAnswer = (await t.ask("GET", `/api/messages/${id}`)).json()
      expect(events.some(({ by }) => by === "Ada Lindqvist")).toBe(true)
    },
  )

  it("is not there: nothing is lost, and everything goes once it is back", async () => {
    await turnOn()
    await withBottleEnding({ ...CONTACT, agreed: { on: "2025-01-10", to: ["bottles"] } })
    const { port } = server.address
    await server.close()
    expect(await look()).toMatchObject({ added: 1, sent: 0, held: "server-down" })
    expect((await list()).health.failure?.problem).toBe("unreachable")
    expect(await only()).toMatchObject({ state: "waiting", attempts: 0 })
    server = await mailServer({ port })
    await look()
    expect(bottles()).toHaveLength(1)
    expect((await list()).health.failure).toBeNull()
  })
})

describe("a person", () => {
  it("calls a message off, and it stays so", async () => {
    await turnOn()
    await withBottleEnding()
    t.pass(TO_NIGHT)
    await t.logIn()
    await look()
    const { id } = await only()
    expect(await post(`/api/messages/${id}/cancel`)).toMatchObject({
      state: "cancelled",
      changedBy: "Ada Lindqvist",
    })
    t.pass(11 * HOUR)
    await t.logIn()
    await look()
    expect(bottles()).toEqual([])
    const answer = await t.ask("POST", `/api/messages/${id}/cancel`)
    expect(answer.statusCode).toBe(409)
  })

  it("finds a message by child, family and state", async () => {
    await turnOn()
    await withBottleEnding()
    await look()
    expect((await list("?search=mira&state=sent")).total).toBeGreaterThan(0)
    expect((await list("?search=nobody")).total).toBe(0)
    expect((await list("?state=failed")).total).toBe(0)
  })

  it("sends a test to see whether the mail server takes it", async () => {
    expect(
      (await t.ask("POST", "/api/messages/test", { body: { to: "ada@harbour.example" } })).statusCode,
    ).toBe(409)
    await turnOn({ isOn: false })
    expect(await post("/api/messages/test", { to: "ada@harbour.example" })).toMatchObject({
      outcome: "accepted",
    })
    expect(server.taken[0]).toContain("Test of the mail server")
  })

  it("hands SMS over as a list in which nothing runs, and takes it back", async () => {
    await turnOn()
    await withBottleEnding({ ...CONTACT, name: "=cmd|' /C calc'!A0", reachedBy: "sms" })
    expect((await look()).sent).toBe(0)
    expect((await list()).toHandOver.sms).toBeGreaterThan(0)
    const { list: handed, count } = await post("/api/messages/lists", { channel: "sms" })
    expect(count).toBeGreaterThan(0)
    const csv = await t.ask("GET", `/api/messages/lists/${handed}`)
    expect(csv.headers["content-type"]).toBe("text/csv; charset=utf-8")
    expect(csv.body).toContain(`"'=cmd|' /C calc'!A0","35315550199"`)
    expect((await list()).toHandOver.sms).toBe(0)
    expect(await post("/api/messages/lists", { channel: "sms" })).toEqual({ list: null, count: 0 })
    expect(await post(`/api/messages/lists/${handed}/return`)).toEqual({ count })
    expect((await list()).toHandOver.sms).toBe(count)
  })

  it("hands letters over with their address and heading", async () => {
    await turnOn()
    await withBottleEnding({ ...CONTACT, reachedBy: "post" })
    const { list: handed } = await post("/api/messages/lists", { channel: "post" })
    const csv = (await t.ask("GET", `/api/messages/lists/${handed}`)).body
    expect(csv).toContain('"1 Harbour Lane\nSmalltown"')
    expect(csv).toContain('"Something to arrange with us soon"')
  })
})
