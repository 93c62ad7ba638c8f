import type { TreatmentEffect } from "../../evidence/types.js"

/**
 * The rows of the evidence that the text of a consent is worked out from, as far as they are read here. They are passed
 * in: `lengthwise/evidence` has them. Lengths in mm, strengths in % w/v; a missing figure is a figure that was not read.
 */
export interface ConsentEvidence {
  readonly effects: readonly TreatmentEffect[]
  readonly trials: readonly TrialRow[]
  readonly opticalArms: readonly OpticalRow[]
  /** A joint evaluation of many trials, against a placebo drop; negative is less growth. */
  readonly networkRows: readonly NetworkRow[]
  readonly physiology: readonly PhysiologyRow[]
  readonly events: readonly EventRow[]
  readonly rebound: readonly ReboundRow[]
  readonly bottleQuality: {
    readonly source: string
    readonly samples: number
    readonly pharmacies: number
    readonly label_claim_percent: { readonly min: number; readonly max: number }
  }
  readonly lensInfections: {
    readonly source_id: string
    readonly microbial_keratitis_per_10000_patient_years: readonly number[]
    readonly fraction_with_vision_loss: number
  }
  readonly citation: (id: string) => string | undefined
}

interface TrialRow {
  readonly trial: string
  readonly arm: string
  readonly class?: string
  readonly concentration_percent: number | null
  readonly months: number
  readonly interval: string
  readonly dAL_mean?: number | null
  readonly source: string
}

interface OpticalRow {
  readonly trial: string
  readonly class: string
  readonly arm: string
  readonly months: number | null
  readonly dAL_mean?: number | null
  readonly source: string
}

interface NetworkRow {
  readonly concentration_percent?: number
  readonly dAL?: number
  readonly dAL_cri95?: readonly number[]
}

interface PhysiologyRow {
  readonly months?: number
  readonly trial?: string
  readonly concentration_percent?: number
  readonly photopic_pupil_increase_mm?: number
  readonly accommodation_loss_D?: number
  readonly accommodation_loss_D_range?: readonly number[]
  readonly source: string
}

export interface EventRow {
  readonly trial: string
  readonly months?: number | string
  readonly arm?: string
  readonly n?: number
  readonly photophobia?: number
  readonly blurred_near?: number
  readonly blurred_vision?: number
  readonly reading_problems?: number
  readonly headache?: number
  readonly allergic_conjunctivitis?: number
  readonly eye_irritation?: number
  readonly stopped_for_event?: number | null
  readonly improved_with_photochromic?: number
  readonly source: string
}

export interface ReboundRow {
  readonly trial: string
  readonly concentration_percent?: number
  readonly off_months?: number
  readonly dAL_off?: number
  readonly continued_dAL?: number
  readonly control_dAL_off?: number
  readonly diff_dAL_off?: number
  readonly diff_dAL_ci95?: readonly number[]
  readonly dSER_off?: number
  readonly control_dSER_off?: number
  readonly retreated_percent?: number
  readonly extra_dAL_per_year?: number
  readonly extra_dAL_ci95?: readonly number[]
  readonly source: string
}

/** Sentences with their figures, and the ids of the sources they rest on. */
export interface Facts {
  readonly lines: readonly string[]
  readonly sources: readonly string[]
}

export const NO_FACTS: Facts = { lines: [], sources: [] }

export const allFacts = (parts: readonly Facts[]): Facts => ({
  lines: parts.flatMap(({ lines }) => lines),
  sources: [...new Set(parts.flatMap(({ sources }) => sources))],
})

export const fact = (line: string, ...sources: readonly string[]): Facts => ({ lines: [line], sources })
