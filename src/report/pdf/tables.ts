import type { Block } from "../document.js"
import { ACCENT, LINE, SOFT } from "./inks.js"
import { content } from "./literals.js"

const LINE_UNDER = `table.hline(stroke: 0.5pt + ${LINE})`

export function pairs(rows: readonly (readonly [string, string])[]): string {
  const cells = rows.map(([label, value]) => `text(fill: ${SOFT}, ${content(label)}), ${content(value)}`)
  return `#table(columns: (30%, 1fr), column-gutter: 6mm, ${cells.join(`, ${LINE_UNDER}, `)})`
}

/** A table; its head stands again on every page it runs over, and a row is never cut. */
export function table({ head, rows, figures = [] }: Extract<Block, { kind: "table" }>): string {
  const align = head.map((_, column) => (figures.includes(column) ? "right" : "left")).join(", ")
  const header = head
    .map((title) => `text(size: 8.5pt, fill: ${SOFT}, weight: 600, ${content(title)})`)
    .join(", ")
  const body = rows.map((row) => row.map(cell).join(", ")).join(`, ${LINE_UNDER}, `)
  const parts = [
    `columns: (${columnWidths(head, rows).join(", ")},)`,
    "column-gutter: 4mm",
    `align: (${align},)`,
    `table.header(${header})`,
    `table.hline(stroke: 0.8pt + ${ACCENT})`,
    ...(body === "" ? [] : [body]),
  ]
  return `#table(${parts.join(", ")})`
}

const cell = (text: string): string => `table.cell(breakable: false, ${content(text)})`

/** Columns of long text share what is left over; short ones take what they need. */
function columnWidths(head: readonly string[], rows: readonly (readonly string[])[]): readonly string[] {
  const longest = head.map((title, column) =>
    Math.max(widthOf(title), ...rows.map((row) => widthOf(row[column] ?? ""))),
  )
  const isLong = longest.map((length) => length > 18)
  if (!isLong.includes(true)) return head.map((_, column) => (column === 0 ? "1fr" : "auto"))
  return longest.map((length, column) => (isLong[column] ? `${Math.min(length, 60)}fr` : "auto"))
}

/** In letters of Latin width; a Chinese one is twice as wide. */
const widthOf = (text: string): number =>
  [...text].reduce(
    (width, letter) => width + (/\p{Script=Han}|[\u3000-\u303f\uff00-\uffef]/u.test(letter) ? 2 : 1),
    0,
  )
