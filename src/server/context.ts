import type { PracticeSettings } from "../engine/assessment.js"
import type { PracticeRecord } from "../record/index.js"
import type { Clock } from "./clock.js"
import type { PaperSetter } from "./paper-setter.js"
import type { RulesInForce } from "./rules.js"

/** What the routes share. */
export interface Context {
  readonly record: PracticeRecord
  readonly clock: Clock
  /** The settings in force. */
  readonly settings: PracticeSettings
  readonly rules: RulesInForce
  /** Where families reach this server, without a slash at the end; as the practice reaches it when absent. */
  readonly publicAddress?: string | undefined
  /** Sets documents as PDF. */
  readonly papers: PaperSetter
  /** Runs what checks and then records, one after another. */
  readonly oneAtATime: <T>(task: () => Promise<T>) => Promise<T>
}
