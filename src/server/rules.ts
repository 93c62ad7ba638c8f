import type { PracticeRules } from "../engine/practice-rules.js"
import type { PracticeRecord } from "../record/index.js"

/** The practice's rules, read once and again whenever a paper was recorded. */
export interface RulesInForce {
  readonly now: () => Promise<PracticeRules>
  /** To be called after a paper was recorded. */
  readonly changed: () => void
}

export function rulesInForce(record: PracticeRecord): RulesInForce {
  let read: Promise<PracticeRules> | null = null
  return {
    now: () => {
      read ??= record.rules()
      return read
    },
    changed: () => {
      read = null
    },
  }
}
