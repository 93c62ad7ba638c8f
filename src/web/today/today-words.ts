import { dateWords } from "../../chart/words.js"
import { dayNumber } from "../../engine/calendar.js"
import type { CalendarDate } from "../../engine/course.js"
import { msg, say } from "../../engine/say.js"
import type { OwedAction, OwedGroup } from "../../engine/today/owed.js"
import type { OwedRow, TodayAnswer } from "../../server/contract/today.js"

export const GROUP_WORDS: Readonly<Record<OwedGroup, readonly [title: string, note: string]>> = {
  concern: [msg("Concern"), msg("side effects and red flags that are open")],
  decide: [msg("Decide"), msg("findings and plans that wait for the clinician")],
  see: [msg("See"), msg("examinations owed")],
  supply: [msg("Supply"), msg("bottles and orders")],
  sign: [msg("Sign"), msg("consents missing")],
  tell: [msg("Tell"), msg("results the family has not heard")],
}

export const ACTION_WORDS: Readonly<Record<OwedAction, string>> = {
  visit: msg("Enter visit"),
  consent: msg("Consent"),
  supply: msg("Supply"),
  choices: msg("Open choices"),
  safety: msg("Open|a concern"),
  explain: msg("Mark explained"),
}

/** "19 days late", "due 3 Dec 2026, window closes 2 Jan 2027", "since 18 Nov 2026". */
export function timing({ due, since, closes, state }: OwedRow, today: string): string {
  if (due === null) return say("since {day}", { day: dateWords(since) })
  const days = dayNumber(today) - dayNumber(due)
  if (state === "overdue" && days > 0)
    return say("{days, plural, one {# day late} other {# days late}}", { days })
  return closes !== null && closes !== due
    ? say("due {day}, window closes {closes}", { day: dateWords(due), closes: dateWords(closes) })
    : say("due {day}", { day: dateWords(due) })
}

const WEEKDAYS = [
  msg("Thursday"),
  msg("Friday"),
  msg("Saturday"),
  msg("Sunday"),
  msg("Monday"),
  msg("Tuesday"),
  msg("Wednesday"),
] as const

/** "Wednesday, 25 Nov 2026". Day 0 of the calendar was a Thursday. */
export function dayInWords(date: CalendarDate): string {
  const day = dayNumber(date)
  const weekday = WEEKDAYS[((day % 7) + 7) % 7] ?? WEEKDAYS[0]
  return say("{weekday}, {day}", { weekday: say(weekday), day: dateWords(date) })
}

/** "13 things owed to 9 children". */
export function countsInWords({ things, children }: Pick<TodayAnswer, "things" | "children">): string {
  if (things === 0) return say("nothing is owed")
  return say(
    "{things, plural, one {# thing} other {# things}} owed to {children, plural, one {# child} other {# children}}",
    { things, children },
  )
}
