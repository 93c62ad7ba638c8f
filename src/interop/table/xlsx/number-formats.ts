import { calendarDate } from "../../../engine/calendar.js"
import type { CalendarDate } from "../../../engine/course.js"

/** How a cell's number is shown, as far as it matters here. */
export type NumberForm = "date" | "percent" | "plain"

/** Formats that every workbook has without naming them (ECMA-376 part 1, 18.8.30). */
const BUILT_IN_DATES = new Set([14, 15, 16, 17, 22, 27, 28, 29, 30, 31, 36, 50, 51, 52, 53, 54, 57, 58])
const BUILT_IN_PERCENTS = new Set([9, 10])

/**
 * @example
 * numberForm({ id: 164, code: 'dd/mm/yyyy;@' }) // => "date"
 */
export function numberForm({
  id,
  code,
}: {
  readonly id: number
  readonly code: string | undefined
}): NumberForm {
  if (code === undefined)
    return BUILT_IN_DATES.has(id) ? "date" : BUILT_IN_PERCENTS.has(id) ? "percent" : "plain"
  // What is quoted, in brackets, escaped or a placeholder of width is shown and means nothing.
  const signs = code.replace(/"[^"]*"|\[[^\]]*\]|\\.|_.|\*./g, "").replace(/general/gi, "")
  if (/[yd]/i.test(signs) || (/m/i.test(signs) && !/[hs]/i.test(signs))) return "date"
  return signs.includes("%") ? "percent" : "plain"
}

/** Days from the two beginnings of time that workbooks count from to 1970-01-01. */
const EPOCH_1900 = 25_569
const EPOCH_1904 = 24_107
const LAST_SERIAL = 2_958_465

/**
 * The day of a serial number, or null when there is none. A workbook counts from 1900 as if that year had a 29 February
 * (number 60, which is no day), or from 1904.
 *
 * @example
 * dayOfSerial(45_667, { isFrom1904: false }) // => "2025-01-10"
 */
export function dayOfSerial(
  serial: number,
  { isFrom1904 }: { readonly isFrom1904: boolean },
): CalendarDate | null {
  const whole = Math.floor(serial)
  if (!(whole >= (isFrom1904 ? 0 : 1)) || whole > LAST_SERIAL) return null
  if (isFrom1904) return calendarDate(whole - EPOCH_1904)
  if (whole === 60) return null
  return calendarDate(whole - EPOCH_1900 + (whole < 60 ? 1 : 0))
}
