import type { PracticeAnswer } from "../../server/contract/practice.js"
import type { RulesAnswer } from "../../server/contract/rules.js"

/** What every part of the settings is given. */
export interface SettingsPartProps {
  readonly practice: PracticeAnswer
  readonly rules: RulesAnswer
  /** Called with what to say once something is recorded; the part stays open. */
  readonly onDone: (message: string) => void
}
