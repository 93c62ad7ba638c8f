import type { PracticeSettings } from "../engine/assessment.js"
import type { PracticeRecord } from "../record/index.js"
import type { Clock } from "./clock.js"

/** What the routes share. */
export interface Context {
  readonly record: PracticeRecord
  readonly clock: Clock
  /** The settings in force. */
  readonly settings: PracticeSettings
  /** Runs what checks and then records, one after another. */
  readonly oneAtATime: <T>(task: () => Promise<T>) => Promise<T>
}
