import type { Grade } from "../../evidence/types.js"
import { msg } from "../say.js"

/** How far a table may be trusted, by its grade; to be said where it stands. */
export const GRADE_WORDS: Readonly<Record<Grade, string>> = {
  A: msg("fit to show"),
  B: msg("to be read with its limits"),
  C: msg("approximate"),
  D: msg("for plausibility only"),
}
