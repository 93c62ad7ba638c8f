import type { DecimalSign, TableRow } from "../table-types.js"

/** Whether a file is an Excel workbook of today's kind, a zip of XML. */
export const isWorkbook = (bytes: Uint8Array): boolean =>
  bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 3 && bytes[3] === 4

/**
 * The rows of a sheet of a workbook, the first one unless named. Figures are written with the decimal sign asked for,
 * days as YYYY-MM-DD. Throws a `TableFault` where the file is not safe or not sound.
 */
export async function* sheetRows(
  _bytes: Uint8Array,
  _form: { readonly sheet?: string | undefined; readonly decimalSign?: DecimalSign | undefined } = {},
): AsyncGenerator<TableRow> {}
