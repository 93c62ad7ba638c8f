import type { Delimiter, TableEncoding, TableRow } from "./table-types.js"

/** The rows of a table of text, heading row included, read as they are asked for; throws a `TableFault`. */
export async function* tableRows(
  _source: AsyncIterable<Uint8Array>,
  _form: { readonly encoding: TableEncoding; readonly delimiter: Delimiter },
): AsyncGenerator<TableRow> {}
