import type { TableMapping } from "../../engine/practice-rules.js"
import type { RowReading, TableProblem, TableRow } from "./table-types.js"

/** What one row says by a mapping. Null when nothing of it may be taken; the problems say why. */
export function rowReading(
  _row: TableRow,
  _mapping: TableMapping,
  _headings: readonly string[],
): { readonly reading: RowReading | null; readonly problems: readonly TableProblem[] } {
  return { reading: null, problems: [] }
}
