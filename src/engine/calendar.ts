import type { CalendarDate } from "./course.js"

/** Days of the proleptic Gregorian calendar counted from 1970-01-01. */
export type DayNumber = number

const DAYS_PER_YEAR = 365.25

/**
 * The day number of an ISO date, or null when the text is not a day of the calendar.
 *
 * @example
 * dayNumber("1970-01-02") // => 1
 */
export function dayNumberOrNull(date: string): DayNumber | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date)
  if (!match) return null
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])]
  if (month < 1 || month > 12 || day < 1 || day > daysInMonth(year, month)) return null
  return fromCivil(year, month, day)
}

// A course asks for the same few dates hundreds of times; reading them once is a third of an assessment.
const known = new Map<CalendarDate, DayNumber>()
const MOST_KNOWN = 20_000

/** As `dayNumberOrNull`, for dates already validated; throws on anything else, since that is a fault of ours. */
export function dayNumber(date: CalendarDate): DayNumber {
  const before = known.get(date)
  if (before !== undefined) return before
  const day = dayNumberOrNull(date)
  if (day === null) throw new RangeError(`not a calendar date: ${date}`)
  if (known.size >= MOST_KNOWN) known.clear()
  known.set(date, day)
  return day
}

/** The ISO date of a day number. */
export function calendarDate(day: DayNumber): CalendarDate {
  const { year, month, day: d } = toCivil(Math.round(day))
  return `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-${String(d).padStart(2, "0")}`
}

/**
 * Exact decimal age: days from birth divided by 365.25 (design, section 7).
 *
 * @example
 * ageYears({ born: "2017-03-14", on: "2025-03-14" }) // => 8
 */
export function ageYears({ born, on }: { born: CalendarDate; on: CalendarDate }): number {
  return (dayNumber(on) - dayNumber(born)) / DAYS_PER_YEAR
}

/** Years between two dates on the same 365.25-day year; negative when `to` is earlier. */
export function yearsBetween({ from, to }: { from: CalendarDate; to: CalendarDate }): number {
  return (dayNumber(to) - dayNumber(from)) / DAYS_PER_YEAR
}

/**
 * Whole months from one day to another; a month is complete on the same day of the month.
 *
 * @example
 * completedMonths({ from: "2026-01-15", to: "2026-03-14" }) // => 1
 */
export function completedMonths({ from, to }: { from: CalendarDate; to: CalendarDate }): number {
  const [start, end] = [from, to].map((date) => toCivil(dayNumber(date))) as [Civil, Civil]
  const months = (end.year - start.year) * 12 + end.month - start.month
  return end.day < start.day ? months - 1 : months
}

/**
 * The same day of the month some months later. Where that month is shorter the last day of it is taken:
 * 31 August and 6 months is 28 (or 29) February, and no day is carried into March.
 *
 * @example
 * addMonths("2025-08-31", 6) // => "2026-02-28"
 */
export function addMonths(date: CalendarDate, months: number): CalendarDate {
  const { year, month, day } = toCivil(dayNumber(date))
  const index = year * 12 + (month - 1) + months
  const targetYear = Math.floor(index / 12)
  const targetMonth = (((index % 12) + 12) % 12) + 1
  return calendarDate(fromCivil(targetYear, targetMonth, Math.min(day, daysInMonth(targetYear, targetMonth))))
}

export function addDays(date: CalendarDate, days: number): CalendarDate {
  return calendarDate(dayNumber(date) + days)
}

function isLeap(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
}

function daysInMonth(year: number, month: number): number {
  if (month === 2) return isLeap(year) ? 29 : 28
  return [4, 6, 9, 11].includes(month) ? 30 : 31
}

// Years are counted from March, so that the leap day is the last of its year and needs no special case.
function fromCivil(year: number, month: number, day: number): DayNumber {
  const y = month <= 2 ? year - 1 : year
  const era = Math.floor(y / 400)
  const yearOfEra = y - era * 400
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear
  return era * 146_097 + dayOfEra - 719_468
}

interface Civil {
  readonly year: number
  readonly month: number
  readonly day: number
}

function toCivil(days: DayNumber): Civil {
  const z = days + 719_468
  const era = Math.floor(z / 146_097)
  const dayOfEra = z - era * 146_097
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  )
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100))
  const shifted = Math.floor((5 * dayOfYear + 2) / 153)
  const month = shifted < 10 ? shifted + 3 : shifted - 9
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * shifted + 2) / 5) + 1,
  }
}
