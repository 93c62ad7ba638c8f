import { afterAll, beforeAll, describe, expect, it } from "vitest"
import type { ChildView } from "../../src/server/contract/child.js"
import { CONTACT, RULES } from "./message-settings.js"
import { faults, type TestApp, testApp } from "./test-app.js"

let t: TestApp
beforeAll(async () => {
  t = await testApp()
  await t.logIn()
})
afterAll(() => t.close())

const post = async (url: string, body: unknown): Promise<ChildView> => {
  const answer = await t.ask("POST", url, { body })
  if (answer.statusCode !== 201) throw new Error(`${url} answered ${answer.statusCode}: ${answer.body}`)
  return answer.json()
}

describe("the contact of a family", () => {
  it("is put right by a new entry, and stands in the record but not in the course", async () => {
    const { child } = await t.addChild()
    const first: ChildView = await post(`/api/children/${child.id}/family`, { contact: CONTACT })
    const entry = first.entries.find(({ kind }) => kind === "family")
    const second: ChildView = await post(`/api/children/${child.id}/family`, {
      contact: { ...CONTACT, telephone: "+353 1 555 0111" },
      supersedes: entry?.id,
      reason: "new number",
    })
    expect(second.entries.filter(({ kind }) => kind === "family")).toHaveLength(2)
    expect(JSON.stringify(second.course)).not.toMatch(/Ines|555/)
  })

  it("is not overwritten by somebody who saw an older one", async () => {
    const { child } = await t.addChild()
    await post(`/api/children/${child.id}/family`, { contact: CONTACT })
    const again = await t.ask("POST", `/api/children/${child.id}/family`, { body: { contact: CONTACT } })
    expect(again.statusCode).toBe(409)
  })

  it("is recorded once when the same request comes twice", async () => {
    const { child } = await t.addChild()
    const body = { contact: CONTACT, id: crypto.randomUUID() }
    await post(`/api/children/${child.id}/family`, body)
    const view: ChildView = await post(`/api/children/${child.id}/family`, body)
    expect(view.entries.filter(({ kind }) => kind === "family")).toHaveLength(1)
  })

  it.each([
    [{ email: undefined }, "contact.email: an e-mail address, since the family is reached by e-mail"],
    [{ email: "nowhere" }, "contact.email: an e-mail address"],
    [{ name: "Ines\r\nBcc: all@example.org" }, "contact.name: one line without control characters"],
    [{ reachedBy: "none" }, "contact.reachedBy: a way of reaching the family, since it agreed to messages"],
    [{ agreed: { on: "2025-11-26", to: ["visits"] } }, "contact.agreed.on: a day up to today, 2025-11-25"],
    [{ agreed: { on: "2025-11-20", to: [] } }, "contact.agreed.to: at least one kind of message"],
    [
      { agreed: { on: "2025-11-20", to: ["visits"], until: "2025-11-19" } },
      "contact.agreed.until: a day not before the agreement",
    ],
  ])("is refused with what is wrong: %j", async (changes, fault) => {
    const { child } = await t.addChild()
    const body = { contact: { ...CONTACT, ...changes } }
    const answer = await t.ask("POST", `/api/children/${child.id}/family`, { body })
    expect(answer.statusCode).toBe(422)
    expect(faults(answer)).toContain(fault)
  })
})

describe("the settings of messages", () => {
  it.each([
    [{ timeZone: "Dublin" }, "body.timeZone: a time zone of the IANA list such as Europe/Dublin"],
    [{ quietFrom: "9pm" }, "body.quietFrom: a time of day written HH:MM"],
    [{ sender: "Harbour\nBcc: x@example.org" }, "body.sender: one line without control characters"],
    [{ from: "desk" }, "body.from: an e-mail address"],
    [{ daysBefore: 0 }, "body.daysBefore: a whole number from 1 to 60"],
  ])("are refused with what is wrong: %j", async (changes, fault) => {
    const answer = await t.ask("POST", "/api/rules/messages", { body: { body: { ...RULES, ...changes } } })
    expect(answer.statusCode).toBe(422)
    expect(faults(answer)).toEqual([fault])
  })
})
