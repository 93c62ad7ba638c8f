import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { api } from "../../src/server/contract/api.js"
import { PASSWORD, type TestApp, testApp } from "./test-app.js"

let t: TestApp
beforeAll(async () => {
  t = await testApp()
})
afterAll(() => t.close())

const id = "00000000-0000-4000-8000-000000000000"
// What a family opens has its own key: test/app/family-links.
const open = [
  "/api/health",
  "/api/session",
  "/api/shared/:token",
  "/api/shared/:token/pdf",
  "/api/shared/:token/calendar",
]

describe("without a log-in", () => {
  it.each(Object.values(api).filter(({ method, url }) => !open.includes(url) || method === "DELETE"))(
    "$method $url is refused",
    async ({ method, url }) => {
      const answer = await t.app.inject({
        method,
        url: url.replace(":id", id).replace(":entryId", id),
        ...(method === "POST" ? { payload: {} } : {}),
      })
      expect(answer.statusCode).toBe(401)
      expect(answer.headers["content-type"]).toContain("application/problem+json")
      expect(answer.json().title).toBe("Log in first")
    },
  )

  it("health is answered", async () => {
    expect((await t.app.inject("/api/health")).json()).toEqual({ status: "ok" })
  })

  it("a made-up session is refused", async () => {
    const cookie = "lengthwise-session=' OR 1=1 --"
    expect((await t.app.inject({ url: "/api/session", headers: { cookie } })).statusCode).toBe(401)
  })
})

describe("a request from another site", () => {
  const logIn = (headers: Record<string, string>) =>
    t.app.inject({
      method: "POST",
      url: "/api/session",
      headers,
      payload: { name: "ada", password: PASSWORD },
    })

  it.each([
    ["another origin", { origin: "https://elsewhere.example" }],
    ["another port of this machine", { origin: "http://localhost:9999" }],
    ["an origin that is hidden", { origin: "null" }],
    ["a cross-site fetch", { "sec-fetch-site": "cross-site" }],
    ["a same-site fetch", { "sec-fetch-site": "same-site" }],
  ])("is refused: %s", async (_, headers) => {
    const answer = await logIn(headers)
    expect(answer.statusCode).toBe(403)
    expect(answer.cookies).toEqual([])
  })

  it("is let through from the server's own pages", async () => {
    const headers = { origin: "http://localhost:80", host: "localhost:80", "sec-fetch-site": "same-origin" }
    // A browser leaves the port of the scheme out of both.
    const answer = await logIn({ ...headers, origin: "http://127.0.0.1:4380", host: "127.0.0.1:4380" })
    expect(answer.statusCode).toBe(201)
  })

  it.each(["text/plain", "application/x-www-form-urlencoded", "multipart/form-data; boundary=x"])(
    "can't be a form: %s",
    async (type) => {
      const answer = await t.app.inject({
        method: "POST",
        url: "/api/session",
        headers: { "content-type": type },
        payload: JSON.stringify({ name: "ada", password: PASSWORD }),
      })
      expect(answer.statusCode).toBe(415)
    },
  )
})

describe("every answer", () => {
  it("of the API is kept out of caches", async () => {
    for (const url of ["/api/health", "/api/children", "/api/nothing"])
      expect((await t.app.inject(url)).headers["cache-control"]).toBe("no-store")
  })

  it("runs no inline script, no plug-in, no frame, and sniffs no type", async () => {
    const { headers } = await t.app.inject("/api/health")
    const policy = String(headers["content-security-policy"])
    expect(policy).toContain("default-src 'none'")
    expect(policy).toContain("script-src 'self';")
    expect(policy).toContain("frame-ancestors 'none'")
    expect(policy).not.toContain("unsafe")
    expect(headers["x-content-type-options"]).toBe("nosniff")
    expect(headers["referrer-policy"]).toBe("no-referrer")
    expect(headers["x-powered-by"]).toBeUndefined()
  })
})

describe("what is not there", () => {
  it.each(["/api", "/api/nothing", "/api/children/../../etc/passwd", "/other"])(
    "%s is not found",
    async (url) => {
      const answer = await t.app.inject(url)
      expect(answer.statusCode).toBe(404)
      expect(answer.json().title).toBe("Not found")
    },
  )
})

describe("a body that can't be read", () => {
  const post = (payload: string) =>
    t.app.inject({
      method: "POST",
      url: "/api/session",
      headers: { "content-type": "application/json" },
      payload,
    })

  it.each([
    ["broken JSON", '{"name": "ada', 400],
    ["no JSON at all", "", 400],
    ["a prototype in disguise", '{"__proto__": {"role": "owner"}, "name": "ada", "password": "x"}', 400],
    ["more than a megabyte", JSON.stringify({ name: "ada", password: "x".repeat(1_000_001) }), 413],
    ["a list in place of an object", "[]", 422],
    ["null", "null", 422],
  ])("%s is refused", async (_, payload, status) => {
    const answer = await post(payload)
    expect(answer.statusCode).toBe(status)
    expect(answer.json().problems.length).toBeGreaterThan(0)
  })
})

it("a failure of our own gives a number to quote and nothing of its inside", async () => {
  const broken = await testApp()
  await broken.logIn()
  broken.record.people = () => Promise.reject(new Error("SELECT secret FROM people"))
  const child = await broken.ask("POST", "/api/children", {
    body: { name: "Mira", born: "2017-03-14", sex: "female" },
  })
  expect(child.statusCode).toBe(500)
  expect(child.json().title).toBe("Something failed on our side")
  expect(child.body).not.toContain("secret")
  expect(child.json().problems[0].message).toMatch(/^reference [0-9a-f-]{36}$/)
  await broken.close()
})
