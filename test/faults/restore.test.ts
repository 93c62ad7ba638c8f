import { spawn } from "node:child_process"
import { existsSync, readdirSync } from "node:fs"
import { join } from "node:path"
import { setTimeout } from "node:timers/promises"
import { fileURLToPath } from "node:url"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { folders, onDisk, practiceFolder } from "../cli/practice-folder.js"

const RESTORER = fileURLToPath(new URL("restorer.ts", import.meta.url))
const made = folders()
afterAll(made.clear)

/** Kills a restore so many milliseconds after it began to store; true when it had not ended by then. */
function killedRestore(file: string, folder: string, afterMs: number): Promise<boolean> {
  const restorer = spawn(process.execPath, ["--import", "tsx", RESTORER, file, folder], {
    stdio: ["ignore", "pipe", "inherit"],
  })
  restorer.stdout.on("data", async (told) => {
    if (!String(told).includes("storing")) return
    await setTimeout(afterMs)
    restorer.kill("SIGKILL")
  })
  return new Promise((resolve, reject) => {
    restorer.on("error", reject)
    restorer.on("close", (_code, signal) => resolve(signal === "SIGKILL"))
  })
}

describe("a restore that is killed without warning", () => {
  const file = join(made.next(), "practice.zip")
  beforeAll(async () => {
    const folder = made.next()
    await practiceFolder(folder)
    await onDisk(["export", folder, "--format", "archive", "--no-papers", "--out", file])
  }, 120_000)

  it("leaves no record by halves: none at all or the whole, and the next one goes through", async () => {
    const outcomes: string[] = []
    for (const afterMs of [0, 40, 120, 250]) {
      const folder = join(made.next(), "new")
      const wasKilled = await killedRestore(file, folder, afterMs)
      const hasRecord = existsSync(join(folder, "record.sqlite"))
      outcomes.push(`${wasKilled ? "killed" : "ended"}, ${hasRecord ? "whole" : "nothing"}`)
      if (!hasRecord) {
        expect(
          readdirSync(folder).filter(
            (name) =>
              !["lock.sqlite", "lock.sqlite-journal", "restoring"].includes(name) &&
              !name.endsWith("log-in.txt"),
          ),
        ).toEqual([])
        expect((await onDisk(["import", file, "--data", folder])).code).toBe(0)
      }
      const verified = JSON.parse((await onDisk(["verify", folder, "--json"])).stdout)
      expect(verified).toMatchObject({ whole: true, children: 6 })
      expect(readdirSync(folder)).not.toContain("restoring")
    }
    expect(outcomes).toContain("killed, nothing")
  }, 240_000)
})
