import { msg, say } from "../say.js"

/** What the studies of stability say in the evidence, so that the languages are asked for it. */
const TEXTS: ReadonlySet<string> = new Set([
  msg("0.9% sodium chloride, filtered, isolator, 5 mL polyethylene bottles"),
  msg("two formulas, with and without preservative, LDPE multidose droppers"),
  msg("artificial tears; balanced salt solution"),
  msg("injection diluted in saline or lubricant"),
  msg("5 and 25 C"),
  msg("within 5% of target, pH 5.88, 285 mOsm/kg, sterile"),
  msg(">=94.7% of start; tropic acid rose slowly; stable in use"),
  msg("2-8 C: 90-110% for 6 mo; 25 C: below 90% at 4 mo; opened: 90-110% for 30 d at both"),
  msg("like fresh at week 12, no growth"),
  msg("abstract"),
])

/** A text of a study in the language in force; one that came later stands as the evidence has it. */
export const studyText = (text: string): string => (TEXTS.has(text) ? say(text) : text)
