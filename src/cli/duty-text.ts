import type { Duty } from "../engine/assessment.js"
import type { CalendarDate } from "../engine/course.js"
import { counted, sentence } from "../engine/words.js"
import { dateInWords, daysBetween } from "./words.js"

/**
 * A duty as a sentence.
 *
 * @example
 * // "6-month review: due 10 July 2025, from 10 June 2025 to 9 August 2025. Needs: axial length."
 */
export function dutyText({ step, state, opens, due, closes, needs }: Duty, asOf: CalendarDate): string {
  const late = state === "overdue" ? `, ${counted(daysBetween({ from: due, to: asOf }), "day")} late` : ""
  const window = opens === closes ? "" : `, from ${dateInWords(opens)} to ${dateInWords(closes)}`
  const needed = needs.length === 0 || state === "done" ? "" : ` Needs: ${needs.join(", ")}.`
  return `${sentence(`${step}: due ${dateInWords(due)}${late}${window}`)}${needed}`
}
