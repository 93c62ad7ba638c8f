import { spawn } from "node:child_process"
import {
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterEach, beforeEach, describe, expect, it } from "vitest"

/** The build script in a folder of its own, with a compiler that only writes down when it starts and ends. */
const COMPILER = `
  const { appendFileSync } = require("node:fs")
  appendFileSync("log", "start\\n")
  setTimeout(() => appendFileSync("log", "end\\n"), 400)
`

let root: string
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "build-"))
  for (const folder of ["scripts", "src/engine", "node_modules/typescript/bin"]) {
    mkdirSync(join(root, folder), { recursive: true })
  }
  copyFileSync(new URL("../../scripts/build.mjs", import.meta.url), join(root, "scripts/build.mjs"))
  writeFileSync(join(root, "node_modules/.package-lock.json"), "{}")
  writeFileSync(join(root, "node_modules/typescript/bin/tsc"), COMPILER)
  writeFileSync(join(root, "scripts/words.mjs"), "")
  writeFileSync(join(root, "src/engine/growth.ts"), "")
})
afterEach(() => rmSync(root, { recursive: true }))

const build = () =>
  new Promise<{ code: number | null; stdout: string }>((resolve) => {
    const child = spawn(process.execPath, [join(root, "scripts/build.mjs"), "--no-web"])
    let stdout = ""
    child.stdout.on("data", (part) => {
      stdout += part
    })
    child.on("close", (code) => resolve({ code, stdout }))
  })
const log = () => readFileSync(join(root, "log"), "utf8").trim().split("\n")
const changedIn = (seconds: number) => {
  const when = new Date(Date.now() + 1000 * seconds)
  utimesSync(join(root, "src/engine/growth.ts"), when, when)
}

describe("the build", () => {
  it("runs once when two processes ask for it at the same time, and says nothing on stdout", async () => {
    const both = await Promise.all([build(), build()])
    expect(both).toEqual([
      { code: 0, stdout: "" },
      { code: 0, stdout: "" },
    ])
    expect(log()).toEqual(["start", "end"])
  })

  it("is skipped when nothing changed, and done again when a source did", async () => {
    changedIn(-60)
    await build()
    await build()
    expect(log()).toHaveLength(2)
    changedIn(60)
    await build()
    expect(log()).toHaveLength(4)
  })

  it("takes over the lock of a process that has gone", async () => {
    mkdirSync(join(root, "dist/.build-lock"), { recursive: true })
    writeFileSync(join(root, "dist/.build-lock/pid"), "999999999")
    expect(await build()).toMatchObject({ code: 0 })
  })

  it("stops, and is done again, while a language lacks a text", async () => {
    writeFileSync(join(root, "scripts/words.mjs"), "process.exit(1)")
    expect((await build()).code).toBe(1)
    writeFileSync(join(root, "scripts/words.mjs"), "")
    expect((await build()).code).toBe(0)
    expect(log()).toHaveLength(4)
  })

  it("leaves no stamp when the compiler fails", async () => {
    writeFileSync(join(root, "node_modules/typescript/bin/tsc"), "process.exit(2)")
    expect((await build()).code).toBe(1)
    writeFileSync(join(root, "node_modules/typescript/bin/tsc"), COMPILER)
    await build()
    expect(log()).toEqual(["start", "end"])
  })
})
