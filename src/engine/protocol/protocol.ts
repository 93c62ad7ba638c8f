import type { TreatmentKind } from "../course.js"

/**
 * A protocol as data: what is examined and decided, when, and what must be in force.
 * A practice edits copies of the standard one; `protocolProblems` says what is wrong with a copy.
 */
export interface Protocol {
  readonly id: string
  readonly title: string
  readonly version: string
  /** Where the intervals come from, e.g. "common practice, no source". */
  readonly source: string
  /** A gap in treatment of up to this many days is a pause; a longer one is a stop, and what follows a new course. */
  readonly longestPauseDays: number
  /** A consent is asked for this many days before the treatment begins. */
  readonly consentLeadDays: number
  /** The next bottle is asked for this many days before the last one ends. */
  readonly bottleLeadDays: number
  /** Days of use after opening where the pharmacy gave no beyond-use date. */
  readonly bottleDaysAfterOpening: number
  readonly steps: readonly ProtocolStep[]
}

export interface ProtocolStep {
  readonly id: string
  /** What a person reads: "6-month review". Offered as the `step` of a duty. */
  readonly title: string
  readonly kind: StepKind
  /** What an examination is for; decides which questions are asked. Found from anchor and measures when absent. */
  readonly stage?: Stage | undefined
  readonly anchor: Anchor
  /** Calendar months from the anchor, by `addMonths`. */
  readonly offsetMonths: number
  /** Days after those months, for what comes within the first month; none when absent. */
  readonly offsetDays?: number | undefined
  readonly windowDaysBefore: number
  readonly windowDaysAfter: number
  /** Empty for a decision. */
  readonly measures: readonly Measure[]
  /** Asked for as well while atropine is in use. */
  readonly measuresOnAtropine: readonly Measure[]
  readonly inForce: readonly InForce[]
  /** The step is owed again after a change of strength (of the treatments in `onlyFor`, if any), counted from the change. */
  readonly restartsOnChange: boolean
  /** The step is owed only while one of these is given; whatever is given when absent. */
  readonly onlyFor?: readonly TreatmentKind[] | undefined
  /** For a decision: what it settles. */
  readonly decides?: Decides | undefined
  /** For a decision to step down: the nights of the week with a drop from then on. */
  readonly nightsPerWeek?: number | undefined
}

/** Stages of the programme, in the order in which a child passes them. */
export const STAGES = ["baseline", "safety-check", "review", "washout", "discharge"] as const
export type Stage = (typeof STAGES)[number]

export const STEP_KINDS = ["examination", "decision"] as const
export type StepKind = (typeof STEP_KINDS)[number]

/**
 * The day a step is counted from.
 * - `before-start`: the start of the course, or the first visit of a child not treated; measured before the first drop
 * - `start`, `restart`: the start of a first course, of a later one (which follows `start` where no step says `restart`)
 * - `stop`: the first day without treatment
 * - `last-visit-on-treatment`, `last-visit-off-treatment`: the last visit, when no other examination lies ahead
 */
export const ANCHORS = [
  "before-start",
  "start",
  "restart",
  "stop",
  "last-visit-on-treatment",
  "last-visit-off-treatment",
] as const
export type Anchor = (typeof ANCHORS)[number]

export const MEASURES = [
  "axial-length",
  "refraction",
  "cycloplegic-refraction",
  "cornea-radius",
  "photopic-pupil",
  "accommodation",
  "near-acuity",
  "distance-acuity",
  "symptoms",
] as const
export type Measure = (typeof MEASURES)[number]

export const IN_FORCE = ["consent", "supply"] as const
export type InForce = (typeof IN_FORCE)[number]

/**
 * - `stop`: whether this course ends here
 * - `restart`: whether treatment is taken up again after the stop
 * - `step-down`: whether there are fewer nights with a drop from here on
 */
export const DECIDES = ["stop", "restart", "step-down"] as const
export type Decides = (typeof DECIDES)[number]
