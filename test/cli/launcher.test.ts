import { spawnSync } from "node:child_process"
import { mkdtempSync, readFileSync, rmSync, symlinkSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { fileURLToPath } from "node:url"
import { afterAll, beforeAll, describe, expect, it } from "vitest"

const launcher = fileURLToPath(new URL("../../lengthwise", import.meta.url))
const example = readFileSync(new URL("../../examples/slowed.json", import.meta.url), "utf8")

describe("the launcher at the root", { timeout: 300_000 }, () => {
  let elsewhere: string
  const run = (argv: readonly string[], input = "") => {
    const { status, stdout } = spawnSync(join(elsewhere, "lengthwise"), argv, {
      cwd: elsewhere,
      input,
      encoding: "utf8",
    })
    return { status, stdout }
  }
  beforeAll(() => {
    elsewhere = mkdtempSync(join(tmpdir(), "launch-"))
    symlinkSync(launcher, join(elsewhere, "lengthwise"))
    // Builds what is out of date; the tests below then start at once.
    run(["--version"])
  }, 300_000)
  afterAll(() => rmSync(elsewhere, { recursive: true }))

  it("works through a link and from another folder, with the answer alone on stdout", () => {
    const { status, stdout } = run(["refraction", "-2.25 -0.50 x 180", "--json"])
    expect(status).toBe(0)
    expect(JSON.parse(stdout)).toMatchObject({ m: -2.5, printed: "-2.25 -0.50 x 180" })
  })

  it("hands stdin on to the command", () => {
    const { status, stdout } = run(["assess", "-", "--as-of", "2026-08-01", "--json"], example)
    expect(status).toBe(0)
    expect(JSON.parse(stdout).asOf).toBe("2026-08-01")
  })

  it.each([
    [1, ["assess", "no-such-file.json"]],
    [2, ["no-such-verb"]],
  ])("exits %i as the command does: %j", (code, argv) => {
    expect(run(argv)).toEqual({ status: code, stdout: "" })
  })
})
