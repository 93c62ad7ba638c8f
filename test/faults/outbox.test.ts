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
import { mailServer } from "../app/mail-server.js"

const SENDER = fileURLToPath(new URL("outbox-sender.ts", import.meta.url))
const TODAY = "2025-11-25"
const NOW = `${TODAY}T12:00:00Z`
const practice = { id: "practice", name: "Practice", latitude: null, settings: {} }
const folder = mkdtempSync(join(tmpdir(), "lengthwise-outbox-"))
const FAMILIES = 6

let database: OpenDatabase
beforeAll(async () => {
  database = openEmbedded(folder)
  await migrate(database)
  const record = practiceRecord(database, practice)
  const common = { author: "author", recordedAt: NOW }
  await addPractice(database.queries, { ...practice, createdAt: NOW })
  const person = { id: "author", name: "Author", logIn: "author", role: "clinician" } as const
  await record.addPerson({ ...person, passwordHash: null, createdAt: NOW })
  const messages = {
    isOn: true,
    sender: "Quiet Harbour",
    from: "desk@harbour.example",
    telephone: "+353 1 555 0100",
    timeZone: "UTC",
    quietFrom: "21:00",
    quietTo: "08:00",
    daysBefore: 14,
  }
  await record.append([{ ...common, kind: "messages", child: practice.id, body: messages }])
  for (let family = 0; family < FAMILIES; family++) {
    const id = crypto.randomUUID()
    const of = { ...common, child: id }
    const saved = await record.append([
      { ...of, kind: "child", id, body: { name: `Child ${family}`, born: "2016-03-14", sex: "female" } },
      {
        ...of,
        kind: "treatment",
        body: { from: "2025-11-01", kind: "atropine", concentrationPercent: 0.05 },
      },
      {
        ...of,
        kind: "supply",
        body: { opened: "2025-11-01", concentrationPercent: 0.05, beyondUse: "2025-11-30" },
      },
      {
        ...of,
        kind: "family",
        body: {
          name: `Family ${family}`,
          relation: "mother",
          language: "en",
          email: `family${family}@family.example`,
          reachedBy: "email",
          agreed: { on: "2025-11-01", to: ["bottles"] },
        },
      },
    ])
    if (saved.kind !== "saved") throw new Error(JSON.stringify(saved))
  }
})
afterAll(async () => {
  await database.close()
  rmSync(folder, { recursive: true, force: true })
})

const start = (url: string): ChildProcess =>
  spawn(process.execPath, ["--import", "tsx", SENDER, folder, url, TODAY, NOW], {
    stdio: ["ignore", "inherit", "inherit"],
  })
const end = (sender: ChildProcess): Promise<NodeJS.Signals | null> =>
  new Promise((resolve) => sender.on("close", (_code, signal) => resolve(signal)))

describe("a process killed without warning while it sends messages", () => {
  it("leaves the one under way to a person, has lost none, and none is ever sent twice", async () => {
    const arrived: string[] = []
    let sender: ChildProcess | undefined
    let killAt = 3
    const server = await mailServer({
      options: {
        onData: (stream, _session, done) => {
          let text = ""
          stream.on("data", (chunk) => {
            text += chunk
          })
          stream.on("end", () => {
            arrived.push(/^To: .*<(.*)>/m.exec(text)?.[1] ?? "")
            // The message is here, the answer never reaches the sender.
            if (arrived.length === killAt) sender?.kill("SIGKILL")
            else done()
          })
        },
      },
    })
    const { outbox } = practiceRecord(database, practice)

    sender = start(server.url)
    expect(await end(sender)).toBe("SIGKILL")
    expect(arrived).toHaveLength(3)
    expect(await outbox.counts()).toMatchObject({ sent: 2, sending: 1, waiting: 3 })

    killAt = 5
    sender = start(server.url)
    expect(await end(sender)).toBe("SIGKILL")
    expect(await outbox.counts()).toMatchObject({ sent: 3, unknown: 1, sending: 1, waiting: 1 })

    killAt = 0
    sender = start(server.url)
    expect(await end(sender)).toBeNull()
    expect(await outbox.counts()).toMatchObject({ sent: 4, unknown: 2, sending: 0, waiting: 0 })
    expect(new Set(arrived).size).toBe(FAMILIES)
    expect(arrived).toHaveLength(FAMILIES)
    await server.close()
  }, 120_000)

  it("before it had spoken to the server leaves everything waiting", async () => {
    // Nothing listens there: the process ends by itself, and what waits goes on waiting.
    const gone = await mailServer()
    await gone.close()
    const { outbox } = practiceRecord(database, practice)
    const [unknown] = (await outbox.list({ state: "unknown", page: 1, pageSize: 10 })).messages
    if (!unknown) throw new Error("no message was left unknown")
    await outbox.change({ id: unknown.id, from: ["unknown"], state: "waiting", at: NOW, by: "author" })
    expect(await end(start(gone.url))).toBeNull()
    expect(await outbox.counts()).toMatchObject({ waiting: 1, sending: 0 })
  }, 60_000)
})
