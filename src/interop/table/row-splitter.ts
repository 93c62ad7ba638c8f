import { say } from "../../engine/say.js"
import { type Delimiter, TableFault, type TableRow } from "./table-types.js"

/** A child's visit fills a few hundred characters; what is larger is another file or a quote that was never closed. */
export const LARGEST_CELL = 10_000
export const MOST_COLUMNS = 500
export const LARGEST_ROW = 1_000_000

type Place = "cell-begins" | "plain" | "quoted" | "after-quotes"

const [QUOTE, LINE_FEED, RETURN, BLANK] = [0x22, 0x0a, 0x0d, 0x20]

/**
 * Text to rows by RFC 4180, in pieces of any size. Lines end with LF, CR LF or CR; a row of one empty cell is a blank
 * line and left out; a quote inside a plain cell is a sign like any other. Where the text departs from the standard so
 * that cells could move into other columns, it is a fault with its line and nothing is read on.
 */
export class RowSplitter {
  readonly #delimiter: number
  #place: Place = "cell-begins"
  #cells: string[] = []
  #cell = ""
  #rowLength = 0
  #line = 1
  #rowLine = 1
  #quoteLine = 1
  #wasQuoted = false
  #endedWithReturn = false

  constructor({ delimiter }: { readonly delimiter: Delimiter }) {
    this.#delimiter = delimiter.charCodeAt(0)
  }

  /** The line that is being read. */
  get line(): number {
    return this.#line
  }

  /** Adds the rows that a piece of text completes to `into`. */
  push(text: string, into: TableRow[]): void {
    let at = 0
    while (at < text.length)
      at = this.#place === "quoted" ? this.#quoted(text, at) : this.#open(text, at, into)
  }

  /** The last row, when the text does not end with a line's end. */
  end(into: TableRow[]): void {
    if (this.#place === "quoted") {
      const begins = { line: this.#quoteLine }
      throw new TableFault(say("A quotation mark in line {line} is never closed.", begins), begins)
    }
    if (this.#cells.length > 0 || this.#cell !== "" || this.#wasQuoted) this.#endRow(into)
  }

  #quoted(text: string, start: number): number {
    const closing = text.indexOf('"', start)
    const end = closing === -1 ? text.length : closing
    for (let at = text.indexOf("\n", start); at !== -1 && at < end; at = text.indexOf("\n", at + 1))
      this.#line += 1
    this.#add(text, start, end)
    if (closing === -1) return end
    this.#place = "after-quotes"
    return closing + 1
  }

  #open(text: string, start: number, into: TableRow[]): number {
    const code = text.charCodeAt(start)
    if (code === LINE_FEED && this.#endedWithReturn) {
      this.#endedWithReturn = false
      return start + 1
    }
    this.#endedWithReturn = false
    if (code === this.#delimiter) {
      this.#endCell()
      return start + 1
    }
    if (code === LINE_FEED || code === RETURN) {
      this.#endRow(into)
      this.#endedWithReturn = code === RETURN
      return start + 1
    }
    if (code === QUOTE && this.#place === "cell-begins") {
      this.#place = "quoted"
      this.#quoteLine = this.#line
      this.#wasQuoted = true
      return start + 1
    }
    return this.#place === "after-quotes" ? this.#afterQuotes(code, start) : this.#plain(text, start)
  }

  #afterQuotes(code: number, at: number): number {
    if (code === QUOTE) {
      this.#cell += '"'
      this.#place = "quoted"
    } else if (code !== BLANK) {
      throw this.#fault(
        say("In line {line} something follows a closing quotation mark inside a cell.", { line: this.#line }),
      )
    }
    return at + 1
  }

  #plain(text: string, start: number): number {
    this.#place = "plain"
    let at = start
    while (at < text.length) {
      const code = text.charCodeAt(at)
      if (code === this.#delimiter || code === LINE_FEED || code === RETURN) break
      at += 1
    }
    this.#add(text, start, at)
    return at
  }

  #add(text: string, start: number, end: number): void {
    this.#cell += text.slice(start, end)
    this.#rowLength += end - start
    if (this.#cell.length > LARGEST_CELL)
      throw this.#fault(
        say("A cell of the row in line {line} has more than {most} characters.", {
          line: this.#rowLine,
          most: LARGEST_CELL,
        }),
      )
    if (this.#rowLength > LARGEST_ROW)
      throw this.#fault(
        say("The row in line {line} has more than {most} characters.", {
          line: this.#rowLine,
          most: LARGEST_ROW,
        }),
      )
  }

  #endCell(): void {
    if (this.#cells.length >= MOST_COLUMNS) throw tooManyColumns(this.#rowLine)
    this.#cells.push(this.#cell)
    this.#cell = ""
    this.#place = "cell-begins"
  }

  #endRow(into: TableRow[]): void {
    const wasQuoted = this.#wasQuoted
    this.#endCell()
    const isBlank = this.#cells.length === 1 && this.#cells[0] === "" && !wasQuoted
    if (!isBlank) into.push({ line: this.#rowLine, cells: this.#cells })
    this.#cells = []
    this.#rowLength = 0
    this.#wasQuoted = false
    this.#line += 1
    this.#rowLine = this.#line
  }

  #fault(message: string): TableFault {
    return new TableFault(message, { line: this.#rowLine })
  }
}

export const tooManyColumns = (line: number): TableFault =>
  new TableFault(say("The row in line {line} has more than {most} columns.", { line, most: MOST_COLUMNS }), {
    line,
  })
