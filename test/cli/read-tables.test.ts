import { describe, expect, it } from "vitest"
import { commandLine } from "./fake-io.js"

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
