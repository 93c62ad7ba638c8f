import type { Sniffed, TableRow } from "./table-types.js"

/** As much of a file as `sniff` looks at. */
export const SNIFFED_BYTES = 256 * 1024

/** What the beginning of a file of text says of its table. */
export function sniff(_bytes: Uint8Array): Sniffed {
  return sniffedRows([])
}

/** The same of rows that were read already, such as those of a sheet. */
export function sniffedRows(_rows: readonly TableRow[]): Sniffed {
  return {
    encoding: "utf-8",
    delimiter: ",",
    decimalSign: "unclear",
    hasHeadings: true,
    headings: [],
    firstRows: [],
    dateOrders: [],
    notes: [],
    fault: null,
  }
}
