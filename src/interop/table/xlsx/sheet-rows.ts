import { say } from "../../../engine/say.js"
import { MOST_COLUMNS, tooManyColumns } from "../row-splitter.js"
import { type DecimalSign, TableFault, type TableRow } from "../table-types.js"
import { dayOfSerial } from "./number-formats.js"
import { openPackage, unsafe, unsound } from "./package.js"
import { readWorkbook, TextGatherer, type Workbook } from "./workbook.js"
import { xmlEvents } from "./xml-events.js"

/** Whether a file is an Excel workbook of today's kind, a zip of XML. */
export const isWorkbook = (bytes: Uint8Array): boolean =>
  bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 3 && bytes[3] === 4

export interface SheetForm {
  /** Name of the sheet; the first one that is not hidden when absent. */
  readonly sheet?: string | undefined
  /** What figures of the sheet are written with, as the mapping reads them. */
  readonly decimalSign?: DecimalSign | undefined
}

/** As many as a sheet can have. */
const MOST_ROWS = 1_048_576
const LARGEST_VALUE = 10_000

/**
 * The rows of a sheet of a workbook, the row of headings included. Figures are written with the decimal sign asked for,
 * cells that are shown as days as YYYY-MM-DD; a cell with an error is empty; of a formula only the value that the workbook
 * holds is taken. Nothing is run and nothing outside the file is looked at. Throws a `TableFault` where the file is not
 * safe or not sound.
 *
 * @example
 * for await (const { line, cells } of sheetRows(bytes)) console.log(line, cells)
 */
export async function* sheetRows(
  bytes: Uint8Array,
  { sheet, decimalSign = "." }: SheetForm = {},
): AsyncGenerator<TableRow> {
  const parts = await openPackage(bytes)
  const workbook = await readWorkbook(parts, sheet)
  const gatherer = new SheetGatherer(workbook, decimalSign)
  const events = xmlEvents(parts.part(workbook.sheetPart), {
    open: (name, attributes) => gatherer.open(name, attributes),
    text: (text) => gatherer.text(text),
    close: (name) => gatherer.close(name),
  })
  for await (const _ of events) yield* gatherer.take()
}

class SheetGatherer {
  readonly #workbook: Workbook
  readonly #sign: DecimalSign
  readonly #inline = new TextGatherer()
  #rows: TableRow[] = []
  #row = 0
  #cells: string[] | null = null
  #column = -1
  #kind = "n"
  #style = 0
  #value: string | null = null
  #isInValue = false

  constructor(workbook: Workbook, sign: DecimalSign) {
    this.#workbook = workbook
    this.#sign = sign
  }

  take(): readonly TableRow[] {
    const rows = this.#rows
    this.#rows = []
    return rows
  }

  open(name: string, attributes: Readonly<Record<string, string>>): void {
    if (name === "row") this.#openRow(attributes)
    else if (name === "c") this.#openCell(attributes)
    else if (name === "v" && this.#cells) {
      this.#isInValue = true
      this.#value = ""
    } else this.#inline.open(name)
  }

  text(text: string): void {
    if (!this.#isInValue) {
      this.#inline.text(text)
      return
    }
    this.#value = (this.#value ?? "") + text
    if (this.#value.length > LARGEST_VALUE)
      throw unsafe(say("A cell of the workbook has more than {most} characters.", { most: LARGEST_VALUE }))
  }

  close(name: string): void {
    if (name === "v") this.#isInValue = false
    else if (name === "c") this.#closeCell()
    else if (name === "row") this.#closeRow()
    else this.#inline.close(name)
  }

  #openRow({ r }: Readonly<Record<string, string>>): void {
    const row = r === undefined ? this.#row + 1 : wholeNumber(r)
    if (this.#cells || row <= this.#row) throw unsound()
    if (row > MOST_ROWS)
      throw new TableFault(say("A sheet has at most {most} rows.", { most: MOST_ROWS }), { line: this.#row })
    this.#row = row
    this.#cells = []
    this.#column = -1
  }

  #openCell({ r, t = "n", s = "0" }: Readonly<Record<string, string>>): void {
    if (!this.#cells) throw unsound()
    const column = r === undefined ? this.#column + 1 : columnOf(r)
    if (column <= this.#column) throw unsound()
    if (column >= MOST_COLUMNS) throw tooManyColumns(this.#row)
    this.#column = column
    this.#kind = t
    this.#style = wholeNumber(s)
    this.#value = null
    this.#inline.begin()
  }

  #closeCell(): void {
    const cells = this.#cells
    if (!cells) throw unsound()
    while (cells.length < this.#column) cells.push("")
    cells.push(this.#written())
  }

  #closeRow(): void {
    const cells = this.#cells
    if (!cells) throw unsound()
    if (cells.some((cell) => cell !== "")) this.#rows.push({ line: this.#row, cells })
    this.#cells = null
  }

  #written(): string {
    const value = this.#value
    switch (this.#kind) {
      case "inlineStr":
        return this.#inline.held
      case "s":
        return value === null ? "" : this.#shared(value)
      case "str":
        return value ?? ""
      case "b":
        return value === "1" ? "true" : value === "0" ? "false" : ""
      case "e":
        return ""
      case "d":
        return value ?? ""
      default:
        return value === null || value === "" ? "" : this.#number(value)
    }
  }

  #shared(value: string): string {
    const text = this.#workbook.sharedTexts[wholeNumber(value)]
    if (text === undefined) throw unsound()
    return text
  }

  #number(value: string): string {
    const number = Number(value)
    if (!/^[-+]?[\d.]+(?:e[-+]?\d+)?$/i.test(value) || !Number.isFinite(number)) throw unsound()
    const form = this.#workbook.forms[this.#style] ?? "plain"
    const day = form === "date" ? dayOfSerial(number, this.#workbook) : null
    if (day !== null) return day
    // A cell shown as 0.05 % holds 0.0005.
    return form === "percent" ? `${this.#figure(number * 100)} %` : this.#figure(number)
  }

  /** Fifteen digits are what a spreadsheet keeps; the rest is what its arithmetic left. */
  #figure(number: number): string {
    const text = String(Number(number.toPrecision(15)))
    return this.#sign === "," ? text.replace(".", ",") : text
  }
}

function wholeNumber(text: string): number {
  if (!/^\d{1,9}$/.test(text)) throw unsound()
  return Number(text)
}

/** "C7" is the third column, 2. */
function columnOf(place: string): number {
  const letters = /^([A-Z]{1,4})\d{1,8}$/.exec(place)?.[1]
  if (letters === undefined) throw unsound()
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1
}
