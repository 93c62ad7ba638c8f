import { execFile } from "node:child_process"
import { readFileSync } from "node:fs"
import { promisify } from "node:util"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { SCOPES } from "../../src/engine/access/scopes.js"
import { WEBHOOK_EVENTS } from "../../src/engine/access/webhook-events.js"
import { TOKEN_REQUESTS_PER_MINUTE, WRONG_TOKENS_PER_MINUTE } from "../../src/server/tokens/token-check.js"
import { AGAIN_MINUTES, FAILURES_ALLOWED } from "../../src/server/webhooks/webhook-job.js"
import { type Receiver, receiver } from "./receiver.js"
import { type TestApp, testApp } from "./test-app.js"

const run = promisify(execFile)
const DOCS = readFileSync(new URL("../../docs/api.md", import.meta.url), "utf8")
const blocks = (language: string): readonly string[] =>
  [...DOCS.matchAll(new RegExp(`\`\`\`${language}\\n([^]*?)\`\`\``, "g"))].map(([, text = ""]) => text)

let t: TestApp
let r: Receiver
let env: Record<string, string>
let child = ""
beforeAll(async () => {
  t = await testApp()
  r = await receiver()
  await t.logIn()
  const address = await t.app.listen({ host: "127.0.0.1", port: 0 })
  child = (await t.addChild()).child.id
  const body = { name: "docs", scopes: ["read", "write", "files"] }
  const { secret } = (await t.ask("POST", "/api/tokens", { body })).json()
  env = { LENGTHWISE: address, TOKEN: secret, CHILD: child, PATH: process.env.PATH ?? "" }
})
afterAll(async () => {
  await r.close()
  await t.close()
})

describe("docs/api.md", () => {
  it.each(blocks("sh").map((block, number) => ({ number: number + 1, block })))(
    "example $number does what it says",
    async ({ block }) => {
      const { stdout } = await run("bash", ["-euo", "pipefail", "-c", block], { env })
      expect(stdout).not.toBe("")
    },
  )

  it("recorded the visit once, though it was asked for twice", async () => {
    const { course, entries } = (await t.ask("GET", `/api/children/${child}`)).json()
    expect(course.visits).toHaveLength(1)
    expect(entries.at(-1).author).toBe("Ada Lindqvist")
  })

  it("checks a signature as it says", async () => {
    const body = { url: r.url, events: ["duty-open"] }
    const { secret } = (await t.ask("POST", "/api/webhooks", { body })).json()
    const treatment = { from: "2025-11-01", kind: "atropine", concentrationPercent: 0.05 }
    await t.ask("POST", `/api/children/${child}/treatments`, { body: treatment })
    await t.ask("POST", "/api/webhooks/look")
    const [first] = r.received
    const [check = ""] = blocks("python")
    const asked = `${check}
import json, sys
given = json.load(sys.stdin)
now = lambda: int(given["headers"]["lengthwise-timestamp"]) + given["late"]
print(is_from_lengthwise(given["secret"], given["headers"], given["body"].encode(), now))`
    const answer = async (changes: object) => {
      const given = JSON.stringify({
        secret,
        late: 1,
        headers: first?.headers,
        body: first?.body,
        ...changes,
      })
      const python = run("python3", ["-c", asked])
      python.child.stdin?.end(given)
      return (await python).stdout.trim()
    }
    expect(await answer({})).toBe("True")
    expect(await answer({ secret: "another" })).toBe("False")
    expect(await answer({ body: `${first?.body} ` })).toBe("False")
    expect(await answer({ late: 301 })).toBe("False")
  })

  it("names every scope and event, and the limits as they are", () => {
    for (const name of [...SCOPES, ...WEBHOOK_EVENTS]) expect(DOCS).toContain(`\`${name}\``)
    expect(DOCS).toContain(`${TOKEN_REQUESTS_PER_MINUTE} times a minute`)
    expect(DOCS).toContain(`${WRONG_TOKENS_PER_MINUTE} wrong tokens a minute`)
    expect(DOCS).toContain(`After ${FAILURES_ALLOWED} failures in a row`)
    expect(AGAIN_MINUTES).toEqual([1, 5, 15, 60, 240, 720, 1440, 1440, 1440])
  })
})
