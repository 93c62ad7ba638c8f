import type { Pharmacy } from "../practice-rules.js"
import { USUAL_DAYS_AFTER_OPENING } from "./bottles-needed.js"
import { usualTransfers } from "./limits.js"

/**
 * What is assumed of the pharmacy until a practice names its own. Common practice, no source, except the 5 mL, the most
 * frequent bottle of a survey of pharmacies (evidence: treatments/compounding.json, compounding_survey_arvo2022).
 */
export const usualPharmacy: Pharmacy = {
  id: "usual",
  name: "Compounding pharmacy",
  leadDays: 14,
  stockPercents: [1],
  smallestVolumeMl: usualTransfers.smallestVolumeMl,
  bottleMl: 5,
  isPreserved: false,
  daysAfterOpening: USUAL_DAYS_AFTER_OPENING,
}

/** The practice's pharmacies, or the usual one where it has named none. */
export const pharmaciesOf = (pharmacies: readonly Pharmacy[]): readonly Pharmacy[] =>
  pharmacies.length > 0 ? pharmacies : [usualPharmacy]
