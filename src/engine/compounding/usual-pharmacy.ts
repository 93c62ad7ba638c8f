import type { Pharmacy } from "../practice-rules.js"
import { msg, say } from "../say.js"
import { USUAL_DAYS_AFTER_OPENING } from "./bottles-needed.js"
import { usualTransfers } from "./limits.js"
import type { CompoundingRequest } from "./order-request.js"

/**
 * What is assumed of the pharmacy until a practice names its own. Common practice, no source, except the 5 mL, the most
 * frequent bottle of a survey of pharmacies (evidence: treatments/compounding.json, compounding_survey_arvo2022).
 */
export const usualPharmacy: Pharmacy = {
  id: "usual",
  name: msg("Compounding pharmacy"),
  leadDays: 14,
  stockPercents: [1],
  smallestVolumeMl: usualTransfers.smallestVolumeMl,
  bottleMl: 5,
  isPreserved: false,
  daysAfterOpening: USUAL_DAYS_AFTER_OPENING,
}

/** Nights an order covers where nothing else says so: three bottles' worth of the usual month. Ours. */
export const USUAL_NIGHTS = 90

/**
 * A pharmacy's name as it is read. The usual one is kept under one name in every language, so that what was recorded
 * in one is found again in another.
 */
export const pharmacyInWords = (name: string): string => (name === usualPharmacy.name ? say(name) : name)

/** The practice's pharmacies, or the usual one where it has named none. */
export const pharmaciesOf = (pharmacies: readonly Pharmacy[]): readonly Pharmacy[] =>
  pharmacies.length > 0 ? pharmacies : [usualPharmacy]

/**
 * The stock an order starts from where none is named: the weakest that is stronger than the strength ordered, since it
 * needs the least diluting; the strongest where none is.
 */
export function stockFor({ stockPercents }: Pharmacy, concentrationPercent: number): number {
  const inOrder = stockPercents.toSorted((a, b) => a - b)
  return inOrder.find((percent) => percent >= concentrationPercent) ?? inOrder.at(-1) ?? 1
}

/** A request worked with what the pharmacy measures with, and with the other stocks it has. */
export function pharmacyRequest(
  pharmacy: Pharmacy,
  order: Pick<CompoundingRequest, "concentrationPercent" | "stockPercent" | "bottles" | "volumeMl">,
): CompoundingRequest {
  const { smallestVolumeMl, devices, stockTolerance, stockPercents } = pharmacy
  return {
    ...order,
    smallestVolumeMl,
    devices: devices ?? undefined,
    stockTolerance: stockTolerance ?? undefined,
    // A pharmacy that has one stock may still make a weaker one first.
    otherStockPercents: stockPercents.length > 1 ? stockPercents : undefined,
  }
}
