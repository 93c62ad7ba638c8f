import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterEach, beforeEach, expect, it } from "vitest"
import { run } from "../../src/cli/commands/import.js"
import { processIo } from "../../src/cli/process-io.js"
import { lockFolder, openEmbedded, practiceRecord, practicesIn } from "../../src/record/index.js"

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "lengthwise-import-"))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

const COURSE = {
  lengthwise: 1,
  child: { id: "K-1", born: "2017-09-05", sex: "female" },
  visits: [{ date: "2025-01-10", right: { axialLength: { mm: 23.8 } } }],
  treatments: [{ from: "2025-01-10", kind: "atropine", concentrationPercent: 0.05 }],
}

const put = (name: string, content: unknown): string => {
  const file = join(folder, name)
  writeFileSync(file, typeof content === "string" ? content : JSON.stringify(content))
  return file
}

async function imported(files: readonly string[], { json = true } = {}) {
  let out = ""
  let error = ""
  const io = {
    ...processIo,
    today: () => "2026-01-01",
    out: (text: string | Uint8Array) => {
      out += text
    },
    error: (text: string) => {
      error += text
    },
  }
  const code = await run({ files, data: join(folder, "data"), json }, io)
  return { code, out, error, answer: json && out ? JSON.parse(out) : null }
}

async function practice<T>(look: (record: ReturnType<typeof practiceRecord>) => Promise<T>): Promise<T> {
  const database = openEmbedded(join(folder, "data"))
  try {
    const [known] = await practicesIn(database.queries)
    if (!known) throw new Error("no practice")
    return await look(practiceRecord(database, known))
  } finally {
    await database.close()
  }
}

it("makes a practice and the child of a course file, and changes nothing the second time", async () => {
  mkdirSync(join(folder, "in"))
  put("in/course.json", COURSE)
  const first = await imported([join(folder, "in")])
  expect(first).toMatchObject({ code: 0, answer: { recorded: 1, known: 0, waiting: 0, skipped: [] } })
  expect(first.answer.taken[0].why).toContain("gives no name")
  const head = await practice((record) => record.head())
  expect(await imported([join(folder, "in")])).toMatchObject({ code: 0, answer: { recorded: 0, known: 1 } })
  expect(await practice((record) => record.head())).toBe(head)
  const course = await practice((record) => record.courseOf(first.answer.taken[0].child))
  expect(course).toMatchObject({ treatments: [{ kind: "atropine" }], visits: [{ date: "2025-01-10" }] })
})

it("says why a file was skipped, takes the others, and fails when it took none", async () => {
  const note = put("note.bin", "\u0000\u0001 no file of ours")
  const missing = join(folder, "missing.dcm")
  expect(await imported([note, missing])).toMatchObject({ code: 1, answer: { taken: [], skipped: [{}, {}] } })
  const both = await imported([note, put("course.json", COURSE)], { json: false })
  expect(both.code).toBe(0)
  expect(both.out).toContain("1 recorded, 0 known already, 0 waiting in the Inbox, 1 skipped")
})

it("refuses a folder that a server holds, and a table beside other files", async () => {
  const course = put("course.json", COURSE)
  const lock = lockFolder(join(folder, "data"))
  const held = await imported([course])
  lock.release()
  expect(held.code).toBe(1)
  expect(held.error).toContain("in use by another Lengthwise")
  expect((await imported([course, put("table.csv", "a;b")], { json: false })).error).toContain(
    "import it alone",
  )
})
