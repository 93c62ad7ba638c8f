import { createHash } from "node:crypto"
import type { DateOrder, TableMapping } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import type { ReadFile, Skipped } from "../intake/fragment.js"
import { namedField } from "./fields.js"
import { fragmentsOf } from "./fragments-of.js"
import { guessedMapping } from "./guess-mapping.js"
import { questions } from "./questions.js"
import { rowReading } from "./row-reading.js"
import { SNIFFED_BYTES, sniff, sniffedRows } from "./sniff.js"
import { rowsOfBytes } from "./table-rows.js"
import {
  type DecimalSign,
  type Question,
  type QuestionKind,
  type RowReading,
  type Sniffed,
  TableFault,
  type TableProblem,
  type TableRow,
} from "./table-types.js"
import { isWorkbook, sheetRows } from "./xlsx/sheet-rows.js"

/** A table beyond this is imported, where it is read a little at a time, and not read in one piece. */
const LARGEST_TABLE_BYTES = 20_000_000

/** Problems that are told one by one; a wrong mapping has one in every row. */
const MOST_TOLD = 200

interface Asked {
  readonly file: string
  readonly bytes: Uint8Array
  readonly mapping?: TableMapping | undefined
  readonly dateOrder?: DateOrder | undefined
  readonly decimalSign?: DecimalSign | undefined
  /** Name of the sheet of a workbook; the first one when absent. */
  readonly sheet?: string | undefined
}

/**
 * Reads a table (CSV, TSV, XLSX) by a mapping, or by what its headings say. When something is left open, such as the order
 * of its dates, nothing is taken, and what was skipped says which option settles it.
 *
 * @example
 * await readTable({ file: "visits.csv", bytes, dateOrder: "day-month-year" })
 */
export async function readTable(asked: Asked): Promise<ReadFile> {
  const { file, bytes } = asked
  const nothing = (skipped: readonly Omit<Skipped, "file">[]): ReadFile => ({
    file,
    fragments: [],
    skipped: skipped.map((item) => ({ file, ...item })),
  })
  if (bytes.length > LARGEST_TABLE_BYTES)
    return nothing([
      {
        why: say("The table has more than {most} MB: import it instead.", {
          most: LARGEST_TABLE_BYTES / 1e6,
        }),
      },
    ])
  try {
    const { sniffed, rows } = await opened(asked)
    if (sniffed.fault !== null) return nothing([{ why: sniffed.fault }])
    const { mapping, settled } = mappingOf(asked, sniffed)
    const open = questions(sniffed, mapping, { settled })
    if (open.length > 0) return nothing(open.map(withOption))
    return takenFrom({ asked, sniffed, mapping, rows })
  } catch (error) {
    if (!(error instanceof TableFault)) throw error
    return nothing([{ why: error.message, ...(error.line > 0 ? { where: lineWords(error.line) } : {}) }])
  }
}

const lineWords = (line: number): string => say("line {line}", { line })

interface Opened {
  readonly sniffed: Sniffed
  readonly rows: readonly TableRow[]
}

async function opened({ bytes, sheet, decimalSign, mapping }: Asked): Promise<Opened> {
  if (isWorkbook(bytes)) {
    const rows: TableRow[] = []
    const sign = decimalSign ?? mapping?.decimalSign
    for await (const row of sheetRows(bytes, { sheet, decimalSign: sign })) rows.push(row)
    return { sniffed: sniffedRows(rows), rows }
  }
  const sniffed = sniff(bytes)
  if (sniffed.fault !== null) return { sniffed, rows: [] }
  const rows = rowsOfBytes(bytes, sniffed)
  // All of it is at hand: the later rows may show an order of dates that the first ones leave open.
  const whole = bytes.length > SNIFFED_BYTES ? sniffedRows(rows) : sniffed
  return { sniffed: { ...sniffed, dateOrders: whole.dateOrders }, rows }
}

function mappingOf({ mapping, dateOrder, decimalSign }: Asked, sniffed: Sniffed) {
  const base = mapping ?? guessedMapping(sniffed)
  const settled: QuestionKind[] = [
    ...(mapping || dateOrder ? (["date-order"] as const) : []),
    ...(mapping || decimalSign ? (["decimal-sign"] as const) : []),
  ]
  const said: TableMapping = {
    ...base,
    ...(dateOrder ? { dateOrder } : {}),
    ...(decimalSign ? { decimalSign } : {}),
  }
  return { mapping: said, settled }
}

/** A question with what answers it on a command line. */
function withOption({ kind, headings, why, choices }: Question): Omit<Skipped, "file"> {
  const where = headings.length === 0 ? {} : { where: headings.map((heading) => `"${heading}"`).join(", ") }
  if (kind === "date-order" && choices.length > 0)
    return {
      why: `${why} ${say("Say it with --date-order {choices}.", { choices: choices.join(" | ") })}`,
      ...where,
    }
  if (kind === "decimal-sign")
    return {
      why: `${why} ${say('Say it with --decimal "{choices}".', { choices: choices.join('" | "') })}`,
      ...where,
    }
  if (kind === "date-order") return { why, ...where }
  return { why: `${why} ${say("Say it with a mapping, which the page for imports writes.")}`, ...where }
}

function takenFrom({
  asked: { file, bytes },
  sniffed,
  mapping,
  rows,
}: Opened & { readonly asked: Asked; readonly mapping: TableMapping }): ReadFile {
  const readings: RowReading[] = []
  const problems: TableProblem[] = []
  const { headings } = sniffed
  for (const row of sniffed.hasHeadings ? rows.slice(1) : rows) {
    const read = rowReading(row, mapping, headings)
    if (read.reading) readings.push(read.reading)
    problems.push(...read.problems)
  }
  const id = createHash("sha256").update(bytes).digest("hex")
  const fragments = fragmentsOf(readings, { source: { kind: "table", id } })
  const isEmpty = fragments.length === 0 && problems.length === 0
  return {
    file,
    fragments,
    skipped: [
      ...(isEmpty ? [{ file, why: say("The table has no row with a figure of a day.") }] : []),
      ...leftOut(sniffed, mapping).map((skip) => ({ file, ...skip })),
      ...problems
        .slice(0, MOST_TOLD)
        .map(({ message, line }) => ({ file, why: message, where: lineWords(line) })),
      ...(problems.length > MOST_TOLD
        ? [
            {
              file,
              why: say("{rest, plural, one {And # more fault.} other {And # more faults.}}", {
                rest: problems.length - MOST_TOLD,
              }),
            },
          ]
        : []),
    ],
  }
}

/** Columns that hold something and are not read. */
function leftOut(
  { headings, firstRows, notes }: Sniffed,
  mapping: TableMapping,
): readonly Omit<Skipped, "file">[] {
  const isRead = (heading: string) =>
    mapping.columns.some((column) => {
      const group = namedField(column.field)?.field.group
      return column.heading === heading && group !== undefined && group !== "left-out"
    })
  const columns = headings.filter(
    (heading, at) => !isRead(heading) && firstRows.some((cells) => (cells[at] ?? "").trim() !== ""),
  )
  return [
    ...notes.map((why) => ({ why })),
    ...columns.map((heading) => ({ why: say('The column "{heading}" is left out.', { heading }) })),
  ]
}
