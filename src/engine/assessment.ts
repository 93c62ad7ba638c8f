import type { Grade } from "../evidence/types.js"
import type { CalendarDate, Eye } from "./course.js"

/** What `assess` returns: the JSON of design section 7, with what is needed to ask why. */

export type FindingState = "slowed" | "not-slowed" | "cannot-tell-yet" | "no-treatment"
export type Lean = "slowed" | "not-slowed"
export type GrowthState = "near-normal" | "slowed-growth" | "as-untreated" | "faster" | "unclear"
export type KnownGrowthState = Exclude<GrowthState, "unclear">

export interface Estimate {
  readonly mm: number
  readonly low95: number
  readonly high95: number
}

/** Growth of one eye over an interval, mm per year with its 95 % interval. */
export interface Rate {
  readonly mmPerYear: number
  readonly low95: number
  readonly high95: number
  readonly low90: number
  readonly high90: number
  readonly low50: number
  readonly high50: number
  readonly from: CalendarDate
  readonly to: CalendarDate
}

export type Position =
  | {
      /** Null beyond the outermost centile of a printed table, where the method defines none. */
      readonly z: number | null
      readonly centile: number | string
      readonly reference: string
      readonly grade: Grade
      readonly note?: string
    }
  | { readonly refused: string; readonly reference?: string; readonly grade?: Grade }

export interface EyeAssessment {
  readonly length: Estimate | null
  readonly rate: Rate | null
  /** Expected over the same dates as `rate`: an untreated myope of this age and population. */
  readonly natural: { readonly mmPerYear: number } | null
  readonly emmetropic: { readonly mmPerYear: number } | null
  readonly detectableChangeMm: number | null
  readonly position: Position
}

export interface Finding {
  readonly state: FindingState
  /** The treatment the question is about, in words a person can read, e.g. "atropine 0.05 %". */
  readonly treatment: string | null
  /** How many times likelier the lengths are if the treatment works as in the trials than if it does nothing. */
  readonly likelihoodRatio: number | null
  readonly lean: Lean | null
  /** Likelihood ratio at or above which `slowed` is said. */
  readonly upper: number
  /** Likelihood ratio at or below which `not-slowed` is said. */
  readonly lower: number
  /** First planned review by which an answer is at least as likely as not; null when none is. */
  readonly earliestAnswer: CalendarDate | null
  /** Sentences that say why the state is what it is. */
  readonly reasons: readonly string[]
}

export interface GrowthVerdict {
  readonly state: GrowthState
  readonly probabilities: Readonly<Record<KnownGrowthState, number>> | null
  /** Growth of the child, mean of the eyes measured; of one eye where `eye` names it. */
  readonly mmPerYear: number | null
  /** Set where the eyes are not treated alike: the one that grows faster, which the answer is about. */
  readonly eye?: Eye
  readonly low95?: number
  readonly high95?: number
  readonly naturalMmPerYear?: number
  readonly emmetropicMmPerYear?: number
  readonly from?: CalendarDate
  readonly to?: CalendarDate
  readonly reasons: readonly string[]
}

export const AFTER_STOP_STATES = ["no-rebound-seen", "rebound-likely", "cannot-tell-yet"] as const

/** After every treatment has stopped: whether the eye makes up for what was withheld, or only grows untreated again. */
export interface AfterStop {
  readonly state: (typeof AFTER_STOP_STATES)[number]
  /** How many times likelier the lengths are with the rebound that was reported than with untreated growth. */
  readonly likelihoodRatio: number | null
  readonly why: string
  /** Growth since the stop, mean of the eyes measured, and natural growth over the same dates. */
  readonly growthMm: number | null
  readonly naturalMm: number | null
}

/** Chance that there is an answer (either one) at or before a planned review. */
export interface Chance {
  readonly review: CalendarDate
  readonly step: string
  readonly ifItWorks: number
  readonly ifNot: number
}

export interface Concern {
  readonly kind: string
  readonly why: string
}

export interface Check {
  readonly kind: string
  readonly path: string
  readonly why: string
}

/** The child's own multiple of natural growth and the withheld fraction: prior beside posterior. */
export interface Belief {
  readonly what: string
  readonly prior: { readonly mean: number; readonly sd: number }
  readonly posterior: { readonly mean: number; readonly sd: number }
}

export interface Assessment {
  readonly asOf: CalendarDate
  readonly ageYears: number
  readonly eyes: Readonly<Record<Eye, EyeAssessment>>
  readonly finding: Finding
  readonly growth: GrowthVerdict
  readonly chances: readonly Chance[]
  readonly concerns: readonly Concern[]
  readonly checks: readonly Check[]
  readonly beliefs: readonly Belief[]
  /** Null while a treatment runs, and where none ever did. */
  readonly afterStop?: AfterStop | null
  /** Set when the child's age lies outside the growth model: why nothing is said. */
  readonly refused?: string
  readonly method: { readonly version: string; readonly parameters: string }
}

/** Quantiles of length at a list of ages, mm. */
export interface Fan {
  readonly p5: readonly number[]
  readonly p25: readonly number[]
  readonly p50: readonly number[]
  readonly p75: readonly number[]
  readonly p95: readonly number[]
}

export interface EyeForecast {
  readonly ages: readonly number[]
  readonly untreated: Fan
  readonly asTreated: Fan
}

export interface Forecast {
  readonly asOf: CalendarDate
  readonly eyes: Partial<Readonly<Record<Eye, EyeForecast>>>
  /** Chance that the longer eye reaches 26 mm by 18, null when there is no length to start from. */
  readonly chance26mmBy18: { readonly untreated: number; readonly asTreated: number } | null
  /** Chance that the more myopic eye reaches -6 D by 18; null without a refraction. */
  readonly chanceMinus6DBy18: { readonly untreated: number; readonly asTreated: number } | null
  readonly refused?: string
  readonly notes: readonly string[]
}

export type DutyState = "done" | "open" | "overdue" | "upcoming" | "missed"

export interface Duty {
  readonly kind: string
  readonly step: string
  readonly opens: CalendarDate
  readonly due: CalendarDate
  readonly closes: CalendarDate
  readonly state: DutyState
  readonly needs: readonly string[]
}

/** What a practice may set; the defaults are in `settings.ts`. */
export interface PracticeSettings {
  /** Error rates of the sequential test. */
  readonly alpha: number
  readonly beta: number
  /** Certainty asked before a growth state is said. */
  readonly certainty: number
  /** Cuts on the scale 0 = emmetropic growth, 1 = natural growth. */
  readonly cuts: { readonly nearNormal: number; readonly slowed: number; readonly asUntreated: number }
  /** 1 for trial-like progressors, lower for an unselected clinic. */
  readonly settingFactor: number
}
