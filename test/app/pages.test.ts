import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { type TestApp, testApp } from "./test-app.js"

let t: TestApp
const folder = mkdtempSync(join(tmpdir(), "lengthwise-pages-"))
beforeAll(async () => {
  mkdirSync(join(folder, "web/assets"), { recursive: true })
  writeFileSync(join(folder, "web/index.html"), "<!doctype html><title>page</title>")
  writeFileSync(join(folder, "web/assets/app-1a2b.js"), "export {}")
  writeFileSync(join(folder, "secret.txt"), "secret")
  t = await testApp({ staticFolder: join(folder, "web") })
})
afterAll(async () => {
  await t.close()
  rmSync(folder, { recursive: true })
})

describe("the pages", () => {
  it.each(["/", "/children", "/children/22222222-2222-4222-8222-222222222222/visit?date=2025-01-10"])(
    "%s is the page, which shows itself what the path asks for",
    async (url) => {
      const answer = await t.app.inject(url)
      expect(answer.statusCode).toBe(200)
      expect(answer.body).toContain("<title>page</title>")
      expect(answer.headers["cache-control"]).toBe("no-cache")
      expect(answer.headers["content-security-policy"]).toContain("script-src 'self'")
    },
  )

  it("come with files that a browser may keep, since their names change with their content", async () => {
    const answer = await t.app.inject("/assets/app-1a2b.js")
    expect(answer.headers["cache-control"]).toBe("public, max-age=31536000, immutable")
    expect(answer.headers["content-type"]).toContain("javascript")
  })

  it.each(["/assets/gone.js", "/favicon.ico", "/../secret.txt", "/%2e%2e/secret.txt", "/..%2fsecret.txt"])(
    "%s is not there",
    async (url) => {
      const answer = await t.app.inject(url)
      expect(answer.body).not.toContain("secret")
      expect([403, 404]).toContain(answer.statusCode)
    },
  )

  it("never list a folder", async () => {
    expect((await t.app.inject("/assets/")).body).not.toContain("app-1a2b")
  })

  it("never stand in for the API", async () => {
    expect((await t.app.inject("/api/nothing")).statusCode).toBe(401)
    await t.logIn()
    expect((await t.ask("GET", "/api/nothing")).statusCode).toBe(404)
    expect((await t.app.inject({ method: "POST", url: "/children", payload: {} })).statusCode).toBe(404)
  })
})
