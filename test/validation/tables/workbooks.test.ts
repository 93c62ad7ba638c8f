import { readdirSync, readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { readTable } from "../../../src/interop/table/read-table.js"
import type { TableRow } from "../../../src/interop/table/table-types.js"
import { sheetRows } from "../../../src/interop/table/xlsx/sheet-rows.js"

const folder = new URL("fixtures/", import.meta.url)
const fixture = (name: string) => readFileSync(new URL(name, folder))

async function rowsOf(name: string, form = {}): Promise<readonly TableRow[]> {
  const rows: TableRow[] = []
  for await (const row of sheetRows(fixture(name), form)) rows.push(row)
  return rows
}

describe("a sheet of a workbook", () => {
  it.each(["visits.xlsx", "stored.xlsx"])(
    "%s: the first sheet that is shown, days as days, errors empty, percents as percents",
    async (name) => {
      expect(await rowsOf(name)).toEqual([
        { line: 1, cells: ["No", "Name", "Date", "AL OD", "AL OS", "Atropine %"] },
        { line: 3, cells: ["17", "Zoë Núñez", "2025-01-10", "24.12", "", "0.05 %"] },
        { line: 4, cells: ["18", "Íñigo Gil", "2025-01-10", "23.8", "23.9", "", "true"] },
      ])
    },
  )

  it("counts days from 1904 where the workbook does", async () => {
    expect((await rowsOf("visits-1904.xlsx"))[1]?.cells[2]).toBe("2029-01-11")
  })

  it("can be named, also a hidden one, and figures are written with the sign asked for", async () => {
    expect(await rowsOf("visits.xlsx", { sheet: "Hidden" })).toEqual([{ line: 1, cells: ["1"] }])
    expect((await rowsOf("visits.xlsx", { decimalSign: "," }))[1]?.cells[3]).toBe("24,12")
    await expect(rowsOf("visits.xlsx", { sheet: "Other" })).rejects.toThrow('no sheet called "Other"')
  })

  it("is read into visits", async () => {
    const { fragments } = await readTable({ file: "visits.xlsx", bytes: fixture("visits.xlsx") })
    expect(fragments).toEqual([])
    const mapping = {
      id: "m",
      title: "",
      rowIs: "visit",
      dateOrder: "day-month-year",
      decimalSign: ",",
      columns: [
        { heading: "No", field: "number" },
        { heading: "Date", field: "date" },
        { heading: "AL OD", field: "right.axialLengthMm" },
      ],
    } as const
    const mapped = await readTable({ file: "visits.xlsx", bytes: fixture("visits.xlsx"), mapping })
    expect(mapped.fragments.map(({ course }) => course.visits?.[0]?.right?.axialLength?.mm)).toEqual([24.12])
  })
})

describe("a workbook that is not safe is refused with a request for CSV, before it takes memory", () => {
  const hostile = readdirSync(folder).filter(
    (name) => /^(hostile|locked)-?.*\.xlsx$|\.ods$/.test(name) && name !== "locked.xlsx",
  )

  it.each(hostile)("%s", async (name) => {
    const before = process.memoryUsage().rss
    const { fragments, skipped } = await readTable({ file: name, bytes: fixture(name) })
    expect(fragments).toEqual([])
    expect(skipped).toHaveLength(1)
    expect(skipped[0]?.why).toMatch(/CSV|columns/)
    expect(process.memoryUsage().rss - before).toBeLessThan(300_000_000)
  })

  it("locked.xlsx: an older kind or a password is said", async () => {
    const { skipped } = await readTable({ file: "locked.xlsx", bytes: fixture("locked.xlsx") })
    expect(skipped[0]?.why).toContain("password")
  })

  it("cut short at any byte", async () => {
    const whole = fixture("visits.xlsx")
    for (let length = 4; length < whole.length; length += 37) {
      const { fragments, skipped } = await readTable({ file: "cut.xlsx", bytes: whole.subarray(0, length) })
      expect(fragments).toEqual([])
      expect(skipped.length).toBeGreaterThan(0)
    }
  })
})
