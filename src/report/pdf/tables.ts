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
  const isTight = isTooWide(head, rows)
  const header = head
    .map((title) => `text(size: ${isTight ? "7" : "8.5"}pt, fill: ${SOFT}, weight: 600, ${content(title)})`)
    .join(", ")
  const body = rows.map((row) => row.map(cell).join(", ")).join(`, ${LINE_UNDER}, `)
  const parts = [
    `columns: (${(isTight ? tightWidths : columnWidths)(head, rows).join(", ")},)`,
    `column-gutter: ${isTight ? "2.5mm" : "4mm"}`,
    `align: (${align},)`,
    `table.header(${header})`,
    `table.hline(stroke: 0.8pt + ${ACCENT})`,
    ...(body === "" ? [] : [body]),
  ]
  const set = `table(${parts.join(", ")})`
  return isTight ? `#text(size: 8pt, ${set})` : `#${set}`
}

const cell = (text: string): string => `table.cell(breakable: false, ${content(text)})`

/** Letters that stand in a line of the page beside the gaps between columns, two letters wide each. */
const LETTERS_IN_LINE = 84
const LONGEST_SHORT = 18

/** Whether so many columns stand in each other's way at the usual size. */
function isTooWide(head: readonly string[], rows: readonly (readonly string[])[]): boolean {
  const natural = head.map((title, column) =>
    Math.min(LONGEST_SHORT, Math.max(0.85 * widthOf(title), ...cellsOf(rows, column).map(widthOf))),
  )
  return natural.reduce((sum, width) => sum + width, 2 * (head.length - 1)) > LETTERS_IN_LINE
}

/** Each column by what it cannot do without: its cells where they are short, the longest word of its title. */
const tightWidths = (head: readonly string[], rows: readonly (readonly string[])[]): readonly string[] =>
  head.map((title, column) => {
    const cells = cellsOf(rows, column).map((text) => Math.min(LONGEST_SHORT, widthOf(text)))
    return `${Math.max(longestWord(title), ...cells)}fr`
  })

const cellsOf = (rows: readonly (readonly string[])[], column: number): readonly string[] =>
  rows.map((row) => row[column] ?? "")

/** Chinese is broken after any sign. */
const longestWord = (text: string): number =>
  Math.max(...text.split(/[\s\p{Script=Han}]/u).map(widthOf), /\p{Script=Han}/u.test(text) ? 6 : 1)

/** Columns of long text share what is left over; short ones take what they need. */
function columnWidths(head: readonly string[], rows: readonly (readonly string[])[]): readonly string[] {
  const longest = head.map((title, column) =>
    Math.max(widthOf(title), ...rows.map((row) => widthOf(row[column] ?? ""))),
  )
  const isLong = longest.map((length) => length > LONGEST_SHORT)
  if (!isLong.includes(true)) return head.map((_, column) => (column === 0 ? "1fr" : "auto"))
  return longest.map((length, column) => (isLong[column] ? `${Math.min(length, 60)}fr` : "auto"))
}

/** In letters of Latin width; a Chinese one is twice as wide. */
const widthOf = (text: string): number =>
  [...text].reduce(
    (width, letter) => width + (/\p{Script=Han}|[\u3000-\u303f\uff00-\uffef]/u.test(letter) ? 2 : 1),
    0,
  )
