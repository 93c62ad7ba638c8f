import type { InstrumentRules } from "../../engine/practice-rules.js"
import type { Taken } from "../intake/taken.js"
import type { EventLog } from "./event-log.js"
import type { DicomLimits } from "./limits.js"

/** What all conversations of a receiver share. */
export interface ReceiverParts {
  readonly limits: DicomLimits
  readonly log: EventLog
  /** The practice's settings as they stand now. */
  readonly rules: () => Promise<InstrumentRules | undefined>
  /** Stores an object; it is on the disk, or known already, when this is answered. */
  readonly take: (object: {
    readonly file: string
    readonly bytes: Uint8Array
    readonly title: string
  }) => Promise<readonly Taken[]>
  readonly isForThisMachineOnly: boolean
  /** Memory for objects that are being put together, of all conversations. */
  readonly hold: (bytes: number) => boolean
  /** Counts an association as under way; false when there are too many. */
  readonly enter: () => boolean
  readonly leave: () => void
  /** Counts an object of a title; false when there were too many in this minute. */
  readonly isInTime: (title: string) => boolean
}

/** Memory that is shared and never goes over its limit. */
export function sharedRoom(mostBytes: number): (bytes: number) => boolean {
  let held = 0
  return (bytes) => {
    if (bytes > 0 && held + bytes > mostBytes) return false
    held += bytes
    return true
  }
}
