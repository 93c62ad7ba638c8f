import { createHash } from "node:crypto"
import { join } from "node:path"
import Database from "better-sqlite3"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { readFile } from "../../src/interop/read-file.js"
import { RECORD_FILE } from "../../src/record/record-file.js"
import type { ImportAtWork } from "../../src/server/contract/imports.js"
import { inTurn } from "../../src/server/in-turn.js"
import { takeFile } from "../../src/server/intake/take-file.js"
import type { From } from "../../src/server/intake/taken.js"
import { type TestApp, TODAY, testApp } from "../app/test-app.js"
import { inputAt } from "./frame/inputs.js"
import { targetNamed } from "./frame/targets.js"

/** Of each format; `npm run fuzz` reads far more, without a record. */
const INPUTS = 300
const SEED = 11

let test: TestApp
let watching: Database.Database
let person: From
beforeAll(async () => {
  test = await testApp()
  await test.logIn()
  await test.addChild()
  const [ada] = await test.record.people()
  if (!ada) throw new Error("nobody works here")
  person = { kind: "person", person: ada }
  watching = new Database(join(test.folder, RECORD_FILE), { readonly: true })
}, 60_000)
afterAll(async () => {
  watching.close()
  await test.close()
})

/** What a log-in leaves behind is not of a file. */
const OF_LOG_INS = ["sessions", "log_in_attempts"]
let last = { version: -1, hash: "" }

/** The head of the chain and every row of every table, as one hash. */
async function state(): Promise<string> {
  // The version moves with every commit of another connection: without one there is nothing to look at again.
  const version = Number(watching.pragma("data_version", { simple: true }))
  if (version === last.version) return last.hash
  const hash = createHash("sha256").update(await test.record.head())
  const tables = watching.prepare("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name").all()
  for (const { name } of tables as readonly { readonly name: string }[]) {
    if (OF_LOG_INS.includes(name)) continue
    const rows = watching.prepare(`SELECT * FROM "${name}"`).raw().all()
    hash.update(JSON.stringify([name, rows]))
  }
  last = { version, hash: hash.digest("hex") }
  return last.hash
}

async function inputs(format: string): Promise<readonly Uint8Array[]> {
  const target = await targetNamed(format)
  const seeds = await target.seeds()
  return Array.from({ length: INPUTS }, (_, index) => inputAt({ seeds, target }, { seed: SEED, index }))
}

describe("of a broken file nothing is stored", () => {
  it.each(["dicom", "fhir", "course", "csv", "xlsx"])(
    "when it is taken as it came: %s",
    async (format) => {
      const clock = { nowMs: () => Date.parse(`${TODAY}T10:00:00Z`), today: () => TODAY }
      const context = { record: test.record, clock, oneAtATime: inTurn() }
      let refused = 0
      for (const [index, bytes] of (await inputs(format)).entries()) {
        const before = await state()
        const sent = { file: `${format} ${index}`, bytes, from: person, makesChildren: index % 2 === 0 }
        const taken = await takeFile(context, sent)
        const { fragments } = await readFile({ file: sent.file, bytes })
        const isTaken = taken.some(({ outcome }) => outcome !== "skipped")
        if (isTaken) {
          expect({ index, fragments: fragments.length }).not.toEqual({ index, fragments: 0 })
          continue
        }
        refused += 1
        expect({ index, why: taken[0]?.why ?? "" }).not.toEqual({ index, why: "" })
        expect({ index, state: await state() }).toEqual({ index, state: before })
      }
      expect(refused).toBeGreaterThan(INPUTS / 10)
      expect(await test.record.verifyChain()).toMatchObject({ whole: true })
    },
    120_000,
  )

  it.each(["csv", "xlsx"])(
    "when it is looked at and checked under Import: %s",
    async (format) => {
      const before = await state()
      for (const [index, body] of (await inputs(format)).entries()) {
        const headers = { "content-type": "application/octet-stream" }
        const url = `/api/imports?name=${format}-${index}`
        const uploaded = await test.ask("POST", url, { body: Buffer.from(body), headers })
        expect({ index, status: [201, 415, 422].includes(uploaded.statusCode) || uploaded.body }).toEqual({
          index,
          status: true,
        })
        if (uploaded.statusCode === 201) await check(uploaded.json())
        expect({ index, state: await state() }).toEqual({ index, state: before })
      }
      expect(await test.record.verifyChain()).toMatchObject({ whole: true })
    },
    120_000,
  )
})

async function check({ id, mapping }: ImportAtWork): Promise<void> {
  const asked = {
    body: { mapping: { ...mapping, dateOrder: "day-month-year" }, settled: ["date-order", "decimal-sign"] },
  }
  const answer = mapping ? await test.ask("POST", `/api/imports/${id}/check`, asked) : undefined
  if (answer?.statusCode !== 201) {
    // What cannot be checked cannot be recorded either.
    expect((await test.ask("POST", `/api/imports/${id}/run`)).statusCode).toBeGreaterThanOrEqual(400)
    return
  }
  for (;;) {
    const work: ImportAtWork = (await test.ask("GET", `/api/imports/${id}`)).json()
    if (work.state !== "checking") return
    await new Promise((next) => setTimeout(next, 2))
  }
}
