import { type ChildProcess, spawn } from "node:child_process"
import { mkdtempSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { fileURLToPath } from "node:url"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import {
  addPractice,
  migrate,
  type OpenDatabase,
  openEmbedded,
  practiceRecord,
} from "../../src/record/index.js"
import { accept, type Receiver, receiver } from "../app/receiver.js"

const SENDER = fileURLToPath(new URL("webhook-sender.ts", import.meta.url))
const TODAY = "2025-11-25"
const NOW = `${TODAY}T12:00:00Z`
const practice = { id: "practice", name: "Practice", latitude: null, settings: {} }
const folder = mkdtempSync(join(tmpdir(), "lengthwise-webhooks-"))
const CHILDREN = 4

let database: OpenDatabase
let r: Receiver
beforeAll(async () => {
  database = openEmbedded(folder)
  r = await receiver()
  await migrate(database)
  await addPractice(database.queries, { ...practice, createdAt: NOW })
  const record = practiceRecord(database, practice)
  const person = { id: "author", name: "Author", logIn: "author", role: "clinician" } as const
  await record.addPerson({ ...person, passwordHash: null, createdAt: NOW })
  await record.webhooks.add({ url: r.url, events: ["duty-open"], by: "author", at: NOW })
  expect(await end(start())).toBeNull()
  for (let n = 0; n < CHILDREN; n++) {
    const id = crypto.randomUUID()
    const of = { author: "author", recordedAt: NOW, child: id }
    const saved = await record.append([
      { ...of, kind: "child", id, body: { name: `Child ${n}`, born: "2016-03-14", sex: "female" } },
      {
        ...of,
        kind: "treatment",
        body: { from: "2025-11-01", kind: "atropine", concentrationPercent: 0.05 },
      },
    ])
    if (saved.kind !== "saved") throw new Error(JSON.stringify(saved))
  }
}, 120_000)
afterAll(async () => {
  await r.close()
  await database.close()
  rmSync(folder, { recursive: true, force: true })
})

const start = (): ChildProcess =>
  spawn(process.execPath, ["--import", "tsx", SENDER, folder, TODAY, NOW], {
    stdio: ["ignore", "inherit", "inherit"],
  })
const end = (sender: ChildProcess): Promise<NodeJS.Signals | null> =>
  new Promise((resolve) => sender.on("close", (_code, signal) => resolve(signal)))

const states = async () => {
  const { deliveries } = practiceRecord(database, practice).webhooks
  const counts = await deliveries.counts()
  return Object.fromEntries(counts.map(({ state, count }) => [state, count]))
}
const ids = () => r.received.map(({ body }) => JSON.parse(body).id as string)

describe("a process killed without warning while it tells other programs", () => {
  it("has lost nothing: what was under way is told again under the same id", async () => {
    const sender = start()
    r.answer = (response, received) => {
      // It is here, the answer never reaches the sender.
      if (r.received.length === 2) sender.kill("SIGKILL")
      else accept(response, received)
    }
    expect(await end(sender)).toBe("SIGKILL")
    expect(await states()).toEqual({ delivered: 1, sending: 1, waiting: CHILDREN - 2 })

    r.answer = accept
    expect(await end(start())).toBeNull()
    expect(await states()).toEqual({ delivered: CHILDREN })
    expect(r.received).toHaveLength(CHILDREN + 1)
    expect(new Set(ids()).size).toBe(CHILDREN)
    expect(ids()[1]).toBe(ids()[2])

    // A restart tells nothing again.
    expect(await end(start())).toBeNull()
    expect(r.received).toHaveLength(CHILDREN + 1)
  }, 180_000)
})
