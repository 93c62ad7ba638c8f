import { coverageInWords } from "../../engine/cost/coverage.js"
import type { Coverage } from "../../engine/practice-rules.js"

/** Full, half and empty: told apart by shape, never by colour alone. */
const MARKS: Readonly<Record<Coverage, string>> = { covered: "●", uncertain: "◐", "not-covered": "○" }

/** Who bears it, as mark and words; nobody bears what is free of charge. */
export function CoverageMark({ coverage, cents }: { readonly coverage: Coverage; readonly cents?: number }) {
  if (cents === 0) return <>free of charge</>
  return (
    <>
      <span aria-hidden="true" className="coverage-mark">
        {MARKS[coverage]}
      </span>{" "}
      {coverageInWords(coverage)}
    </>
  )
}
