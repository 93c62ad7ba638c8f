import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { openArchive } from "../../src/interop/archive/zip-reader.js"
import type { ArchivesAnswer, ShownArchive } from "../../src/server/contract/leave.js"
import { restoreArchive } from "../../src/server/leave/restore-archive.js"
import { faults, PASSWORD, type TestApp, testApp } from "./test-app.js"

let t: TestApp
beforeAll(async () => {
  t = await testApp()
  await t.logIn()
  for (const number of [1, 2, 3]) {
    const { child } = await t.addChild({ name: `Child ${number}`, number: `N-${number}` })
    await t.ask("POST", `/api/children/${child.id}/visits`, {
      body: { date: "2025-01-10", right: { axialLength: { mm: 24 + number / 10 } } },
    })
  }
})
afterAll(() => t.close())

const archives = async (): Promise<ArchivesAnswer["archives"]> =>
  (await t.ask("GET", "/api/archives")).json().archives
const start = (withPapers: boolean, password = PASSWORD) =>
  t.ask("POST", "/api/archives", { body: { withPapers, password } })
const folder = () => join(t.record.folder, "archives")

/** The newest archive once it is in one of the states. */
async function until(...states: readonly string[]): Promise<ShownArchive> {
  for (;;) {
    const [newest] = await archives()
    if (newest && states.includes(newest.state)) return newest
    if (newest?.state === "failed") throw new Error(newest.problems.join())
    await new Promise((resolve) => setTimeout(resolve, 50))
  }
}

describe("everything out by the pages", () => {
  it("asks for the password again, and a wrong one takes nothing out and ends no session", async () => {
    expect(await archives()).toEqual([])
    const wrong = await start(false, "another password here")
    expect(wrong.statusCode).toBe(422)
    expect(faults(wrong)).toEqual(["password: the password in use"])
    expect(await archives()).toEqual([])
  })

  it("makes an archive that a new folder is restored from, told with its head and its size", async () => {
    const started = await start(false)
    expect(started.statusCode).toBe(201)
    expect(started.json().archives[0]).toMatchObject({
      state: "running",
      by: "Ada Lindqvist",
      withPapers: false,
    })
    const ready = await until("ready")
    const file = join(folder(), `${ready.id}.zip`)
    expect(statSync(file).mode & 0o777).toBe(0o600)
    expect(statSync(folder()).mode & 0o777).toBe(0o700)
    expect(ready).toMatchObject({ head: await t.record.head(), bytes: statSync(file).size, problems: [] })
    const restored = await restoreArchive({ file, folder: join(t.record.folder, "again") })
    expect(restored).toMatchObject({ head: ready.head, children: 3 })
    // Nobody of this practice has the name of the first account: their passwords stand in a file of their own.
    expect(readFileSync(restored.logIns[0] ?? "", "utf8")).toMatch(
      /name: ada\npassword: .+\n\nname: ben\n|name: ben\npassword: .+\n\nname: ada\n/,
    )
  })

  it("is fetched once, whole, and then gone", async () => {
    const { id, bytes } = await until("ready")
    const file = await t.ask("GET", `/api/archives/${id}/file`)
    expect(file.statusCode).toBe(200)
    expect(file.headers["content-type"]).toBe("application/zip")
    expect(file.headers["content-disposition"]).toBe(
      'attachment; filename="lengthwise-archive-2025-11-25.zip"',
    )
    expect(file.rawPayload.length).toBe(bytes)
    const copy = join(t.record.folder, "copy.zip")
    writeFileSync(copy, file.rawPayload)
    const opened = await openArchive(copy)
    expect(opened.manifest.of).toBe("practice")
    opened.close()
    await until("fetched")
    expect(existsSync(join(folder(), `${id}.zip`))).toBe(false)
    expect((await t.ask("GET", `/api/archives/${id}/file`)).statusCode).toBe(404)
  })

  it("is made one at a time, and can be cancelled; nothing of it stays", async () => {
    expect((await start(true)).statusCode).toBe(201)
    expect((await start(false)).statusCode).toBe(409)
    const [running] = await archives()
    const cancelled = await t.ask("DELETE", `/api/archives/${running?.id}`)
    expect(cancelled.json().archives[0]).toMatchObject({ id: running?.id, state: "cancelled" })
    expect(readdirSync(folder())).toEqual(["journal.ndjson"])
  })

  it("can be removed before it is fetched, and removes itself after a day", async () => {
    await start(false)
    const first = await until("ready")
    expect((await t.ask("DELETE", `/api/archives/${first.id}`)).json().archives[0].state).toBe("removed")
    await start(false)
    const second = await until("ready")
    t.pass(23 * 3_600_000)
    await t.logIn()
    expect(existsSync(join(folder(), `${second.id}.zip`))).toBe(true)
    expect((await archives())[0]?.state).toBe("ready")
    t.pass(3_600_000)
    await t.logIn()
    expect((await archives())[0]?.state).toBe("expired")
    expect(readdirSync(folder())).toEqual(["journal.ndjson"])
  })

  it("with papers has the record of each child", async () => {
    await start(true)
    const { id } = await until("ready")
    const archive = await openArchive(join(folder(), `${id}.zip`))
    const papers = archive.manifest.parts.filter(({ name }) => name.endsWith("record.pdf"))
    archive.close()
    expect(papers).toHaveLength(3)
  })

  it("is written down: who took it out and when", async () => {
    const lines = readFileSync(join(folder(), "journal.ndjson"), "utf8")
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line))
    expect(lines.filter(({ what }) => what === "fetched")).toEqual([
      expect.objectContaining({ by: "Ada Lindqvist", at: "2025-11-25T09:00:00.000Z" }),
    ])
  })

  it("refuses an id that is none of its own", async () => {
    expect((await t.ask("GET", `/api/archives/${crypto.randomUUID()}/file`)).statusCode).toBe(404)
    expect((await t.ask("DELETE", "/api/archives/..%2F..%2Fx")).statusCode).toBe(422)
  })
})
