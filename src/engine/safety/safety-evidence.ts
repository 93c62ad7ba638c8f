import type { TreatmentEffect } from "../../evidence/types.js"

/** An arm of a trial with what share of its children told of an effect, per cent. */
export interface EventRow {
  readonly trial: string
  readonly arm?: string
  readonly months?: number | string
  readonly n?: number
  readonly source?: string
  readonly how_obtained?: string
  readonly photophobia?: number
  readonly improved_with_photochromic?: number
  readonly [field: string]: unknown
}

/** How far a strength changed pupil and accommodation. */
export interface PhysiologyRow {
  readonly trial?: string
  readonly months?: number
  readonly concentration_percent?: number
  readonly accommodation_loss_D?: number
  readonly photopic_pupil_increase_mm?: number
  readonly source: string
  readonly how_obtained: string
  readonly [field: string]: unknown
}

/** The parts of the evidence that safety speaks from: `adverseEffects`, `duties` and the effects of the growth model. */
export interface SafetyEvidence {
  readonly adverseEffects: {
    readonly events_percent: readonly EventRow[]
    readonly physiology: readonly PhysiologyRow[]
  }
  readonly duties: {
    readonly duties: readonly {
      readonly id: string
      readonly evidence_status: string
      readonly how_obtained: string
    }[]
  }
  readonly effects: readonly TreatmentEffect[]
}
