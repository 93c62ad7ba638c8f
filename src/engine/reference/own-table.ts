import type { CentileReference, LmsReference, Provenance, ReferenceSex } from "../../evidence/types.js"
import { normalQuantile } from "../numeric/normal.js"
import type { Problem } from "../problem.js"
import { say } from "../say.js"
import { pointsAtAge } from "./centile-distribution.js"
import { type Lms, lmsValue } from "./lms.js"
import {
  LONGEST_MM,
  readTableLines,
  SHORTEST_MM,
  type TableLines,
  type TableProblem,
  type TableRow,
  tableProblem,
} from "./own-table-lines.js"
import { provenanceProblems } from "./provenance-problems.js"

type CentileRow = CentileReference["rows"][number]

/**
 * A practice's own published table of axial length as a reference, or every problem with its line, column, value and
 * what is allowed.
 *
 * The CSV has the columns `sex, age_years, L, M, S`, or `sex, age_years, p3, p10, ...` with three or more centiles; a
 * column `n` is passed over. Lengths in mm; ages ascend within a sex; centiles rise along a row and may not cross at
 * any age between the rows. A blank centile means "not printed". The provenance has every key of the type.
 *
 * The grade is B when a second person has checked the figures (`checkedBy`), else C: approximate.
 */
export function ownReference({
  csv,
  provenance,
}: {
  csv: string
  provenance: Readonly<Record<string, unknown>>
}): { readonly reference: LmsReference | CentileReference } | { readonly problems: readonly Problem[] } {
  const faultsOfProvenance = provenanceProblems(provenance)
  const table = readTableLines(csv)
  const faultsOfTable = "problems" in table ? table.problems : tableProblems(table)
  const problems = [...faultsOfProvenance, ...faultsOfTable]
  if (problems.length > 0 || "problems" in table) return { problems }
  return { reference: referenceOf(table, provenance as unknown as Provenance) }
}

function referenceOf(table: TableLines, provenance: Provenance): LmsReference | CentileReference {
  const ages = table.rows.map((row) => row.numbers.age_years!)
  const base = {
    id: provenance.id,
    measure: "axial-length",
    grade: provenance.checkedBy === null ? "C" : "B",
    population: provenance.population,
    n: provenance.n,
    instrument: provenance.device,
    youngestAgeYears: Math.min(...ages),
    oldestAgeYears: Math.max(...ages),
    note: provenance.notes,
    provenance,
  } as const
  if (table.kind === "centiles") {
    return { ...base, shape: "centiles", agesAreCells: false, rows: table.rows.map(centileRow) }
  }
  const lmsRow = (row: TableRow) => ({ sex: row.sex, ageYears: row.numbers.age_years!, ...lmsOf(row) })
  return { ...base, shape: "lms", rows: table.rows.map(lmsRow) }
}

function tableProblems(table: TableLines): readonly TableProblem[] {
  const bySex = SEXES.map((sex) => table.rows.filter((row) => row.sex === sex))
  const rowFaults = [
    ...bySex.flatMap(agesOutOfOrder),
    ...table.rows.flatMap(
      table.kind === "lms" ? implausibleSpread : (row) => centilesOutOfOrder(row, table.centiles),
    ),
  ]
  // Curves through rows that are already at fault would only repeat it.
  if (rowFaults.length > 0 || table.kind === "lms") return rowFaults
  return bySex.flatMap(crossingsBetweenRows)
}

function agesOutOfOrder(rows: readonly TableRow[]): readonly TableProblem[] {
  return rows.flatMap(({ line, sex, numbers }, i) => {
    const before = rows[i - 1]?.numbers.age_years ?? -1
    if (numbers.age_years! > before) return []
    const allowed = say(
      "an age above {before}, the one before for {sex, select, female {girls} male {boys} other {both sexes}}",
      { before, sex },
    )
    return [tableProblem({ line, column: "age_years", value: numbers.age_years, allowed })]
  })
}

const SEXES: readonly ReferenceSex[] = ["female", "male", "all"]

function implausibleSpread(row: TableRow): readonly TableProblem[] {
  const lengths = [2, 98].map((centile) => lmsValue({ z: normalQuantile(centile / 100), ...lmsOf(row) }))
  if (lengths.every((length) => length !== null && length >= SHORTEST_MM && length <= LONGEST_MM)) return []
  const allowed = say("an L that with M and S puts the centiles 2 and 98 from {shortest} to {longest} mm", {
    shortest: SHORTEST_MM,
    longest: LONGEST_MM,
  })
  return [tableProblem({ line: row.line, column: "L", value: row.numbers.l, allowed })]
}

function centilesOutOfOrder(
  { line, numbers }: TableRow,
  centiles: readonly number[],
): readonly TableProblem[] {
  const printed = centiles.map((centile) => `p${centile}`).filter((column) => column in numbers)
  if (printed.length < 2) {
    return [
      tableProblem({
        line,
        column: "row",
        value: printed.length,
        allowed: say("two or more printed centiles"),
      }),
    ]
  }
  return printed.slice(1).flatMap((column, i) => {
    const below = printed[i]!
    if (numbers[column]! > numbers[below]!) return []
    const allowed = say("above {column} of the same row, {value}", {
      column: below,
      value: numbers[below] as number,
    })
    return [tableProblem({ line, column, value: numbers[column], allowed })]
  })
}

// Each centile runs on its own curve between ages, so ordered rows do not yet make ordered curves.
const STEPS_BETWEEN_ROWS = 20

function crossingsBetweenRows(tableRows: readonly TableRow[]): readonly TableProblem[] {
  const rows = tableRows.map(centileRow)
  return rows.slice(1).flatMap((to, i) => {
    const from = rows[i]!
    for (let step = 1; step < STEPS_BETWEEN_ROWS; step += 1) {
      const ageYears = from.ageYears + ((to.ageYears - from.ageYears) * step) / STEPS_BETWEEN_ROWS
      const points = pointsAtAge(rows, ageYears)
      const crossed = points.findIndex((point, at) => at > 0 && !(point.value > points[at - 1]!.value))
      if (crossed !== -1) {
        const column = `p${points[crossed]!.centile}`
        const allowed = say("above {column} at every age from {from} to {to}", {
          column: `p${points[crossed - 1]!.centile}`,
          from: from.ageYears,
          to: to.ageYears,
        })
        const value = to.values[points[crossed]!.centile]
        return [tableProblem({ line: tableRows[i + 1]!.line, column, value, allowed })]
      }
    }
    return []
  })
}

function lmsOf({ numbers }: TableRow): Lms {
  return { l: numbers.l!, m: numbers.m!, s: numbers.s! }
}

function centileRow({ sex, numbers }: TableRow): CentileRow {
  const { age_years, ...values } = numbers
  return {
    sex,
    ageYears: age_years!,
    values: Object.fromEntries(
      Object.entries(values).map(([column, mm]) => [String(Number(column.slice(1))), mm]),
    ),
  }
}
