/**
 * What the text of a consent takes its figures from: trials, side effects, what follows a stop, and the citations.
 * Large; loaded only where such a text is made.
 */
import { risk } from "./clinical.js"
import { growthParameters } from "./parameters/growth-2026-11-25.js"
import { sourceById } from "./sources.js"
import {
  adverseEffects,
  compounding,
  metaAnalyses,
  opticalTreatments,
  rebound,
  trials,
} from "./treatments.js"

export const consentEvidence = Object.freeze({
  effects: growthParameters.effects,
  trials,
  opticalArms: opticalTreatments.arms,
  networkRows: metaAnalyses.find(({ id }) => id === "bayes_nma2024")?.rows ?? [],
  physiology: adverseEffects.physiology,
  events: adverseEffects.events_percent,
  rebound: rebound.entries,
  bottleQuality: compounding.measured_quality,
  lensInfections: risk.risk_benefit,
  /** Citation of a source such as "treatments/yam2019". */
  // An author who was remembered and not read is not named.
  citation: (id: string): string | undefined =>
    sourceById(id)?.citation.replace(/^.*\(author from memory\)\.?\s*/, ""),
})
