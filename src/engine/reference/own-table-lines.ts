import type { ReferenceSex } from "../../evidence/types.js"
import type { Problem } from "../problem.js"
import { say } from "../say.js"

/** A fault of a table, with the line of the file (from 1) and the column it stands in. */
export interface TableProblem extends Problem {
  readonly line: number
  readonly column: string
}

export interface TableRow {
  readonly line: number
  readonly sex: ReferenceSex
  /** The numbers of the row by column, blank cells absent; `age_years` always there. */
  readonly numbers: Readonly<Record<string, number>>
}

export interface TableLines {
  readonly kind: "lms" | "centiles"
  /** Centiles printed, percent, ascending; empty for an L-M-S table. */
  readonly centiles: readonly number[]
  readonly rows: readonly TableRow[]
}

export const SHORTEST_MM = 15
export const LONGEST_MM = 35
// A growth table has a few dozen short rows; more is another kind of file.
const MOST_LINES = 1000
const MOST_CHARACTERS = 200_000
const CENTILE_COLUMN = /^p(\d{1,2}(?:\.\d+)?)$/

interface Rule {
  readonly allowed: () => string
  readonly holds: (value: number) => boolean
}
const lengthMm: Rule = {
  allowed: () =>
    say("a length from {shortest} to {longest} mm", { shortest: SHORTEST_MM, longest: LONGEST_MM }),
  holds: (value) => value >= SHORTEST_MM && value <= LONGEST_MM,
}
const RULES: Readonly<Record<string, Rule>> = {
  age_years: { allowed: () => say("an age from 0 to 25 years"), holds: (value) => value >= 0 && value <= 25 },
  l: { allowed: () => say("a number"), holds: Number.isFinite },
  m: lengthMm,
  // S is about 0.03 in children's eyes; a spread in mm typed by mistake is about 0.8.
  s: {
    allowed: () => say("a coefficient of variation above 0 and up to {most}", { most: 0.2 }),
    holds: (value) => value > 0 && value <= 0.2,
  },
}
const SEX_WORDS: Readonly<Record<string, ReferenceSex>> = {
  f: "female",
  female: "female",
  girl: "female",
  girls: "female",
  m: "male",
  male: "male",
  boy: "male",
  boys: "male",
  all: "all",
}

/** A problem whose path and sentence name line and column. */
export function tableProblem({
  line,
  column,
  value,
  allowed,
}: {
  line: number
  column: string
  value: unknown
  allowed: string
}): TableProblem {
  const path = say("line {line}, {column}", { line: String(line), column })
  const message =
    value === "" || value === null
      ? say("{path} must be {allowed}, and is missing", { path, allowed })
      : say("{path} must be {allowed}, not {value}", { path, allowed, value: String(value) })
  return { line, column, path, value, allowed, message }
}

/**
 * Reads a growth table cell by cell: one header row, then rows; empty lines and lines starting with `#` are left out.
 * Cells are parted by commas, or by semicolons, and then a decimal comma is read too.
 */
export function readTableLines(csv: string): TableLines | { readonly problems: readonly TableProblem[] } {
  // One line and one character more than allowed are kept, to tell a full table from a cut one.
  const pieces = csv
    .slice(0, MOST_CHARACTERS + 1)
    .replace(/^\uFEFF/, "")
    .split(/\r?\n/, MOST_LINES + 1)
  const lines = pieces
    .map((text, i) => ({ line: i + 1, text }))
    .filter(({ text }) => text.trim() !== "" && !text.startsWith("#"))
  const [header, ...body] = lines
  const isTooLong = csv.length > MOST_CHARACTERS || pieces.length > MOST_LINES
  if (header === undefined || body.length === 0 || isTooLong) {
    const allowed = say(
      "a header and rows below it, up to {lines} lines and {characters} characters in all",
      { lines: MOST_LINES, characters: MOST_CHARACTERS },
    )
    return { problems: [tableProblem({ line: header?.line ?? 1, column: "file", value: null, allowed })] }
  }
  const separator = header.text.includes(";") ? ";" : ","
  const columns = cellsOf(header.text, separator).map(columnName)
  const headerFaults = headerProblems(columns, header.line)
  if (headerFaults.length > 0) return { problems: headerFaults }
  const read = body.map(({ line, text }) =>
    readRow({ line, cells: cellsOf(text, separator), columns, separator }),
  )
  const problems = read.flatMap((row) => row.problems)
  if (problems.length > 0) return { problems }
  return {
    kind: columns.includes("l") ? "lms" : "centiles",
    centiles: columns
      .flatMap((name) => CENTILE_COLUMN.exec(name)?.[1] ?? [])
      .map(Number)
      .toSorted((a, b) => a - b),
    rows: read.flatMap(({ row }) => (row === null ? [] : [row])),
  }
}

