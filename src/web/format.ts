import { dateWords, fixed } from "../chart/words.js"
import { dayNumber, dayNumberOrNull, yearsBetween } from "../engine/calendar.js"
import type { CalendarDate } from "../engine/course.js"
import { say } from "../engine/say.js"
import { sentence as inSentence } from "../engine/words.js"

export { capitalised, odds, percent } from "../engine/words.js"

/** How figures and dates are written on the pages. A true minus sign is used: a hyphen is not read aloud. */

const MINUS = "\u2212"

/** As `fixed`, with the sign always written, for changes. */
export function signed(value: number, decimals: number): string {
  const text = fixed(value, decimals)
  return Number(value.toFixed(decimals)) > 0 ? `+${text}` : text
}

/** Text that came from elsewhere with hyphens for minus, e.g. a printed prescription. */
export function withMinusSigns(text: string): string {
  return text.replace(/(?<!\w)-(?=\d)/g, MINUS)
}

/** "Mar 2026" */
export function monthAndYear(date: CalendarDate): string {
  return dateWords(date).replace(/^\d+ /, "")
}

/** "12 months" for a year or so, "5 months", "3 weeks": the length of an interval in words. */
export function intervalInWords({ from, to }: { from: CalendarDate; to: CalendarDate }): string {
  const years = yearsBetween({ from, to })
  const months = Math.round(years * 12)
  if (months >= 2) return say("{months, plural, one {# month} other {# months}}", { months })
  const weeks = Math.max(1, Math.round((dayNumber(to) - dayNumber(from)) / 7))
  return say("{weeks, plural, one {# week} other {# weeks}}", { weeks })
}

/** A kind written with hyphens, as words: "length-review" becomes "length review". */
export function kindInWords(kind: string): string {
  return kind.replaceAll("-", " ")
}

/**
 * A phrase of the engine as a sentence of the page: dates in words, true minus signs, a full stop.
 *
 * @example
 * sentence("-2.00 D stood on 2026-03-10") // => "−2.00 D stood on 10 Mar 2026."
 */
export function sentence(phrase: string): string {
  return inSentence(inWords(phrase))
}

/** Words of the engine as the pages write them: dates in words, true minus signs. */
export function inWords(text: string): string {
  const dated = text.replace(/(?<![\w-])\d{4}-\d{2}-\d{2}\b/g, (date) =>
    dayNumberOrNull(date) === null ? date : dateWords(date),
  )
  return withMinusSigns(dated)
}
