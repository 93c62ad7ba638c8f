export type Cell = string | number | boolean | null | undefined

/** What a spreadsheet takes as the beginning of a formula. */
const STARTS_FORMULA = /^[=+\-@\t\r\n]/

/**
 * A row of a table by RFC 4180, with its line end. Figures and days stand as they are; a text that a spreadsheet would
 * run as a formula gets an apostrophe before it; what is absent is an empty cell.
 *
 * @example
 * csvRow(["Mira", -2.25, true, undefined, "=1+1"]) // => 'Mira,-2.25,yes,,\'=1+1\r\n'
 */
export function csvRow(cells: readonly Cell[]): string {
  return `${cells.map(cellText).join(",")}\r\n`
}

function cellText(cell: Cell): string {
  if (cell === null || cell === undefined) return ""
  if (typeof cell === "number") return String(cell)
  if (typeof cell === "boolean") return cell ? "yes" : "no"
  const shown = STARTS_FORMULA.test(cell) ? `'${cell}` : cell
  return /[",\r\n]/.test(shown) ? `"${shown.replaceAll('"', '""')}"` : shown
}
