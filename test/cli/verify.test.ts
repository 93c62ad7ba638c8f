import { mkdirSync } from "node:fs"
import { join } from "node:path"
import { sql } from "kysely"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { lockFolder, openEmbedded } from "../../src/record/index.js"
import { folders, onDisk, practiceFolder } from "./practice-folder.js"

const made = folders()
afterAll(made.clear)

describe("verify", () => {
  const folder = made.next()
  beforeAll(() => practiceFolder(folder), 60_000)
  const asked = async (...options: readonly string[]) => {
    const answer = await onDisk(["verify", folder, "--json", ...options])
    return { code: answer.code, ...JSON.parse(answer.stdout) }
  }
  const changed = async (...statements: readonly string[]) => {
    const database = openEmbedded(folder)
    for (const statement of statements) await sql.raw(statement).execute(database.queries)
    await database.close()
  }

  it("counts the entries, the files and the children of a whole record, and gives its last hash", async () => {
    expect(await asked()).toMatchObject({
      ...{
        code: 0,
        whole: true,
        files: { count: 1, broken: 0 },
        children: 6,
        brokenAt: null,
        rebuilt: false,
      },
      head: expect.stringMatching(/^[0-9a-f]{64}$/),
      entries: expect.any(Number),
    })
    expect((await onDisk(["verify", folder])).stdout).toMatch(
      /^The record in .+ is whole\.\nEntries: \d+\. Children: 6\. Stored files: 1\./,
    )
  })

  it("looks beside a running server, and does not rebuild under it", async () => {
    const lock = lockFolder(folder)
    const looked = await asked()
    const rebuilt = await onDisk(["verify", folder, "--rebuild"])
    lock.release()
    expect(looked.whole).toBe(true)
    expect([rebuilt.code, rebuilt.stderr]).toEqual([
      1,
      expect.stringContaining("is in use by another Lengthwise"),
    ])
  })

  it("makes lost derived tables anew", async () => {
    const before = await asked()
    await changed("DELETE FROM children")
    expect(await asked()).toMatchObject({ children: 0 })
    expect(await asked("--rebuild")).toEqual({ ...before, rebuilt: true })
  })

  it("names the first entry that was altered, and rebuilds nothing from it", async () => {
    await changed(
      "DROP TRIGGER entries_no_update",
      "UPDATE entries SET author = 'x' || author WHERE position = 12",
    ).catch(() => {})
    await changed("PRAGMA foreign_keys = OFF", "UPDATE entries SET reason = 'slipped in' WHERE position = 12")
    expect(await asked("--rebuild")).toMatchObject({
      ...{ code: 1, whole: false, rebuilt: false },
      brokenAt: { position: 12, why: "its content does not match its hash" },
    })
    const { stdout } = await onDisk(["verify", folder])
    expect(stdout).toContain("is NOT whole")
    expect(stdout).toContain("Entry 12 (")
  })

  it("refuses what is no data folder, and makes none", async () => {
    const empty = join(made.next(), "empty")
    mkdirSync(empty)
    for (const place of [empty, join(empty, "nowhere"), "examples/slowed.json"]) {
      const refused = await onDisk(["verify", place])
      expect([refused.code, refused.stderr]).toEqual([
        1,
        expect.stringContaining("a data folder with a record in it"),
      ])
    }
  })
})
