import type { CalendarDate, Eye } from "../../engine/course.js"
import type { TableMapping } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import { type Limit, limitInWords, slippedDecimal } from "../course/limits.js"
import { problem } from "../course/problem.js"
import { cellText, isAbsent, isAbsentName } from "./cell-text.js"
import { readDate } from "./dates.js"
import { namedField, type TableField } from "./fields.js"
import { dateHint, didYouMean, numberHint } from "./hints.js"
import { readNumber } from "./numbers.js"
import type { TableNote, TableProblem, TableRow } from "./table-types.js"

/** A column that is read, with its place in the row. */
interface PlannedColumn {
  readonly at: number
  readonly heading: string
  readonly field: TableField
  readonly eye: Eye | null
  readonly unit: string | undefined
}

export interface Plan {
  readonly mapping: TableMapping
  readonly headings: readonly string[]
  readonly columns: readonly PlannedColumn[]
  /** The same by field, since a row is asked for each field many times. */
  readonly byField: ReadonlyMap<string, readonly PlannedColumn[]>
}

/** The columns of a mapping found among the headings; made once for a whole table. */
export function planOf(mapping: TableMapping, headings: readonly string[]): Plan {
  const columns = mapping.columns.flatMap(({ heading, field: name, unit }) => {
    const at = headings.indexOf(heading)
    const named = namedField(name)
    return at === -1 || !named || named.field.group === "left-out" ? [] : [{ at, heading, unit, ...named }]
  })
  const byField = new Map<string, PlannedColumn[]>()
  for (const column of columns) {
    const known = byField.get(column.field.id)
    if (known) known.push(column)
    else byField.set(column.field.id, [column])
  }
  return { mapping, headings, columns, byField }
}

export interface Cell {
  readonly text: string
  readonly heading: string
  readonly unit: string | undefined
  /** The unit of the field itself. */
  readonly ownUnit: string | undefined
}

/** What was read of one row so far: its cells by field, what is wrong with them, what was assumed. */
export class RowCells {
  readonly problems: TableProblem[] = []
  readonly notes: TableNote[] = []
  readonly plan: Plan
  readonly line: number
  readonly #cells: readonly string[]
  /** The eye that the row is of, when it is of one. */
  rowEye: Eye | null = null

  constructor({ line, cells }: TableRow, plan: Plan) {
    this.line = line
    this.plan = plan
    this.#cells = cells
  }

  /** Whether all cells of the columns that are read are empty. */
  get isEmpty(): boolean {
    return this.plan.columns.every((column) => isAbsent(this.#textAt(column)))
  }

  /** Cells beyond the headings: then a delimiter stands inside a cell and columns have moved. */
  get hasMoved(): boolean {
    return (
      this.#cells.length > this.plan.headings.length &&
      this.#cells.slice(this.plan.headings.length).some(Boolean)
    )
  }

  /** The cell of a field; of two columns of one field both must agree. */
  cell(id: string, eye: Eye | null = null): Cell | undefined {
    let found: Cell | undefined
    for (const column of this.plan.byField.get(id) ?? []) {
      if (!this.#isOf(column, eye)) continue
      const text = this.#textAt(column)
      const isNone = column.field.group === "child" ? isAbsentName(text) : isAbsent(text)
      if (isNone) continue
      if (found && found.text !== text) {
        this.refuse(
          column,
          text,
          say("what the column {other} holds for the same field", { other: quoted(found) }),
        )
        return undefined
      }
      found ??= { text, heading: column.heading, unit: column.unit, ownUnit: column.field.unit }
    }
    return found
  }

  readonly #texts: string[] = []

  #textAt({ at }: PlannedColumn): string {
    const known = this.#texts[at]
    if (known !== undefined) return known
    const text = cellText(this.#cells[at] ?? "")
    this.#texts[at] = text
    return text
  }

  #isOf({ field, eye: named }: PlannedColumn, eye: Eye | null): boolean {
    if (eye === null) return named === null
    if (named !== null) return named === eye
    if (this.plan.mapping.rowIs === "eye") return this.rowEye === eye
    return field.forBoth === true
  }

  /** Whether any cell of the eyes' fields holds something. */
  get hasFigures(): boolean {
    return this.plan.columns.some(
      (column) => column.field.perEye && !column.field.forBoth && !isAbsent(this.#textAt(column)),
    )
  }

  refuse(cell: Pick<Cell, "heading">, value: string | null, allowed: string, hint?: string): undefined {
    const path = say('Line {line}, column "{heading}"', { line: this.line, heading: cell.heading })
    this.problems.push({ ...problem({ path, value, allowed, hint }), heading: cell.heading, line: this.line })
    return undefined
  }

  /** A group of fields that is taken whole or not at all. */
  whole<T>(read: () => T | undefined): T | undefined {
    const before = this.problems.length
    const value = read()
    return this.problems.length > before ? undefined : value
  }

  text(id: string, eye: Eye | null = null): string | undefined {
    const cell = this.cell(id, eye)
    if (!cell || cell.text.length <= LONGEST_TEXT) return cell?.text
    return this.refuse(cell, cell.text, say("text of at most {most} characters", { most: LONGEST_TEXT }))
  }

  number(id: string, eye: Eye | null, limit: Limit, factors: UnitFactors = {}): number | undefined {
    const cell = this.cell(id, eye)
    return cell && this.numberIn(cell, limit, factors)
  }

  /** The figure of a cell in the field's own unit. */
  numberIn(cell: Cell, limit: Limit, factors: UnitFactors = {}): number | undefined {
    const factor = cell.unit === undefined || cell.unit === cell.ownUnit ? 1 : factors[cell.unit]
    if (factor === undefined)
      return this.refuse(cell, cell.text, say("in another unit than {unit}", { unit: cell.unit ?? "" }))
    const read = readNumber(cell.text, this.plan.mapping.decimalSign)
    if ("fault" in read)
      return this.refuse(cell, cell.text, limitInWords(limit), numberHint(read.fault, this.plan.mapping))
    const value = factor === 1 ? read.value : Number((read.value * factor).toPrecision(12))
    const isWithin = limit.aboveLow ? value > limit.low : value >= limit.low
    if (isWithin && value <= limit.high && !(limit.whole && !Number.isInteger(value))) return value
    const meant = slippedDecimal(value, limit)
    const hint = meant === null || limit.whole ? undefined : didYouMean(meant)
    return this.refuse(cell, cell.text, limitInWords(limit), hint)
  }

  date(id: string): CalendarDate | undefined {
    const cell = this.cell(id)
    if (!cell) return undefined
    const read = readDate(cell.text, this.plan.mapping.dateOrder)
    if ("date" in read) return read.date
    return this.refuse(cell, cell.text, say("a day of the calendar"), dateHint(read.fault, this.plan.mapping))
  }
}

/** How many of the field's own unit one of another unit is, by UCUM code. */
export type UnitFactors = Readonly<Record<string, number>>

const LONGEST_TEXT = 200

const quoted = ({ heading }: Cell): string => `"${heading}"`

/** Whether a day lies in the child's life; else the cell is refused. */
export function isAlive(
  cells: RowCells,
  {
    id,
    date,
    born,
  }: { readonly id: string; readonly date: CalendarDate; readonly born: CalendarDate | undefined },
): boolean {
  if (born === undefined || date >= born) return true
  cells.refuse(
    cells.cell(id) ?? { heading: "#1" },
    date,
    say("on or after the day of birth ({born})", { born }),
  )
  return false
}
