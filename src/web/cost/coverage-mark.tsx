import { coverageInWords } from "../../engine/cost/coverage.js"
import type { Coverage } from "../../engine/practice-rules.js"

/** Full, half and empty: told apart by shape, never by colour alone. */
const MARKS: Readonly<Record<Coverage, string>> = { covered: "●", uncertain: "◐", "not-covered": "○" }

/** Short, for a column that asks "covered?". */
const SHORT: Readonly<Record<Coverage, string>> = {
  covered: "covered",
  uncertain: "uncertain",
  "not-covered": "not covered",
}

/** Who bears it, as mark and words; nobody bears what is free of charge. */
export function CoverageMark({
  coverage,
  cents,
  isShort = false,
}: {
  readonly coverage: Coverage
  readonly cents?: number
  readonly isShort?: boolean
}) {
  if (cents === 0) return <>free of charge</>
  return (
    <>
      <span aria-hidden="true" className="coverage-mark">
        {MARKS[coverage]}
      </span>{" "}
      {isShort ? SHORT[coverage] : coverageInWords(coverage)}
    </>
  )
}
