import * as fc from "fast-check"
import Papa from "papaparse"
import { describe, expect, it } from "vitest"
import { csvText } from "../../src/interop/table/csv-text.js"
import { readDate } from "../../src/interop/table/dates.js"
import { readNumber } from "../../src/interop/table/numbers.js"
import { tableRows } from "../../src/interop/table/table-rows.js"
import { DELIMITERS, TABLE_ENCODINGS, type TableEncoding } from "../../src/interop/table/table-types.js"

const cell = fc.string({ unit: fc.constantFrom(..."abñé東😀1.,;|\t\"\r\n '-+="), maxLength: 8 })
const table = fc
  .integer({ min: 1, max: 5 })
  .chain((width) =>
    fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 6 }),
  )

/** In pieces of a few bytes, so that letters, quotes and line ends are cut in two. */
async function* pieces(bytes: Uint8Array, size: number): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size)
}

async function rowsOf(bytes: Uint8Array, form: Parameters<typeof tableRows>[1] & { readonly size: number }) {
  const rows: (readonly string[])[] = []
  for await (const { cells } of tableRows(pieces(bytes, form.size), form)) rows.push(cells)
  return rows
}

function encoded(text: string, encoding: TableEncoding): Uint8Array {
  if (encoding === "utf-8") return Buffer.from(text)
  const wide = Buffer.from(text, "utf16le")
  return encoding === "utf-16be" ? wide.swap16() : wide
}

describe("tables of any text", () => {
  it("what csvText writes is read back, but for the apostrophe that keeps a spreadsheet from running it", async () => {
    await fc.assert(
      fc.asyncProperty(table, fc.integer({ min: 1, max: 9 }), async (rows, size) => {
        const [header = [], ...body] = rows
        const read = await rowsOf(Buffer.from(csvText({ header, rows: body })), {
          encoding: "utf-8",
          delimiter: ",",
          size,
        })
        const shown = rows.map((cells) =>
          cells.map((text) => (/^[=+\-@\t\r\n]/.test(text) ? `'${text}` : text)),
        )
        // A first row that names the delimiter is a spreadsheet's hint; no cell here makes one.
        expect(read).toEqual(shown)
      }),
    )
  })

  it("papaparse reads the same rows, in every delimiter and encoding and however the bytes are cut", async () => {
    const forms = fc.record({
      delimiter: fc.constantFrom(...DELIMITERS),
      encoding: fc.constantFrom(...TABLE_ENCODINGS.filter((name) => name !== "windows-1252")),
      size: fc.integer({ min: 1, max: 9 }),
      newline: fc.constantFrom("\r\n" as const, "\n" as const),
    })
    await fc.assert(
      fc.asyncProperty(table, forms, async (rows, { newline, ...form }) => {
        const { delimiter } = form
        const text = Papa.unparse(rows, { delimiter, newline, quotes: true })
        const theirs = Papa.parse<string[]>(text, { delimiter, newline }).data
        expect(await rowsOf(encoded(text, form.encoding), form)).toEqual(theirs)
      }),
    )
  })

  it("a figure that is written with a sign is read back with it, and never with the other", () => {
    const figure = fc.integer({ min: -99_999, max: 99_999 }).map((hundredths) => hundredths / 100)
    fc.assert(
      fc.property(figure, (value) => {
        const pointed = value.toFixed(2)
        const comma = pointed.replace(".", ",")
        expect(readNumber(pointed, ".")).toEqual({ value: value + 0 })
        expect(readNumber(comma, ",")).toEqual({ value: value + 0 })
        expect(readNumber(comma, ".")).toHaveProperty("fault")
        expect(readNumber(pointed, ",")).toHaveProperty("fault")
      }),
    )
  })

  it("a day is read back in its order", () => {
    const day = fc.date({ min: new Date("1990-01-01"), max: new Date("2090-12-31"), noInvalidDate: true })
    fc.assert(
      fc.property(day, fc.constantFrom("/", "-", "."), (when, sign) => {
        const date = when.toISOString().slice(0, 10)
        const [y, m, d] = date.split("-")
        expect(readDate([d, m, y].join(sign), "day-month-year")).toEqual({ date })
        expect(readDate([m, d, y].join(sign), "month-day-year")).toEqual({ date })
        expect(readDate([y, m, d].join(sign), "day-month-year")).toEqual({ date })
      }),
    )
  })
})
