/** What a spreadsheet takes as the beginning of a formula. */
const STARTS_FORMULA = /^[=+\-@\t\r\n]/

/**
 * A table as comma-separated text by RFC 4180: every cell in quotes, quotes doubled, lines ended by CR LF. A cell that a
 * spreadsheet would run as a formula gets an apostrophe before it, so that what a person typed is only ever shown.
 *
 * @example
 * csvText({ header: ["what"], rows: [["=1+1"]] }) // => '"what"\r\n"\'=1+1"\r\n'
 */
export function csvText({
  header,
  rows,
}: {
  readonly header: readonly string[]
  readonly rows: readonly (readonly string[])[]
}): string {
  return [header, ...rows].map((row) => `${row.map(cell).join(",")}\r\n`).join("")
}

function cell(text: string): string {
  const shown = STARTS_FORMULA.test(text) ? `'${text}` : text
  return `"${shown.replaceAll('"', '""')}"`
}
