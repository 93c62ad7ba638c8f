import { SHEET_PARTS } from "../../engine/compounding/sheet.js"
import type { DocumentKind } from "../document.js"

type Names = Readonly<Record<DocumentKind, readonly string[]>>

/** The parts a document can have, in the order that ships. A child's document may lack some. */
export const PARTS_OF: Names = {
  family: [],
  consent: ["who", "caution", "text", "signatures", "sources"],
  order: ["statement", "not-ordered", ...SHEET_PARTS],
  letter: [],
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
  "adverse-event": [],
  record: [],
}

/** What a template may put into its own sentences. */
export const VALUES_OF: Names = {
  family: [],
  consent: ["treatment", "date", "version", "child"],
  order: ["child", "practice", "today", "ordered", "prescriber", "pharmacy", "strength", "bottles", "volume"],
  letter: [],
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
  "adverse-event": [],
  record: [],
}

/** Parts that no template may leave out: cautions, and who answers for the paper. */
export const REQUIRED_PARTS: Names = {
  family: [],
  consent: ["caution", "text", "signatures"],
  order: ["statement", "not-ordered", "ordered", "dilution", "content", "label", "checked"],
  letter: [],
  estimate: ["no-invoice", "sums", "no-fee"],
  travel: ["child", "what-is-used", "emergency", "signature"],
  "adverse-event": [],
  record: [],
}
