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
  /** Who wrote a source such as "treatments/yam2019" and where it stands. */
  citation: (id: string): string | undefined => {
    const { citation } = sourceById(id) ?? {}
    return citation === undefined ? undefined : withoutTitle(citation)
  },
})

/**
 * Authors, journal and year: a title may hold the name of a product, and no family is to read one. A
 * source without authors keeps its title.
 */
function withoutTitle(citation: string): string {
  const parts = citation.split(/[.?] (?=[A-Z0-9])/)
  return parts.length < 3 ? parts.join(". ") : `${parts[0]}. ${parts.at(-1)}`
}
