import { describe, expect, it } from "vitest"
import { commandLine, json } from "./fake-io.js"

const files = { "visits.csv": Buffer.from("ID,Date,AL OD\n17,03/04/2025,24.1\n") }

describe("lengthwise read of a table", () => {
  it("takes nothing while the order of its days is open, and names the option", async () => {
    const { code, stdout, stderr } = await commandLine(["read", "visits.csv"], { files })
    expect(code).toBe(1)
    expect(stdout + stderr).toContain("--date-order day-month-year | month-day-year")
  })

  it("reads it once the order is said", async () => {
    const { code, stdout } = await commandLine(
      ["read", "visits.csv", "--date-order", "day-month-year", "--json"],
      { files },
    )
    expect(code).toBe(0)
    expect(stdout).toContain("2025-04-03")
    expect(stdout).toContain("24.1")
  })
})

describe("what lengthwise read writes of very many", () => {
  const today = "2026-11-26"
  const read = async (files: Readonly<Record<string, Uint8Array>>) => {
    const found = await commandLine(["read", ...Object.keys(files), "--json"], { files, today })
    const assessed = await commandLine(["assess", "-", "--json"], { files: { "-": found.stdout }, today })
    return { found: json(found), assessed }
  }

  it("is taken by assess: notes and what was skipped are listed up to a number, the rest is counted", async () => {
    const course = { lengthwise: 1, child: { id: "8", born: "2018-01-01", sex: "male" }, visits: [] }
    const unknown = Object.fromEntries(Array.from({ length: 2500 }, (_, index) => [`field${index}`, 1]))
    const skipped = Array.from({ length: 1200 }, (_, index) => [`empty-${index}`, new Uint8Array()] as const)
    const { found, assessed } = await read({
      "a.json": Buffer.from(JSON.stringify({ ...course, ...unknown })),
      ...Object.fromEntries(skipped),
    })
    expect(found.notes).toHaveLength(1001)
    expect(found.notes.at(-1).why).toBe("1500 more notes are not listed")
    expect(found.skipped).toHaveLength(1001)
    expect(found.skipped.at(-1).why).toBe("200 more are not listed.")
    expect(assessed.stderr).toBe("")
    expect(assessed.code).toBe(0)
  })

  it("is taken by assess: of thousands of children the rest is counted", async () => {
    const rows = Array.from({ length: 2500 }, (_, index) => `${index},2018-01-01,male,2025-01-10,24.1`)
    const { found, assessed } = await read({
      "a.csv": Buffer.from(`ID,DOB,Sex,Date,AL OD\n${rows.join("\n")}\n`),
    })
    expect(found.others).toHaveLength(1000)
    expect(found.skipped.at(-1).why).toBe("1499 more children are not listed: read fewer files at a time.")
    expect(assessed.code).toBe(0)
  })
})
