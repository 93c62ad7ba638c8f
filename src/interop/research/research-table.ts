import { csvRow } from "../archive/csv-row.js"
import { dataDictionary } from "./data-dictionary.js"
import { type KnownChild, studyChild } from "./deidentified.js"
import { type Cell, SMALLEST_CELL, smallCells } from "./small-cells.js"
import { STUDY_COLUMNS } from "./study-columns.js"
import { studyRows } from "./study-rows.js"

export interface ResearchTable {
  readonly children: number
  readonly rows: number
  readonly smallCells: readonly Cell[]
  /** Files by name: the table, what its columns mean, small cells, and a page to read first. */
  readonly files: readonly { readonly name: string; readonly text: string }[]
}

/**
 * The measurements of a practice without names: one row an examined eye at a visit, in order of the study id, so that not
 * even the order tells when a child came. The same secret gives the same table again.
 */
export function researchTable(
  children: readonly KnownChild[],
  { secret }: { readonly secret: string },
): ResearchTable {
  const seen = children.filter(({ course }) => course.visits.length > 0)
  const ordered = seen
    .map((child) => ({ child, studyId: studyChild({ secret, child: child.id }).studyId }))
    .toSorted((a, b) => (a.studyId < b.studyId ? -1 : 1))
  const rows = ordered.flatMap(({ child }) =>
    studyRows(child, secret).map((row) => csvRow(STUDY_COLUMNS.map(({ value }) => value(row)))),
  )
  const cells = smallCells(seen.map(({ course }) => course))
  return {
    children: seen.length,
    rows: rows.length,
    smallCells: cells,
    files: [
      { name: "README.txt", text: readMe({ children: seen.length, rows: rows.length, cells }) },
      { name: "measurements.csv", text: csvRow(STUDY_COLUMNS.map(({ name }) => name)) + rows.join("") },
      { name: "dictionary.csv", text: dictionaryText() },
      { name: "small-cells.csv", text: cellsText(cells) },
    ],
  }
}

function dictionaryText(): string {
  const header = csvRow(["column", "title", "description", "unit_ucum", "allowed", "course_file_field"])
  const lines = dataDictionary().map((entry) =>
    csvRow([entry.column, entry.title, entry.description, entry.unit, entry.allowed, entry.field]),
  )
  return header + lines.join("")
}

const cellsText = (cells: readonly Cell[]): string =>
  csvRow(["sex", "ancestry", "age_at_first_visit_years", "children"]) +
  cells.map((cell) => csvRow([cell.sex, cell.ancestry, cell.ageAtFirstVisit, cell.children])).join("")

function readMe({
  children,
  rows,
  cells,
}: {
  readonly children: number
  readonly rows: number
  readonly cells: readonly Cell[]
}): string {
  const few = cells.reduce((sum, cell) => sum + cell.children, 0)
  return `Measurements of ${children} children, ${rows} rows, without names.

measurements.csv  one row for each eye that was examined at a visit
dictionary.csv    what each column means, its unit (UCUM) and what may stand there
small-cells.csv   groups of fewer than ${SMALLEST_CELL} children of one sex, ancestry and age at the first visit

Names, numbers, birth dates, free text, pharmacies, lots and the makers of instruments are not in it. The days of each
child are moved by a secret number of days of its own. Ages and intervals are exact; seasons are not to be studied here.

${few === 0 ? "No group is small." : `${few} children are in small groups and could be recognised by who knows them: leave them out, join ages, or hand the table to nobody who could.`}
Taking out names does not make data anonymous by itself. Local law and the ethics committee decide what may be shared.
`
}
