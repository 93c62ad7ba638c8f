import type { Duty } from "../assessment.js"
import type { Unmeasured } from "./measured.js"
import type { ProtocolStep } from "./protocol.js"

/** Where a duty comes from: what its words say to people, for whoever has to decide something by it. */
export interface DutySource {
  /** The step of the protocol; absent for a consent and a bottle, which belong to none. */
  readonly step?: ProtocolStep
  /** Whether the step is owed again because of a change of treatment. */
  readonly isAfterChange?: boolean
  /** What an examination has still to measure, and what it needs besides. */
  readonly unmeasured?: readonly Unmeasured[]
  readonly notInForce?: readonly string[]
  /** Whether the needs of a consent say no more than its step does. */
  readonly needsRepeatStep?: boolean
}

// Kept beside the duty and not in it: the duty, whole, is a contract of the command line.
const sources = new WeakMap<Duty, DutySource>()

export function dutyFrom(source: DutySource, duty: Duty): Duty {
  sources.set(duty, source)
  return duty
}

/** Of a duty that `duties` gave; a copy of one has none. */
export const sourceOf = (duty: Duty): DutySource => sources.get(duty) ?? {}
