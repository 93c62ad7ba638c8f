import { dayNumberOrNull } from "../../engine/calendar.js"
import type { CalendarDate } from "../../engine/course.js"
import type { DateOrder } from "../../engine/practice-rules.js"
import { plainWords } from "./cell-text.js"

/** A day as it was read, or what keeps it from being one. */
export type ReadDate = { readonly date: CalendarDate } | { readonly fault: DateFault }

export type DateFault = "not-a-date" | "no-such-day" | "two-digit-year" | "other-order" | "serial-number"

const TIME =
  /[T\s]\s*\d{1,2}[:.h]\d{2}(?:[:.]\d{2}(?:[.,]\d+)?)?\s*(?:[ap]\.?\s?m\.?)?\s*(?:Z|[+-]\d{2}:?\d{2})?$/i
const YEAR_FIRST = /^(\d{4})([-/.])(\d{1,2})\2(\d{1,2})\.?$/
const COMPACT = /^((?:19|20)\d{2})(\d{2})(\d{2})$/
const YEAR_LAST = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})\.?$/

/**
 * Reads a day in the order that was settled. A year of four digits at the beginning, and a month in words, need no
 * order. A time after the day is left out. Nothing is guessed: a year of two digits is none.
 *
 * @example
 * readDate("10/01/2025 09:30", "day-month-year") // => { date: "2025-01-10" }
 */
export function readDate(text: string, order: DateOrder): ReadDate {
  const day = text.replace(TIME, "").trim()
  const [, y1, , m1, d1] = YEAR_FIRST.exec(day) ?? []
  if (y1 && m1 && d1) return dateOf({ year: y1, month: m1, day: d1 })
  const [, y2, m2, d2] = COMPACT.exec(day) ?? []
  if (y2 && m2 && d2) return dateOf({ year: y2, month: m2, day: d2 })
  const [, first, , second, year] = YEAR_LAST.exec(day) ?? []
  if (first && second && year) {
    if (year.length === 2) return { fault: "two-digit-year" }
    if (order === "year-month-day") return { fault: "other-order" }
    return order === "day-month-year"
      ? dateOf({ year, month: second, day: first })
      : dateOf({ year, month: first, day: second })
  }
  if (/^\d{5}([.,]\d+)?$/.test(day)) return { fault: "serial-number" }
  return /\p{L}/u.test(day) ? inWords(day) : { fault: "not-a-date" }
}

/** English and Spanish, whole or by their first letters. */
const MONTHS: readonly (readonly string[])[] = [
  ["january", "jan", "enero", "ene"],
  ["february", "feb", "febrero"],
  ["march", "mar", "marzo"],
  ["april", "apr", "abril", "abr"],
  ["may", "mayo"],
  ["june", "jun", "junio"],
  ["july", "jul", "julio"],
  ["august", "aug", "agosto", "ago"],
  ["september", "sep", "sept", "septiembre", "setiembre", "set"],
  ["october", "oct", "octubre"],
  ["november", "nov", "noviembre"],
  ["december", "dec", "diciembre", "dic"],
]

function inWords(text: string): ReadDate {
  const parts = plainWords(text)
    .replace(/(\d)(?:st|nd|rd|th)\b/, "$1")
    .split(" ")
    .filter((part) => part !== "de" && part !== "del" && part !== "of")
  const place = parts.findIndex((part) => monthOf(part) !== 0)
  if (parts.length !== 3 || place === -1) return { fault: "not-a-date" }
  const month = String(monthOf(parts[place] ?? ""))
  const numbers = parts.filter((_, at) => at !== place)
  const [first = "", second = ""] = numbers
  if (!numbers.every((part) => /^\d+$/.test(part))) return { fault: "not-a-date" }
  if (first.length === 4 && second.length <= 2) return dateOf({ year: first, month, day: second })
  if (second.length === 4 && first.length <= 2) return dateOf({ year: second, month, day: first })
  return { fault: "two-digit-year" }
}

const monthOf = (word: string): number => MONTHS.findIndex((names) => names.includes(word)) + 1

/** Years that a living child's record can hold; anything else is a slip of the pen. */
const [FIRST_YEAR, LAST_YEAR] = [1900, 2100]

function dateOf(parts: { readonly year: string; readonly month: string; readonly day: string }): ReadDate {
  const year = Number(parts.year)
  const date = `${parts.year}-${parts.month.padStart(2, "0")}-${parts.day.padStart(2, "0")}`
  const isDay = year >= FIRST_YEAR && year <= LAST_YEAR && dayNumberOrNull(date) !== null
  return isDay ? { date } : { fault: "no-such-day" }
}

/** Whether a text has the form of a day, whatever its order. */
export const isDateLike = (text: string): boolean => {
  const read = readDate(text, "day-month-year")
  return "date" in read || read.fault === "no-such-day" || read.fault === "two-digit-year"
}

/** Whether a day is written in an order that has to be known: figures only, the year last. */
export const needsOrder = (text: string): boolean => YEAR_LAST.test(text.replace(TIME, "").trim())
