import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { type TestApp, testApp } from "./test-app.js"

let t: TestApp
beforeAll(async () => {
  t = await testApp()
  await t.logIn()
})
afterAll(() => t.close())

const inSpanish = (method: "GET" | "POST", url: string, body?: unknown) =>
  t.ask(method, url, { body, headers: { "accept-language": "es" } })

describe("a refusal for a reader of Spanish", () => {
  it("says what a field may hold, with the decimal comma, and the sentence begins with the field", async () => {
    const { child } = await t.addChild()
    const visit = { date: "2025-11-20", right: { axialLength: { mm: 2.41 } } }
    const answer = await inSpanish("POST", `/api/children/${child.id}/visits`, visit)
    expect([answer.statusCode, answer.json().title]).toEqual([422, "Hay algo que corregir"])
    expect(answer.json().problems).toEqual([
      {
        path: "right.axialLength.mm",
        value: 2.41,
        allowed: "un número de 15 a 40 mm",
        message: "right.axialLength.mm debe ser un número de 15 a 40 mm, no 2,41. ¿Quiso decir 24,1?",
      },
    ])
  })

  it("says a rule that joins two fields and names the other by what it is", async () => {
    const { child } = await t.addChild()
    const start = { kind: "atropine", concentrationPercent: 0.05, from: "2025-10-01" }
    await t.ask("POST", `/api/children/${child.id}/treatments`, { body: start })
    const answer = await inSpanish("POST", `/api/children/${child.id}/treatments`, start)
    expect(answer.json().problems[0].allowed).toBe(
      "del día en que termina atropina al 0,05 % desde el 2025-10-01 o posterior; es del mismo tipo y no tiene fin",
    )
  })

  it("is said in Spanish though the body could not be read", async () => {
    const answer = await t.app.inject({
      method: "POST",
      url: "/api/session",
      headers: { "content-type": "application/json", "accept-language": "es" },
      payload: "{ not json",
    })
    expect([answer.statusCode, answer.json().title]).toEqual([400, "No se puede leer esta solicitud"])
  })

  it("says a paper of the practice at its field", async () => {
    const answer = await inSpanish("POST", "/api/rules/contacts", { body: { country: "ireland" } })
    expect(answer.json().problems[0].allowed).toBe("un código ISO 3166-1, como IE")
  })

  it("stays English for whoever asks in English right after", async () => {
    const answer = await t.ask("POST", "/api/rules/contacts", { body: { body: { country: "ireland" } } })
    expect(answer.json().problems[0].allowed).toBe("an ISO 3166-1 code such as IE")
  })
})
