import fastify from "fastify"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import type { Scope } from "../../src/engine/access/scopes.js"
import { guard, isApi } from "../../src/server/guard.js"
import { answerFailure } from "../../src/server/refusal.js"
import { TOKEN_REQUESTS_PER_MINUTE, WRONG_TOKENS_PER_MINUTE } from "../../src/server/tokens/token-check.js"
import { problemsOf, type TestApp, testApp } from "./test-app.js"

const DAY_MS = 86_400_000
const NOW_MS = Date.parse("2025-11-25T09:00:00Z")

let t: TestApp
let ada = ""
beforeAll(async () => {
  t = await testApp()
  await t.logIn()
  ada = (await t.ask("GET", "/api/session")).json().person.id
})
afterAll(() => t.close())

const tokenFor = async (scopes: readonly Scope[], days = 1) => {
  const made = await t.record.tokens.add({
    name: "a program",
    scopes,
    createdBy: ada,
    nowMs: NOW_MS,
    expiresMs: NOW_MS + days * DAY_MS,
  })
  return { ...made.token, secret: made.secret }
}

/** Asks with a token and no cookie. */
const asked = (secret: string, method: "GET" | "POST" | "DELETE", url: string, body?: object) =>
  t.app.inject({
    method,
    url,
    headers: { authorization: `Bearer ${secret}` },
    ...(body ? { payload: body } : {}),
  })

describe("a token", () => {
  it("is 256 random bits behind a prefix, of which only the hash is kept", async () => {
    const { secret, ending } = await tokenFor(["read"])
    expect(secret).toMatch(/^lw_[A-Za-z0-9_-]{43}$/)
    expect(secret.endsWith(ending)).toBe(true)
    expect(JSON.stringify(await t.record.tokens.list())).not.toContain(secret.slice(3, -4))
  })

  it("opens what its scope says", async () => {
    const { secret } = await tokenFor(["read"])
    expect((await asked(secret, "GET", "/api/children")).statusCode).toBe(200)
    expect((await asked(secret, "GET", "/api/today")).statusCode).toBe(200)
  })

  it("without the scope is refused, and the answer says which is missing", async () => {
    const { secret } = await tokenFor(["read", "export"])
    const answer = await asked(secret, "POST", "/api/children", {
      name: "Mira",
      born: "2017-03-14",
      sex: "female",
    })
    expect(answer.statusCode).toBe(403)
    expect(answer.headers["www-authenticate"]).toBe(
      'Bearer realm="lengthwise", error="insufficient_scope", scope="write"',
    )
    expect(problemsOf(answer)).toEqual([
      {
        path: "",
        value: "read export",
        allowed: "write",
        message: "this token was made without the scope write",
      },
    ])
  })

  it("records as the person who made it, from anywhere", async () => {
    const { secret } = await tokenFor(["read", "write"])
    const headers = { authorization: `Bearer ${secret}`, origin: "https://elsewhere.example" }
    const payload = { name: "Mira Solberg", born: "2017-03-14", sex: "female" }
    const added = await t.app.inject({ method: "POST", url: "/api/children", headers, payload })
    expect(added.statusCode).toBe(201)
    expect(added.json().entries[0].author).toBe("Ada Lindqvist")
  })

  it.each(["/api/session", "/api/tokens", "/api/webhooks", "/api/messages"])(
    "never opens what is for people only: %s",
    async (url) => {
      const { secret } = await tokenFor(["read", "write", "fhir", "export", "files"])
      const answer = await asked(secret, "GET", url)
      expect(answer.statusCode).toBe(403)
      expect(answer.headers["www-authenticate"]).toBe('Bearer realm="lengthwise", error="insufficient_scope"')
      expect(problemsOf(answer)[0]?.allowed).toBe("a person who is logged in")
    },
  )

  it("stops at once when it is revoked", async () => {
    const { id, secret } = await tokenFor(["read"])
    expect(await t.record.tokens.revoke({ id, by: ada, nowMs: NOW_MS })).toBe(true)
    expect((await asked(secret, "GET", "/api/today")).statusCode).toBe(401)
    expect(await t.record.tokens.revoke({ id, by: ada, nowMs: NOW_MS })).toBe(false)
  })

  it("stops when its person can log in no more", async () => {
    const person = { id: crypto.randomUUID(), name: "Cy", logIn: "cy", role: "clinician" } as const
    await t.record.addPerson({ ...person, passwordHash: null, createdAt: "2025-11-25T09:00:00Z" })
    const { secret } = await t.record.tokens.add({
      name: "left behind",
      scopes: ["read"],
      createdBy: person.id,
      nowMs: NOW_MS,
      expiresMs: NOW_MS + DAY_MS,
    })
    expect((await asked(secret, "GET", "/api/today")).statusCode).toBe(401)
  })

  it("says to the hour when it was last used", async () => {
    const { id, secret } = await tokenFor(["read"])
    await asked(secret, "GET", "/api/today")
    const found = (await t.record.tokens.list()).find((token) => token.id === id)
    expect(found?.lastUsedAt).toBe("2025-11-25T09:00:00.000Z")
  })

  it.each([
    ["unknown", `lw_${"A".repeat(43)}`],
    ["an injection", "lw_'OR'1'='1"],
    ["only the prefix", "lw_"],
  ])("that is %s opens nothing", async (_, secret) => {
    const answer = await asked(secret, "GET", "/api/today")
    expect(answer.statusCode).toBe(401)
    expect(answer.headers["www-authenticate"]).toBe('Bearer realm="lengthwise", error="invalid_token"')
  })

  it("is taken from no cookie, no query and no other scheme", async () => {
    const { secret } = await tokenFor(["read"])
    for (const request of [
      { url: "/api/today", headers: { cookie: `lengthwise-session=${secret}` } },
      { url: `/api/today?access_token=${secret}` },
      { url: "/api/today", headers: { authorization: `Basic ${secret}` } },
      { url: "/api/today", headers: { authorization: secret } },
    ])
      expect((await t.app.inject(request)).statusCode).toBe(401)
  })

  it("that is wrong is not made good by a cookie", async () => {
    const answer = await t.ask("GET", "/api/today", { headers: { authorization: "Bearer lw_wrong" } })
    expect(answer.statusCode).toBe(401)
  })

  it("whoever asks with nothing is told that a token would do", async () => {
    const answer = await t.app.inject("/api/today")
    expect(answer.headers["www-authenticate"]).toBe('Bearer realm="lengthwise"')
  })
})

