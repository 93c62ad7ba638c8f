import { deepFreeze } from "./freeze.js"
import { carriedTables } from "./generated/tables.js"
import { parseTable } from "./parse-table.js"
import type { Table } from "./types.js"

/** The tables the references are read from, as published. */
export const tables: readonly Table[] = deepFreeze(
  carriedTables.map(({ file, text, provenance }) => parseTable(file, text, provenance)),
)

/** One table by its name, e.g. "growth-references/al_centiles_us_olsm.csv". */
export function table(file: string): Table {
  const found = tables.find((candidate) => candidate.file === file)
  if (found === undefined) throw new Error(`no table ${file} is carried in`)
  return found
}
