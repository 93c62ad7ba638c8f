import { spawn } from "node:child_process"
import { mkdtempSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { fileURLToPath } from "node:url"
import { afterAll, describe, expect, it } from "vitest"
import { openEmbedded, practiceRecord } from "../../src/record/index.js"

const WRITER = fileURLToPath(new URL("writer.ts", import.meta.url))
const KILLS = 4
const folder = mkdtempSync(join(tmpdir(), "lengthwise-kill-"))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** Lets a writer work until it has acknowledged some pairs, kills it without warning, and returns what it acknowledged. */
function killedWriter(childId: string, afterPairs: number): Promise<readonly (readonly string[])[]> {
  const writer = spawn(process.execPath, ["--import", "tsx", WRITER, folder, childId], {
    stdio: ["ignore", "pipe", "inherit"],
  })
  let text = ""
  writer.stdout.on("data", (chunk) => {
    text += chunk
    if (text.split("\n").length > afterPairs) writer.kill("SIGKILL")
  })
  return new Promise((resolve, reject) => {
    writer.on("error", reject)
    writer.on("close", (code, signal) => {
      if (signal !== "SIGKILL") return reject(new Error(`the writer ended by itself with ${code}`))
      // The last line may be cut short by the kill.
      resolve(
        text
          .split("\n")
          .slice(0, -1)
          .map((line) => line.split(" ")),
      )
    })
  })
}

describe("a process killed without warning while it records", () => {
  it("has lost nothing that it acknowledged, kept nothing by halves, and left the chain whole", async () => {
    const acknowledged: string[] = []
    const children: string[] = []
    for (let kill = 0; kill < KILLS; kill++) {
      const childId = crypto.randomUUID()
      children.push(childId)
      acknowledged.push(...(await killedWriter(childId, 20 + 15 * kill)).flat())
    }
    expect(acknowledged.length).toBeGreaterThan(KILLS * 40)

    const database = openEmbedded(folder)
    const record = practiceRecord(database, {
      id: "practice",
      name: "Practice",
      latitude: null,
      settings: {},
    })
    const found = (await Promise.all(children.map((child) => record.entriesOf(child)))).flat()
    const ids = new Set(found.map(({ id }) => id))
    expect(acknowledged.filter((id) => !ids.has(id))).toEqual([])
    const count = (kind: string) => found.filter((entry) => entry.kind === kind).length
    expect(count("visit")).toBe(count("supply"))
    expect(await record.verifyChain()).toMatchObject({ whole: true, entries: found.length })
    for (const child of children) {
      const dates = (await record.courseOf(child))?.visits.map(({ date }) => date)
      expect((await record.child(child))?.lastVisit).toBe(dates?.at(-1))
    }
    await database.close()
  }, 120_000)
})
