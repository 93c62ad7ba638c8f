import type { Grade } from "../../evidence/types.js"

/** How far a table may be trusted, by its grade. */
export const GRADE_WORDS: Readonly<Record<Grade, string>> = {
  A: "fit to show",
  B: "to be read with its limits",
  C: "approximate",
  D: "for plausibility only",
}