// One spelling for each column: p03, P3 and p3.0 are p3.
function columnName(cell: string): string {
  const name = cell.toLowerCase()
  const centile = CENTILE_COLUMN.exec(name)?.[1]
  return centile === undefined ? name : `p${Number(centile)}`
}

function cellsOf(text: string, separator: string): readonly string[] {
  return text.split(separator).map((cell) =>
    cell
      .trim()
      .replace(/^"(.*)"$/, "$1")
      .trim(),
  )
}

function headerProblems(columns: readonly string[], line: number): readonly TableProblem[] {
  const at = (column: string, value: unknown, allowed: string) =>
    tableProblem({ line, column, value, allowed })
  const centiles = columns.filter((name) => isCentile(name))
  const lms = ["l", "m", "s"].filter((name) => columns.includes(name))
  const known = (name: string) => ["sex", "age_years", "n", "l", "m", "s"].includes(name) || isCentile(name)
  const shapeIsClear =
    (lms.length === 3 && centiles.length === 0) || (lms.length === 0 && centiles.length >= 3)
  return [
    ...["sex", "age_years"]
      .filter((name) => !columns.includes(name))
      .map((name) => at(name, null, say("a column"))),
    ...columns
      .filter((name) => !known(name))
      .map((name) =>
        at(name || "header", name, say("sex, age_years, n, L, M, S, or a centile such as p3 or p2.5")),
      ),
    ...columns
      .filter((name, i) => columns.indexOf(name) !== i)
      .map((name) => at(name, name, say("a column that stands only once"))),
    ...(shapeIsClear
      ? []
      : [
          at(
            "header",
            columns.join(","),
            say("either L, M and S together, or three or more centiles, and not both"),
          ),
        ]),
  ]
}

function isCentile(name: string): boolean {
  return Number(CENTILE_COLUMN.exec(name)?.[1] ?? 0) > 0
}

function readRow({
  line,
  cells,
  columns,
  separator,
}: {
  line: number
  cells: readonly string[]
  columns: readonly string[]
  separator: string
}): { readonly row: TableRow | null; readonly problems: readonly TableProblem[] } {
  if (cells.length !== columns.length) {
    const allowed = say("as many cells as the header, {count}", { count: columns.length })
    return { row: null, problems: [tableProblem({ line, column: "row", value: cells.length, allowed })] }
  }
  const problems: TableProblem[] = []
  const numbers: Record<string, number> = {}
  const cell = (column: string) => cells[columns.indexOf(column)]!
  const sex = SEX_WORDS[cell("sex").toLowerCase()]
  if (sex === undefined) {
    problems.push(
      tableProblem({ line, column: "sex", value: cell("sex"), allowed: say("F, M, female, male, or all") }),
    )
  }
  for (const column of columns.filter((name) => name !== "sex" && name !== "n")) {
    const text = separator === ";" ? cell(column).replace(",", ".") : cell(column)
    if (text === "" && isCentile(column)) continue
    const value = /^[+-]?(\d+\.?\d*|\.\d+)$/.test(text) ? Number(text) : Number.NaN
    const rule = RULES[column] ?? lengthMm
    if (rule.holds(value)) numbers[column] = value
    else
      problems.push(
        tableProblem({ line, column: shownColumn(column), value: cell(column), allowed: rule.allowed() }),
      )
  }
  return { row: sex === undefined ? null : { line, sex, numbers }, problems }
}

/** L, M and S are written large everywhere, also when the file has them small. */
export function shownColumn(column: string): string {
  return column.length === 1 ? column.toUpperCase() : column
}
