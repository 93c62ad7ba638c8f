import { chmodSync, mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { sql } from "kysely"
import { afterAll, describe, expect, it } from "vitest"
import { lockFolder, migrate, openEmbedded, RecordError } from "../../src/record/index.js"
import { storageSuite } from "./storage-suite.js"

const folders: string[] = []
const newFolder = () => {
  const folder = mkdtempSync(join(tmpdir(), "lengthwise-"))
  folders.push(folder)
  return folder
}
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true })
})

storageSuite("the embedded database", async () => openEmbedded(newFolder()))

describe("the embedded database", () => {
  it("flushes every commit to the disk, in WAL mode, and minds foreign keys", async () => {
    const database = openEmbedded(newFolder())
    const pragma = async (name: string) =>
      Object.values((await sql.raw<object>(`PRAGMA ${name}`).execute(database.queries)).rows[0] ?? {})[0]
    expect(await pragma("journal_mode")).toBe("wal")
    expect(await pragma("synchronous")).toBe(2) // FULL
    expect(await pragma("foreign_keys")).toBe(1)
    await database.close()
  })

  it("makes a folder and a file that only their owner can read", async () => {
    const folder = join(newFolder(), "deep", "practice")
    const database = openEmbedded(folder)
    expect(statSync(folder).mode & 0o777).toBe(0o700)
    expect(statSync(join(folder, "record.sqlite")).mode & 0o777).toBe(0o600)
    await database.close()
  })

  it("says so when the file is something else", () => {
    const folder = newFolder()
    writeFileSync(
      join(folder, "record.sqlite"),
      "not a database, but long enough to be taken for one".repeat(100),
    )
    chmodSync(join(folder, "record.sqlite"), 0o600)
    expect(() => openEmbedded(folder)).toThrow(RecordError)
  })

  it("says so when the record was written by a newer version", async () => {
    const database = openEmbedded(newFolder())
    await migrate(database)
    await sql.raw("INSERT INTO migrations (name) VALUES ('9999-future')").execute(database.queries)
    await expect(migrate(database)).rejects.toThrow("newer version")
    await database.close()
  })
})

describe("the lock of a data folder", () => {
  it("is held by one and refused to the next, with a note of the holder", () => {
    const folder = newFolder()
    const lock = lockFolder(folder)
    lock.note("serving http://127.0.0.1:1, process 2")
    expect(() => lockFolder(folder)).toThrow(
      `the data folder ${folder} is in use by another Lengthwise (serving http://127.0.0.1:1, process 2)`,
    )
    lock.release()
  })

  it("is free again after a release", () => {
    const folder = newFolder()
    lockFolder(folder).release()
    const again = lockFolder(folder)
    again.release()
  })
})