describe("in time", () => {
  it("a token expires", async () => {
    const own = await testApp()
    await own.logIn()
    const { id } = (await own.ask("GET", "/api/session")).json().person
    const { secret } = await own.record.tokens.add({
      name: "short",
      scopes: ["read"],
      createdBy: id,
      nowMs: NOW_MS,
      expiresMs: NOW_MS + DAY_MS,
    })
    const status = async () =>
      (await own.app.inject({ url: "/api/today", headers: { authorization: `Bearer ${secret}` } })).statusCode
    own.pass(DAY_MS - 1)
    expect(await status()).toBe(200)
    own.pass(1)
    expect(await status()).toBe(401)
    await own.close()
  })

  it("wrong tokens are slowed by address, and right ones are not", async () => {
    const own = await testApp()
    await own.logIn()
    const { id } = (await own.ask("GET", "/api/session")).json().person
    const { secret } = await own.record.tokens.add({
      name: "right",
      scopes: ["read"],
      createdBy: id,
      nowMs: NOW_MS,
      expiresMs: NOW_MS + DAY_MS,
    })
    const wrong = () => own.app.inject({ url: "/api/today", headers: { authorization: "Bearer lw_wrong" } })
    for (let n = 0; n < WRONG_TOKENS_PER_MINUTE; n++) expect((await wrong()).statusCode).toBe(401)
    const answer = await wrong()
    expect(answer.statusCode).toBe(429)
    expect(answer.headers["retry-after"]).toBe("60")
    const right = { url: "/api/practice", headers: { authorization: `Bearer ${secret}` } }
    expect((await own.app.inject(right)).statusCode).toBe(200)
    own.pass(60_000)
    expect((await wrong()).statusCode).toBe(401)

    let last = 0
    for (let n = 0; n <= TOKEN_REQUESTS_PER_MINUTE; n++) last = (await own.app.inject(right)).statusCode
    expect(last).toBe(429)
    await own.close()
  }, 60_000)
})

describe("under /fhir", () => {
  it("counts as the API, and a route that asks for the scope fhir gets it", async () => {
    const app = fastify()
    app.setErrorHandler(answerFailure)
    app.addHook("onRequest", async (request) => {
      Object.assign(request, { cookies: {} })
    })
    guard(app, { record: t.record, clock: { nowMs: () => NOW_MS, today: () => "2025-11-25" } })
    app.get("/fhir/metadata", { config: { open: true, scope: "none" } }, async () => "open")
    app.get("/fhir/Patient", { config: { scope: "fhir" } }, async ({ person }) => person?.name)
    app.get("/fhirs", async (request) => isApi(request))
    const inject = (url: string, secret?: string) =>
      app.inject({ url, ...(secret ? { headers: { authorization: `Bearer ${secret}` } } : {}) })
    const right = await tokenFor(["fhir"])
    const other = await tokenFor(["read"])
    expect((await inject("/fhir/metadata")).statusCode).toBe(200)
    expect((await inject("/fhir/Patient")).statusCode).toBe(401)
    expect((await inject("/fhir/Patient?_count=1", other.secret)).statusCode).toBe(403)
    expect((await inject("/fhir/Patient?_count=1", right.secret)).body).toBe("Ada Lindqvist")
    expect((await inject("/fhirs")).body).toBe("false")
    await app.close()
  })
})
