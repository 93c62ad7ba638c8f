import type { Course, Treatment, Visit } from "../../engine/course.js"
import type { DateOrder } from "../../engine/practice-rules.js"
import type { Problem } from "../../engine/problem.js"
import type { Fragment, Identity } from "../intake/fragment.js"

/** The writings of text that are read, by their names in the Encoding Standard. */
export const TABLE_ENCODINGS = ["utf-8", "utf-16le", "utf-16be", "windows-1252"] as const
export type TableEncoding = (typeof TABLE_ENCODINGS)[number]

export const DELIMITERS = [",", ";", "\t", "|"] as const
export type Delimiter = (typeof DELIMITERS)[number]

export type DecimalSign = "." | ","

/** One row of a table, with the line of the file that it begins on (for a sheet: the number of the row). */
export interface TableRow {
  readonly line: number
  readonly cells: readonly string[]
}

/** What the beginning of a table says of itself. */
export interface Sniffed {
  readonly encoding: TableEncoding
  readonly delimiter: Delimiter
  /** "unclear" when no figure of the first rows has a decimal sign, or when some could be thousands. */
  readonly decimalSign: DecimalSign | "unclear"
  /** Whether any figure of the first rows has decimals, so that their sign matters. */
  readonly hasDecimals: boolean
  /** False when the first row is already a row of figures; then the headings are "#1", "#2" and so on. */
  readonly hasHeadings: boolean
  /** Each one once: a heading that stands twice is followed by the number of its column, "SPH #5". */
  readonly headings: readonly string[]
  readonly firstRows: readonly (readonly string[])[]
  /** For each column of dates, the orders in which all its values are days of the calendar. */
  readonly dateOrders: readonly { readonly heading: string; readonly orders: readonly DateOrder[] }[]
  /** What a person should know: no headings, an old encoding. */
  readonly notes: readonly string[]
  /** Why the file cannot be read as a table at all; null when it can. */
  readonly fault: string | null
}

export const QUESTION_KINDS = [
  "date-order",
  "decimal-sign",
  "date-column",
  "child-column",
  "eye-column",
  "unit",
  "treatment-start",
] as const
export type QuestionKind = (typeof QUESTION_KINDS)[number]

/** What has to be answered by a person before a row may be read. */
export interface Question {
  readonly kind: QuestionKind
  /** The columns that it is about, by their headings. */
  readonly headings: readonly string[]
  /** What may be answered: date orders, decimal signs, UCUM codes; empty when a column has to be chosen. */
  readonly choices: readonly string[]
  /** The question in words. */
  readonly why: string
}

/** A cell that cannot be read: its column, its line, its value, what is allowed. */
export interface TableProblem extends Problem {
  readonly heading: string
  readonly line: number
}

export type TableNote = Fragment["notes"][number]

/** What one row says. */
export interface RowReading {
  readonly line: number
  readonly identity: Identity
  readonly child: Partial<Pick<Course["child"], "ancestry" | "myopicParents">>
  /** The day's visit and, where the row holds earlier glasses beside it, the visit that those stand for. */
  readonly visits: readonly Visit[]
  readonly treatments: readonly Treatment[]
  readonly notes: readonly TableNote[]
}

/** A table that cannot be read on from a line: a row beyond the limits, a quote never closed. */
export class TableFault extends Error {
  readonly line: number
  constructor(message: string, { line }: { readonly line: number }) {
    super(message)
    this.name = "TableFault"
    this.line = line
  }
}
