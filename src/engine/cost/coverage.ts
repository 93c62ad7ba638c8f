import type { Coverage } from "../practice-rules.js"
import { msg, say } from "../say.js"

/** Who bears it, in words; the three are never added up without saying so. */
const WORDS: Readonly<Record<Coverage, string>> = {
  covered: msg("covered|by an insurer"),
  uncertain: msg("uncertain whether covered"),
  "not-covered": msg("not covered"),
}

export const coverageInWords = (coverage: Coverage): string => say(WORDS[coverage])

const SHORT: Readonly<Record<Coverage, string>> = { ...WORDS, uncertain: msg("uncertain|whether covered") }

/** For a column that asks "covered?". */
export const coverageInShort = (coverage: Coverage): string => say(SHORT[coverage])

/** Sums by who bears them, in the smallest unit of the currency. */
export interface CoverageTotals {
  readonly coveredCents: number
  readonly uncertainCents: number
  readonly notCoveredCents: number
}

export const nothingYet: CoverageTotals = { coveredCents: 0, uncertainCents: 0, notCoveredCents: 0 }

/** The sums with one amount more. */
export function withAmount(
  totals: CoverageTotals,
  { cents, coverage }: { readonly cents: number; readonly coverage: Coverage },
): CoverageTotals {
  switch (coverage) {
    case "covered":
      return { ...totals, coveredCents: totals.coveredCents + cents }
    case "uncertain":
      return { ...totals, uncertainCents: totals.uncertainCents + cents }
    case "not-covered":
      return { ...totals, notCoveredCents: totals.notCoveredCents + cents }
  }
}

export const totalsOf = (
  lines: readonly { readonly cents: number; readonly coverage: Coverage }[],
): CoverageTotals => lines.reduce(withAmount, nothingYet)
