import { readFile } from "node:fs/promises"
import { sniffedRows } from "../../interop/table/sniff.js"
import type { DecimalSign, Sniffed, TableRow } from "../../interop/table/table-types.js"
import { sheetRows } from "../../interop/table/xlsx/sheet-rows.js"
import type { ScratchFile } from "./scratch.js"

/** The first sheet of a workbook, in place of a table of text. */
export interface WorkbookRows {
  readonly sniffed: Sniffed
  readonly rows: (decimalSign: DecimalSign) => AsyncIterable<TableRow>
}

const LOOKED_AT = 200

/** A workbook is a zip and is read whole; its reader has limits of its own. */
export async function workbookRows({ path }: ScratchFile): Promise<WorkbookRows> {
  const bytes = await readFile(path)
  const first: TableRow[] = []
  for await (const row of sheetRows(bytes)) {
    first.push(row)
    if (first.length === LOOKED_AT) break
  }
  return { sniffed: sniffedRows(first), rows: (decimalSign) => sheetRows(bytes, { decimalSign }) }
}
