import { dayNumberOrNull } from "../../engine/calendar.js"
import type { CalendarDate } from "../../engine/course.js"
import type { DateOrder } from "../../engine/practice-rules.js"

/**
 * A day as a table writes it, read in one order; null when it is no day that way. Only for showing a question.
 *
 * @example
 * dayBy("day-month-year", "03.04.2017") // => "2017-04-03"
 */
export function dayBy(order: DateOrder, text: string): CalendarDate | null {
  const parts = /^(\d{1,4})[./ -](\d{1,2})[./ -](\d{1,4})/.exec(text.trim())
  if (!parts) return null
  const [, a = "", b = "", c = ""] = parts
  const [year, month, day] =
    order === "year-month-day" ? [a, b, c] : order === "day-month-year" ? [c, b, a] : [c, a, b]
  if (year.length !== 4) return null
  const date = `${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`
  return dayNumberOrNull(date) === null ? null : date
}
