import { readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { readTable } from "../../../src/interop/table/read-table.js"
import { sniff } from "../../../src/interop/table/sniff.js"
import { rowsOfBytes } from "../../../src/interop/table/table-rows.js"
import type { Delimiter } from "../../../src/interop/table/table-types.js"

const fixture = (name: string) => readFileSync(new URL(`fixtures/${name}`, import.meta.url))

interface Answer {
  readonly name: string
  readonly delimiter: Delimiter
  readonly text: string
  readonly rows: readonly (readonly string[])[]
}
const answers: readonly Answer[] = JSON.parse(fixture("python-csv.json").toString("utf8"))

describe("rows of text are those that Python's csv module reads", () => {
  it.each(answers.map((answer) => [answer.name, answer] as const))("%s", (_, { text, delimiter, rows }) => {
    const read = rowsOfBytes(Buffer.from(text), { encoding: "utf-8", delimiter })
    expect(read.map(({ cells }) => cells)).toEqual(rows)
  })
})

describe("one table in every writing of text that is read", () => {
  const writings = [
    ["visits-utf-8.csv", "utf-8"],
    ["visits-utf-8-bom.csv", "utf-8"],
    ["visits-utf-16le.csv", "utf-16le"],
    ["visits-utf-16be.csv", "utf-16be"],
    ["visits-utf-16le-no-mark.csv", "utf-16le"],
    ["visits-windows-1252.csv", "windows-1252"],
  ] as const

  it.each(writings)("%s", async (name, encoding) => {
    const bytes = fixture(name)
    expect(sniff(bytes)).toMatchObject({
      encoding,
      delimiter: ";",
      decimalSign: ",",
      hasHeadings: true,
      fault: null,
    })
    const { fragments, skipped } = await readTable({ file: name, bytes })
    // A column with M and F is read as female and male; the last column is left out and said.
    expect(fragments.map(({ identity }) => identity)).toEqual([
      { number: "0017", name: "Zoë Núñez Peña", born: "2017-03-14", sex: "female" },
      { number: "0018", name: "Íñigo Gil Ríos", born: "2015-12-02", sex: "male" },
    ])
    expect(fragments[0]?.course.visits).toMatchObject([
      {
        date: "2025-01-28",
        right: { axialLength: { mm: 24.12 }, refraction: { sphere: -2.25, cylinder: -0.5, axis: 180 } },
        left: { axialLength: { mm: 24.05 }, refraction: { sphere: -2 } },
      },
      {
        date: "2025-07-10",
        right: { axialLength: { mm: 24.25 }, refraction: { sphere: -2.5, cylinder: -0.5, axis: 175 } },
        left: { refraction: { sphere: -2.25, cylinder: 0 } },
      },
    ])
    expect(fragments[0]?.course.visits?.[1]?.left?.axialLength).toBeUndefined()
    // 31 February, 238 mm and a unit beside a figure: each refused where it stands, the rest is taken.
    expect(fragments[1]?.course.visits).toMatchObject([
      { date: "2025-03-03", right: { refraction: { sphere: -1 } } },
    ])
    expect(fragments[1]?.course.visits?.[0]?.right?.axialLength).toBeUndefined()
    const told = skipped.map(({ why }) => why)
    expect(told).toContainEqual(
      expect.stringContaining('Line 4, column "Fecha" must be a day of the calendar, not "31/02/2025".'),
    )
    expect(told).toContainEqual(
      'Line 5, column "AL OD (mm)" must be a number from 15 to 40 mm, not "238". Did you mean 23.8?',
    )
    expect(told).toContainEqual(
      expect.stringContaining('Line 5, column "Sph OS" must be a number from -30 to 30 D, not "-1,25 D".'),
    )
    expect(told).toContain('The column "Notas" is left out.')
  })

  it.each([
    ["chinese-gb18030.csv", "gb18030"],
    ["japanese-shift-jis.csv", "shift_jis"],
  ])("%s is refused, since a name read wrongly is another name", (name, other) => {
    const { fault } = sniff(fixture(name))
    expect(fault).toContain("none of the ways")
    if (other === "gb18030") expect(fault).toContain(other)
  })
})
