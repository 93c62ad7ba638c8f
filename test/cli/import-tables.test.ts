import { mkdirSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { afterAll, describe, expect, it } from "vitest"
import { folders, onDisk } from "./practice-folder.js"

const made = folders()
afterAll(made.clear)

const HEADINGS = "Number,Name,Date of birth,Sex,Date,AL OD mm,AL OS mm"
const NOOR = [
  "N-1,Noor Haddad,2016-05-01,male,2024-02-01,23.91,23.88",
  "N-1,Noor Haddad,2016-05-01,male,2024-08-01,24.10,24.05",
]
const WORKBOOK = "test/validation/tables/fixtures/visits.xlsx"

/** A data folder and a way to import a table into it. */
function place() {
  const folder = made.next()
  const data = join(folder, "data")
  mkdirSync(data)
  const write = (name: string, lines: readonly string[]): string => {
    const file = join(folder, name)
    writeFileSync(file, `${lines.join("\n")}\n`)
    return file
  }
  return {
    write,
    run: (file: string, ...options: readonly string[]) =>
      onDisk(["import", file, "--data", data, ...options]),
    head: async () => JSON.parse((await onDisk(["verify", data, "--json"])).stdout).head,
  }
}

describe("lengthwise import of a table", () => {
  it("takes it as one import, says where the first log-in is, and changes nothing the second time", async () => {
    const { write, run, head } = place()
    const file = write("lengths.csv", [HEADINGS, ...NOOR])
    const first = await run(file, "--json")
    expect(first.stderr).toContain("its first log-in stands in")
    expect([first.code, JSON.parse(first.stdout)]).toEqual([
      0,
      {
        import: expect.stringMatching(/^[0-9a-f-]{36}$/),
        children: { new: 1, known: 0 },
        visits: { new: 2, addedTo: 0 },
        rows: 2,
        columnsLeftOut: [],
        skippedCount: 0,
        skipped: [],
      },
    ])
    const before = await head()
    const second = await run(file)
    expect(second.code).toBe(0)
    expect(second.stdout).toContain("Nothing was new; nothing was recorded.")
    expect(await head()).toBe(before)
  }, 60_000)

  it("takes nothing while something is open, and names the option that says it", async () => {
    const { write, run } = place()
    const days = write("days.csv", [HEADINGS, "N-1,Noor Haddad,03/04/2016,male,05/06/2024,23.91,23.88"])
    const open = await run(days)
    expect(open.code).toBe(1)
    expect(open.stderr).toContain("Say it with --date-order day-month-year | month-day-year.")
    const json = await run(days, "--json")
    expect(json.code).toBe(1)
    expect(JSON.parse(json.stdout).problems).toEqual([
      expect.objectContaining({ path: "--date-order", value: "Date of birth, Date" }),
    ])
    const said = await run(days, "--date-order", "day-month-year", "--json")
    expect([said.code, JSON.parse(said.stdout).visits.new]).toEqual([0, 1])

    const signs = write("signs.csv", ["Number;Date;AL OD mm", "N-1;2024-09-01;23.910"])
    const unclear = await run(signs)
    expect(unclear.code).toBe(1)
    expect(unclear.stderr).toContain("Say it with --decimal")
    const nobody = write("nobody.csv", ["Date,AL OD mm", "2024-09-01,23.91"])
    expect((await run(nobody)).stderr).toContain("Say it with --mapping.")
  }, 60_000)

  it("takes the rest of a table with faults, and lists those by line; a near match is left to a person", async () => {
    const { write, run } = place()
    await run(write("first.csv", [HEADINGS, ...NOOR]))
    const later = write("later.csv", [
      HEADINGS,
      "N-2,Ida Berg,2015-03-03,female,2024-02-01,249.1,24.88",
      "N-3,Bo Lind,,male,2024-02-01,24.91,24.88",
      "N-5,Eva Holm,2014-03-03,female,2024-02-01,24.91,24.88",
      ",Nour Haddad,2016-05-01,male,2025-02-01,24.31,24.28",
    ])
    const { code, stdout } = await run(later, "--json")
    const told = JSON.parse(stdout)
    expect([code, told.children, told.visits.new]).toEqual([0, { new: 2, known: 0 }, 2])
    expect(told.skippedCount).toBe(3)
    const skipped = told.skipped.map(({ where, why }: { where: string; why: string }) => `${where}: ${why}`)
    expect(skipped).toEqual([
      expect.stringMatching(/^line 2, AL OD mm: .*15 to 40 mm/),
      expect.stringMatching(/^line 3, Bo Lind: .*date of birth is missing/),
      expect.stringMatching(/^line 5, Nour Haddad: may be Noor Haddad .*decide on the page$/),
    ])
  }, 60_000)

  it("reads a workbook", async () => {
    const { write, run } = place()
    await run(write("children.csv", ["Number,Name,Date of birth,Sex", "18,Íñigo Gil,2015-11-09,male"]))
    const open = await run(WORKBOOK)
    expect(open.code).toBe(1)
    expect(open.stderr).toContain("Which column holds the first day of the treatment?")
    const mapping = write("mapping.json", [
      JSON.stringify({
        ...{ id: "w", title: "Workbook", rowIs: "visit", dateOrder: "year-month-day", decimalSign: "." },
        columns: [
          { heading: "No", field: "number" },
          { heading: "Name", field: "name" },
          { heading: "Date", field: "date" },
          { heading: "AL OD", field: "right.axialLengthMm" },
          { heading: "AL OS", field: "left.axialLengthMm" },
        ],
      }),
    ])
    const { code, stdout } = await run(WORKBOOK, "--mapping", mapping, "--json")
    expect([code, JSON.parse(stdout).rows]).toEqual([0, 2])
    expect(JSON.parse(stdout).skipped[0].where).toMatch(/^line \d, /)
  }, 60_000)

  it("refuses what is no table, what is not there and a mapping that is none, with the reason; columns not read from are named", async () => {
    const { run, write } = place()
    expect((await run(write("empty.csv", [""]))).code).toBe(1)
    const odd = await run(write("odd.csv", [`${HEADINGS},Shoe size`, `${NOOR[0]},31`]))
    expect(odd.stdout).toContain("Columns left out: Shoe size\n")
    const none = await run(join(made.next(), "none.csv"))
    expect([none.code, none.stderr]).toEqual([
      1,
      expect.stringContaining("none.csv cannot be read: there is no such file."),
    ])
    const mapping = write("bad.json", ['{"rowIs":"week"}'])
    const bad = await run(write("lengths.csv", [HEADINGS, ...NOOR]), "--mapping", mapping)
    expect([bad.code, bad.stderr]).toEqual([1, expect.stringContaining("rowIs")])
  }, 60_000)
})
