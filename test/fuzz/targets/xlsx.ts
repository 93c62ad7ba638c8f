import { readdirSync, readFileSync } from "node:fs"
import { fileURLToPath } from "node:url"
import fc from "fast-check"
import type { TableMapping } from "../../../src/engine/practice-rules.js"
import { readTable } from "../../../src/interop/table/read-table.js"
import { broken } from "../frame/broken.js"
import { chanceFrom } from "../frame/chance.js"
import type { FuzzTarget } from "../frame/target.js"
import { brokenXml } from "../xlsx/broken-xml.js"
import { type ZipPart, zipOf, zipParts } from "../xlsx/zip.js"

const fixtures = fileURLToPath(new URL("../../validation/tables/fixtures/", import.meta.url))
/** Those made to be refused for their size say nothing more when they are broken, and take long. */
const LARGEST_SEED_BYTES = 5000

const files = readdirSync(fixtures)
  .filter((file) => /\.(xlsx|ods)$/.test(file))
  .map((file) => ({ file, bytes: new Uint8Array(readFileSync(`${fixtures}${file}`)) }))
  .filter(({ bytes }) => bytes.length <= LARGEST_SEED_BYTES)
const unpacked = await Promise.all(
  files.filter(({ file }) => /^(visits|stored)/.test(file)).map(({ bytes }) => zipParts(bytes)),
)

/** How the sound workbooks are to be read, so that their rows become children and are not only asked about. */
const mapping: TableMapping = {
  id: "workbooks",
  title: "Workbooks",
  rowIs: "visit",
  dateOrder: "year-month-day",
  decimalSign: ".",
  columns: [
    { heading: "No", field: "number" },
    { heading: "Name", field: "name" },
    { heading: "Date", field: "date" },
    { heading: "AL OD", field: "right.axialLengthMm" },
    { heading: "AL OS", field: "left.axialLengthMm" },
  ],
}

/** A sound workbook in which one part, or a few, are broken inside, or exchanged, left out or there under another name. */
function repacked(seed: number): Uint8Array {
  const workbook = unpacked[seed % unpacked.length] ?? []
  const chance = chanceFrom(seed)
  const texts = workbook.map(({ bytes }) => bytes)
  const asXml = chance.below(5) > 0
  const one = chance.below(workbook.length)
  const parts = workbook.map((part, at): ZipPart => {
    if (at !== one && chance.below(12) > 0) return part
    const { name, bytes } = part
    return { name, bytes: asXml ? brokenXml(bytes, chance) : broken([bytes, bytes, ...texts], seed + at) }
  })
  const first = chance.of(parts)
  const other = chance.of(parts)
  const rest = parts.filter((part) => part !== first)
  switch (chance.below(40)) {
    case 0:
      return zipOf(rest)
    case 1:
      return zipOf([...rest, { name: first.name, bytes: other.bytes }])
    case 2:
      return zipOf([...parts, first])
    case 3:
      return zipOf([...rest, { name: `../${first.name}`, bytes: first.bytes }])
    default:
      return zipOf(parts)
  }
}

/** Workbooks: half of them broken as files, half inside of parts that are packed again. Only words may come of them. */
export const target: FuzzTarget = {
  name: "xlsx",
  share: 2,
  seeds: async () => files.map(({ bytes }) => bytes),
  async read(bytes) {
    const read = await readTable({ file: "fuzz.xlsx", bytes, mapping })
    await readTable({ file: "fuzz.xlsx", bytes, dateOrder: "day-month-year", decimalSign: "," })
    if (read.fragments.length + read.skipped.length === 0)
      throw new Error("nothing was read and nothing said")
    if (read.skipped.some(({ why }) => why.trim() === "")) throw new Error("skipped without a reason")
    return read
  },
  generated: fc.nat({ max: 0x7fffffff }).map(repacked),
}
