import { SHEET_PARTS } from "../../engine/compounding/sheet.js"
import type { DocumentKind } from "../document.js"

type Names = Readonly<Record<DocumentKind, readonly string[]>>

/** The parts a document can have, in the order that ships. A child's document may lack some. */
export const PARTS_OF: Names = {
  family: [],
  consent: [],
  order: ["statement", "not-ordered", ...SHEET_PARTS],
  letter: [],
  estimate: [],
  travel: [],
  "adverse-event": [],
  record: [],
}

/** What a template may put into its own sentences. */
export const VALUES_OF: Names = {
  family: [],
  consent: [],
  order: ["child", "practice", "today", "ordered", "prescriber", "pharmacy", "strength", "bottles", "volume"],
  letter: [],
  estimate: [],
  travel: [],
  "adverse-event": [],
  record: [],
}

/** Parts that no template may leave out: cautions, and who answers for the paper. */
export const REQUIRED_PARTS: Names = {
  family: [],
  consent: [],
  order: ["statement", "not-ordered", "ordered", "dilution", "content", "label", "checked"],
  letter: [],
  estimate: [],
  travel: [],
  "adverse-event": [],
  record: [],
}
