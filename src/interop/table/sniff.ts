import { DATE_ORDERS, type DateOrder } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import { cellText, isAbsent } from "./cell-text.js"
import { isDateLike, needsOrder, readDate } from "./dates.js"
import { foundEncoding } from "./encoding.js"
import { decimalSignIn, readNumber } from "./numbers.js"
import { rowsOfBytes } from "./table-rows.js"
import {
  DELIMITERS,
  type Delimiter,
  type Sniffed,
  type TableEncoding,
  TableFault,
  type TableRow,
} from "./table-types.js"

/** As much of a file as `sniff` looks at. */
export const SNIFFED_BYTES = 256 * 1024

/** Rows that are handed out to be looked at and guessed from. */
const FIRST_ROWS = 200

/** Rows that a delimiter is tried on. */
const TRIED_ROWS = 50

/**
 * What the beginning of a file of text says of its table. Everything in it is read off, nothing is settled: what the
 * values leave open, such as the order of 03/04/2025, is for `questions` to ask.
 *
 * @param bytes The whole file or its first `SNIFFED_BYTES`.
 */
export function sniff(bytes: Uint8Array): Sniffed {
  const found = foundEncoding(bytes)
  if ("fault" in found) return unreadable(found.fault)
  const { encoding } = found
  const isCutShort = bytes.length >= SNIFFED_BYTES
  const looked = bytes.subarray(0, SNIFFED_BYTES)
  try {
    const delimiter = foundDelimiter(looked, encoding)
    const rows = rowsOfBytes(looked, { encoding, delimiter, isCutShort })
    const sniffed = sniffedRows(rows)
    const notes =
      encoding === "windows-1252"
        ? [say("The text is read as windows-1252."), ...sniffed.notes]
        : sniffed.notes
    return { ...sniffed, encoding, delimiter, notes }
  } catch (error) {
    if (error instanceof TableFault) return unreadable(error.message)
    throw error
  }
}

/** The same of rows that were read already, such as those of a sheet. */
export function sniffedRows(rows: readonly TableRow[]): Sniffed {
  const [first, ...others] = rows
  if (!first) return unreadable(say("The file is empty."))
  const hasHeadings = !first.cells.some(isFigure)
  const headings = hasHeadings ? uniqueHeadings(first.cells) : first.cells.map((_, at) => `#${at + 1}`)
  const body = (hasHeadings ? others : rows).map(({ cells }) => cells)
  return {
    encoding: "utf-8",
    delimiter: ",",
    ...decimals(body),
    hasHeadings,
    headings,
    firstRows: body.slice(0, FIRST_ROWS),
    dateOrders: dateColumns(headings, body),
    notes: hasHeadings ? [] : [say("The table has no headings: its columns are called #1, #2 and so on.")],
    fault: null,
  }
}

function unreadable(fault: string): Sniffed {
  return {
    encoding: "utf-8",
    delimiter: ",",
    decimalSign: "unclear",
    hasDecimals: false,
    hasHeadings: false,
    headings: [],
    firstRows: [],
    dateOrders: [],
    notes: [],
    fault,
  }
}

const isFigure = (cell: string): boolean => {
  const text = cellText(cell)
  if (isAbsent(text)) return false
  return "value" in readNumber(text, ".") || "value" in readNumber(text, ",") || isDateLike(text)
}

/** Each heading once, so that a mapping can name a column by it. */
function uniqueHeadings(cells: readonly string[]): readonly string[] {
  const seen = new Set<string>()
  return cells.map((cell, at) => {
    const text = cell.trim().replace(/\s+/g, " ")
    let heading = text === "" ? `#${at + 1}` : text
    while (seen.has(heading)) heading = `${heading} #${at + 1}`
    seen.add(heading)
    return heading
  })
}

/**
 * The delimiter that makes the most rows as wide as the first one. A decimal comma makes rows wider than their headings,
 * so that a comma does not win over a semicolon by number.
 */
function foundDelimiter(bytes: Uint8Array, encoding: TableEncoding): Delimiter {
  const tried = DELIMITERS.map((delimiter) => ({ delimiter, ...widthFit(bytes, { encoding, delimiter }) }))
  const best = tried.reduce((a, b) =>
    b.share > a.share || (b.share === a.share && b.columns > a.columns) ? b : a,
  )
  if (best.share > 0) return best.delimiter
  // One column with any of them; when none can be read at all, the comma says why.
  return ","
}

function widthFit(
  bytes: Uint8Array,
  form: { readonly encoding: TableEncoding; readonly delimiter: Delimiter },
) {
  try {
    const rows = rowsOfBytes(bytes, { ...form, isCutShort: bytes.length >= SNIFFED_BYTES, most: TRIED_ROWS })
    const columns = rows[0]?.cells.length ?? 0
    if (columns < 2) return { share: 0, columns }
    return { share: rows.filter(({ cells }) => cells.length === columns).length / rows.length, columns }
  } catch (error) {
    if (error instanceof TableFault) return { share: 0, columns: 0 }
    throw error
  }
}

function decimals(rows: readonly (readonly string[])[]): Pick<Sniffed, "decimalSign" | "hasDecimals"> {
  const count = { ".": 0, ",": 0 }
  let sure = 0
  for (const cell of rows.flat()) {
    const found = decimalSignIn(cellText(cell))
    if (!found) continue
    count[found.sign] += 1
    if (!found.couldBeThousands) sure += 1
  }
  const hasDecimals = count["."] + count[","] > 0
  if (!hasDecimals || sure === 0 || (count["."] > 0 && count[","] > 0))
    return { decimalSign: "unclear", hasDecimals }
  return { decimalSign: count[","] > 0 ? "," : ".", hasDecimals }
}

/** A column is of dates when nearly all that stands in it has their form. */
function dateColumns(
  headings: readonly string[],
  rows: readonly (readonly string[])[],
): Sniffed["dateOrders"] {
  return headings.flatMap((heading, at) => {
    const texts = rows.map((cells) => cellText(cells[at] ?? "")).filter((text) => !isAbsent(text))
    const dates = texts.filter(isDateLike)
    if (dates.length === 0 || dates.length < texts.length * 0.8) return []
    return [{ heading, orders: possibleOrders(dates) }]
  })
}

/** One slip among fifty days that show their order does not put the order in doubt; its row is refused. */
const SLIPS = 0.02

/**
 * The orders that a column of days can be written in. A day such as 28/01/2025 shows one; an order is out when days show
 * the other one. A day in no order (31/02/2025) shows none. Where days show both orders, none is left.
 */
export function possibleOrders(dates: readonly string[]): readonly DateOrder[] {
  const open = dates.filter(needsOrder)
  if (open.length === 0) return ["year-month-day"]
  const dayFirst = open.map((text) => isPossible(text, "day-month-year"))
  const monthFirst = open.map((text) => isPossible(text, "month-day-year"))
  const onlyDayFirst = dayFirst.filter((is, at) => is && !monthFirst[at]).length
  const onlyMonthFirst = monthFirst.filter((is, at) => is && !dayFirst[at]).length
  return DATE_ORDERS.filter(
    (order) =>
      (order === "day-month-year" && onlyMonthFirst <= onlyDayFirst * SLIPS) ||
      (order === "month-day-year" && onlyDayFirst <= onlyMonthFirst * SLIPS),
  )
}

function isPossible(text: string, order: DateOrder): boolean {
  const read = readDate(text, order)
  return "date" in read || read.fault === "two-digit-year"
}
