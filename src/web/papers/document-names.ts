import { msg } from "../../engine/say.js"
import type { DocumentKind } from "../../server/contract/documents.js"

/** What each document is called, to be said by `say`. */
export const DOCUMENT_NAMES: Readonly<Record<DocumentKind, string>> = {
  family: msg("Report for the family"),
  consent: msg("Consent to a treatment"),
  order: msg("Order to the pharmacy"),
  letter: msg("Letter to another doctor"),
  estimate: msg("Estimate of costs"),
  travel: msg("Note for school and travel"),
  "adverse-event": msg("Report of an unwanted effect"),
  record: msg("Full record"),
}
