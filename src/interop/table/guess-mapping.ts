import type { TableMapping } from "../../engine/practice-rules.js"

/** Which column holds what, as far as headings and values say so for sure; the rest is left unmapped. */
export function guessMapping(
  _headings: readonly string[],
  _firstRows: readonly (readonly string[])[],
): TableMapping {
  return { id: "", title: "", rowIs: "visit", dateOrder: "year-month-day", decimalSign: ".", columns: [] }
}
