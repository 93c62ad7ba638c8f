import type { CalendarDate } from "../course.js"
import { bottlesOf } from "./bottles.js"
import type { CostLine, CostPlan } from "./cost-plan.js"
import { type CoverageTotals, nothingYet, withAmount } from "./coverage.js"

/** What a row is for: "6 bottles of atropine 0.05 %". */
export const rowInWords = ({ what, count, drops }: Pick<CostRow, "what" | "count" | "drops">): string =>
  count === 1 || drops === undefined ? what : bottlesOf(drops, count)

export interface CostRow extends Pick<CostLine, "kind" | "what" | "drops" | "cents" | "coverage"> {
  readonly from: CalendarDate
  /** The last of several days; the same as `from` for a single one. */
  readonly to: CalendarDate
  /** How many of it; `cents` are for all of them. */
  readonly count: number
  /** Sums up to and with this row, by who bears them. */
  readonly soFar: CoverageTotals
}

/** A plan as a table is read: the bottles between two visits in one row, with sums so far by coverage. */
export function costRows({ lines }: Pick<CostPlan, "lines">): readonly CostRow[] {
  const rows: CostRow[] = []
  let soFar = nothingYet
  for (const line of lines) {
    const { date, kind, what, drops, cents, coverage } = line
    soFar = withAmount(soFar, line)
    const last = rows.at(-1)
    const isMore =
      last?.kind === "bottle" &&
      kind === "bottle" &&
      last.what === what &&
      last.coverage === coverage &&
      last.cents === cents * last.count
    if (isMore) {
      rows[rows.length - 1] = {
        ...last,
        to: date,
        count: last.count + 1,
        cents: last.cents + cents,
        soFar,
      }
    } else {
      const inDrops = drops === undefined ? {} : { drops }
      rows.push({ kind, what, ...inDrops, cents, coverage, from: date, to: date, count: 1, soFar })
    }
  }
  return rows
}
