import { SHEET_PARTS } from "../../engine/compounding/sheet.js"
import type { DocumentKind } from "../document.js"

type Names = Readonly<Record<DocumentKind, readonly string[]>>

/** A full record is full: a template may add to it and leave nothing out. */
const RECORD_PARTS = [
  "child",
  "summary",
  "figure",
  "visits",
  "treatments",
  "told",
  "decisions",
  "concerns",
  "not-recorded",
  "cautions",
]

/** The parts a document can have, in the order that ships. A child's document may lack some. */
export const PARTS_OF: Names = {
  family: [
    "lead",
    "what-we-saw",
    "figure-eyes",
    "what-it-means",
    "figure-growth",
    "second-side",
    "figure-length",
    "what-we-do-next",
    "watch-for",
    "urgent",
    "questions",
    "about",
    "code",
  ],
  consent: ["who", "caution", "text", "signatures", "sources"],
  order: ["statement", "not-ordered", ...SHEET_PARTS],
  letter: [
    "address",
    "about",
    "warning-signs",
    "growth",
    "treatment-answer",
    "last-visits",
    "standing",
    "small-print",
    "signature",
  ],
  estimate: ["child", "no-invoice", "sums", "paid", "no-fee", "by-date", "taken-for-granted"],
  travel: [
    "child",
    "what-it-is",
    "what-is-used",
    "what-may-be-noticed",
    "what-helps",
    "carrying",
    "emergency",
    "practice",
    "signature",
    "sources",
  ],
  "adverse-event": ["rules-first", "patient", "product", "reaction", "challenges", "reporter"],
  record: RECORD_PARTS,
}

/** What a template may put into its own sentences. */
export const VALUES_OF: Names = {
  family: [
    "child",
    "practice",
    "today",
    "rightMm",
    "leftMm",
    "growthMm",
    "growthMonths",
    "usualMm",
    "untreatedMm",
    "nextVisit",
    "nextVisitFrom",
    "nextVisitUntil",
    "nextDecision",
    "bottleUntil",
  ],
  consent: ["treatment", "date", "version", "child"],
  order: ["child", "practice", "today", "ordered", "prescriber", "pharmacy", "strength", "bottles", "volume"],
  letter: ["child", "born", "number", "practice", "date", "author", "growth", "treatment"],
  estimate: [
    "child",
    "practice",
    "today",
    "plan",
    "from",
    "to",
    "months",
    "notCovered",
    "uncertain",
    "covered",
    "paid",
  ],
  travel: ["child", "born", "practice", "today", "treatment"],
  "adverse-event": ["number", "practice", "date", "author", "effect"],
  record: ["child", "born", "number", "practice", "date"],
}

/** Parts that no template may leave out: cautions, and who answers for the paper. */
export const REQUIRED_PARTS: Names = {
  family: ["lead", "urgent", "about"],
  consent: ["caution", "text", "signatures"],
  order: ["statement", "not-ordered", "ordered", "dilution", "content", "label", "checked"],
  letter: ["about", "warning-signs", "small-print", "signature"],
  estimate: ["no-invoice", "sums", "no-fee"],
  travel: ["child", "what-is-used", "emergency", "signature"],
  "adverse-event": ["rules-first", "patient", "product", "reaction", "reporter"],
  record: RECORD_PARTS,
}
