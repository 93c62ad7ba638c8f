import { coverageInShort, coverageInWords } from "../../engine/cost/coverage.js"
import type { Coverage } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"

/** Full, half and empty: told apart by shape, never by colour alone. */
export const COVERAGE_SIGNS: Readonly<Record<Coverage, string>> = {
  covered: "●",
  uncertain: "◐",
  "not-covered": "○",
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
  if (cents === 0) return <>{say("free of charge")}</>
  return (
    <>
      <span aria-hidden="true" className="coverage-mark">
        {COVERAGE_SIGNS[coverage]}
      </span>{" "}
      {isShort ? coverageInShort(coverage) : coverageInWords(coverage)}
    </>
  )
}
