import {
  foldLines,
  ICalAlarmType,
  ICalCalendar,
  ICalCalendarMethod,
  ICalEventClass,
  ICalEventTransparency,
} from "ical-generator"
import { dayNumber } from "../../engine/calendar.js"
import { inLanguage, type Language, say } from "../../engine/say.js"
import { type CalendarEntry, type CalendarInput, calendarEntries } from "./calendar-entries.js"

/** Seven days before, at nine in the morning: seconds before the midnight with which the day begins. */
const ALARM_SECONDS = (7 * 24 - 9) * 3600

/**
 * What a family has to do, as an iCalendar (RFC 5545) of all-day entries that do not make the day busy. Null when there
 * is nothing: the format has no calendar without an entry.
 *
 * The same duties on the same day give the same text; of a later day the entries carry a higher sequence, so that a
 * calendar which holds them takes the newer.
 *
 * @example
 * calendarOf({ duties, today: "2026-03-10", language: "es", childKey: child.id })
 */
export function calendarOf(input: CalendarInput): string | null {
  const entries = calendarEntries(input)
  if (entries.length === 0) return null
  const calendar = new ICalCalendar({
    prodId: { company: "Lengthwise", product: "Calendar", language: input.language },
    method: ICalCalendarMethod.PUBLISH,
    name: inLanguage(input.language, () => say("Reminders|calendar")),
  })
  for (const entry of entries) addEntry(calendar, entry, input)
  return repaired(calendar.toString(), input.language)
}

function addEntry(
  calendar: ICalCalendar,
  { uid, day, title, description, hasAlarm }: CalendarEntry,
  { today, practiceName }: CalendarInput,
): void {
  const event = calendar.createEvent({
    id: uid,
    sequence: dayNumber(today),
    stamp: new Date(`${today}T00:00:00Z`),
    start: day,
    allDay: true,
    summary: title,
    description: clean(description),
    location: practiceName === undefined ? null : { title: clean(practiceName) },
    transparency: ICalEventTransparency.TRANSPARENT,
    class: ICalEventClass.PRIVATE,
  })
  if (hasAlarm) {
    event.createAlarm({ type: ICalAlarmType.display, trigger: ALARM_SECONDS, description: title })
  }
}

/** Control characters that the format forbids in a text, and halves of characters that no encoding holds. */
const clean = (text: string): string =>
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out
  text.replace(/[\u0000-\u0009\u000B-\u001F\u007F]|\p{Surrogate}/gu, " ")

const SPOKEN = /^(SUMMARY|DESCRIPTION|LOCATION):/gm
const ALARM_BEFORE_CLASS = /(BEGIN:VALARM\r\n.*?END:VALARM\r\n)(CLASS:.*?\r\n)/gs

/**
 * What the generator leaves out: the language of each text, the order that the format asks for (an alarm after all that
 * is said of its entry), and the end of the last line. Then lines are folded anew, at 75 octets and between characters.
 */
function repaired(calendar: string, language: Language): string {
  const whole = calendar.replaceAll("\r\n ", "").replace(ALARM_BEFORE_CLASS, "$2$1")
  return foldLines(`${whole.replace(SPOKEN, `$1;LANGUAGE=${language}:`)}\r\n`)
}
