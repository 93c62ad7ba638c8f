import { dateWords } from "../../chart/words.js"
import { dayNumber } from "../../engine/calendar.js"
import type { CalendarDate } from "../../engine/course.js"
import type { OwedAction, OwedGroup, Role } from "../../engine/today/owed.js"
import type { OwedRow, TodayAnswer } from "../../server/contract/today.js"

export const GROUP_WORDS: Readonly<Record<OwedGroup, readonly [title: string, note: string]>> = {
  concern: ["Concern", "side effects and red flags that are open"],
  decide: ["Decide", "findings and plans that wait for the clinician"],
  see: ["See", "examinations owed"],
  supply: ["Supply", "bottles and orders"],
  sign: ["Sign", "consents missing"],
  tell: ["Tell", "results the family has not heard"],
}

export const ROLE_WORDS: Readonly<Record<Role, string>> = {
  clinician: "Clinician",
  technician: "Technician",
  "front-desk": "Front desk",
}

export const ACTION_WORDS: Readonly<Record<OwedAction, string>> = {
  visit: "Enter visit",
  consent: "Consent",
  supply: "Supply",
  choices: "Open choices",
  safety: "Open",
  explain: "Mark explained",
}

/** "19 days late", "due 3 Dec 2026, window closes 2 Jan 2027", "since 18 Nov 2026". */
export function timing({ due, since, closes, state }: OwedRow, today: string): string {
  if (due === null) return `since ${dateWords(since)}`
  const days = dayNumber(today) - dayNumber(due)
  if (state === "overdue" && days > 0) return days === 1 ? "1 day late" : `${days} days late`
  const window = closes !== null && closes !== due ? `, window closes ${dateWords(closes)}` : ""
  return `due ${dateWords(due)}${window}`
}

const WEEKDAYS = ["Thursday", "Friday", "Saturday", "Sunday", "Monday", "Tuesday", "Wednesday"]

/** "Wednesday, 25 Nov 2026". Day 0 of the calendar was a Thursday. */
export function dayInWords(date: CalendarDate): string {
  const day = dayNumber(date)
  return `${WEEKDAYS[((day % 7) + 7) % 7]}, ${dateWords(date)}`
}

/** "13 things owed to 9 children". */
export function countsInWords({ things, children }: Pick<TodayAnswer, "things" | "children">): string {
  if (things === 0) return "nothing is owed"
  const of = things === 1 ? "1 thing" : `${things} things`
  return `${of} owed to ${children === 1 ? "1 child" : `${children} children`}`
}
