import type { Grade } from "../evidence/types.js"

/** What a grade lets a screen do. */
export const GRADES: Readonly<Record<Grade, string>> = {
  A: "fit to show",
  B: "fit to show with its limits",
  C: "approximate",
  D: "never shown as a centile",
}
