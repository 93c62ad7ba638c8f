import { spawn } from "node:child_process"
import { mkdirSync, mkdtempSync, readdirSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { fileURLToPath } from "node:url"
import { afterAll, describe, expect, it } from "vitest"
import { migrate, openEmbedded, practiceRecord, practicesIn } from "../../src/record/index.js"
import { startServer } from "../../src/server/main.js"

const IMPORTER = fileURLToPath(new URL("importer.ts", import.meta.url))
const place = mkdtempSync(join(tmpdir(), "lengthwise-import-kill-"))
const folder = join(place, "data")
mkdirSync(folder)
afterAll(() => rmSync(place, { recursive: true, force: true }))

/** Lets an import come so far, then kills it without warning. */
function killedAt(progress: string): Promise<void> {
  const importer = spawn(process.execPath, ["--import", "tsx", IMPORTER, folder], {
    stdio: ["ignore", "pipe", "inherit"],
  })
  let text = ""
  importer.stdout.on("data", (chunk) => {
    text += chunk
    if (text.includes(progress)) importer.kill("SIGKILL")
  })
  return new Promise((resolve, reject) => {
    importer.on("error", reject)
    importer.on("close", (code, signal) =>
      signal === "SIGKILL" ? resolve() : reject(new Error(`it ended by itself with ${code}: ${text}`)),
    )
  })
}

async function look() {
  const database = openEmbedded(folder)
  await migrate(database)
  const [practice] = await practicesIn(database.queries)
  if (!practice) throw new Error("no practice")
  const record = practiceRecord(database, practice)
  const found = {
    chain: await record.verifyChain(),
    children: (await record.children({ page: 1, pageSize: 1 })).total,
    states: (await record.imports.list({ page: 1, pageSize: 10 })).imports.map(({ state }) => state),
    scratch: readdirSync(record.scratchFolder),
  }
  await database.close()
  return found
}

describe("an import killed without warning", () => {
  it("is known to the next start, which takes it back whole and sweeps what it left", async () => {
    await killedAt("recorded: 20 %")
    const before = await look()
    expect(before.states).toEqual(["running"])
    expect(before.children).toBeGreaterThan(0)
    expect(before.chain).toMatchObject({ whole: true })

    const server = await startServer({ dataFolder: folder, port: 0, say: () => {} })
    await server.close()
    const after = await look()
    expect(after.states).toEqual(["interrupted"])
    expect(after.children).toBe(0)
    expect(after.chain).toMatchObject({ whole: true })
    expect(after.scratch).toEqual([])
  }, 240_000)
})
