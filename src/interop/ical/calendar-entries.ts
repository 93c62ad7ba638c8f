import { createHash } from "node:crypto"
import type { Duty, DutyState } from "../../engine/assessment.js"
import { addDays } from "../../engine/calendar.js"
import type { CalendarDate } from "../../engine/course.js"
import { dayInWords, inLanguage, type Language, msg, say } from "../../engine/say.js"

export interface CalendarInput {
  /** As the engine gives them; what is done, missed or for the practice to decide is left out. */
  readonly duties: readonly Duty[]
  readonly today: CalendarDate
  readonly language: Language
  /** Stands as the place. Whoever gives it accepts that it may say what kind of practice it is. */
  readonly practiceName?: string | undefined
  /** Tells one child's entries from another's, and never leaves this machine: an id of the record. */
  readonly childKey: string
}

/** What a family's calendar gets of one duty. Nothing here says a word about health. */
export interface CalendarEntry {
  readonly uid: string
  readonly kind: FamilyDuty
  readonly state: DutyState
  /** The day it stands on: the due day, or today where that is past. */
  readonly day: CalendarDate
  /** The days on which it can be done; `from` is never before today. Null when all of them are past. */
  readonly window: { readonly from: CalendarDate; readonly to: CalendarDate } | null
  readonly title: string
  readonly description: string
  /** A calendar sounds an alarm for a moment that is past at once, so there is one only where it lies ahead. */
  readonly hasAlarm: boolean
}

const TITLES = {
  examination: msg("Appointment to book"),
  bottle: msg("Something to collect"),
  consent: msg("Something to sign"),
} as const
type FamilyDuty = keyof typeof TITLES

const AHEAD: readonly DutyState[] = ["open", "overdue", "upcoming"]

/** What a family has to do, in the order of the days, in its own language. */
export function calendarEntries(input: CalendarInput): readonly CalendarEntry[] {
  const seen = new Map<string, number>()
  return inLanguage(input.language, () =>
    input.duties
      .flatMap((duty) => {
        const { kind } = duty
        if (!isOfFamily(kind) || !AHEAD.includes(duty.state)) return []
        // Two strengths may need their next bottle from the same day on: then they are counted.
        const key = [kind, duty.step, duty.opens].join("\n")
        const count = (seen.get(key) ?? 0) + 1
        seen.set(key, count)
        return [entryOf(duty, { ...input, kind, uid: uidOf(`${input.childKey}\n${key}\n${count}`) })]
      })
      .toSorted((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0)),
  )
}

const isOfFamily = (kind: string): kind is FamilyDuty => Object.hasOwn(TITLES, kind)

function entryOf(
  duty: Duty,
  { today, practiceName, kind, uid }: CalendarInput & { readonly kind: FamilyDuty; readonly uid: string },
): CalendarEntry {
  const day = later(duty.due, today)
  const from = later(duty.opens, today)
  const window = duty.closes < today ? null : { from, to: later(duty.closes, from) }
  const reminder = kind === "examination" ? [say("This is a reminder: it books no day.")] : []
  const whom = practiceName === undefined ? [] : [say("Please ask {practice}.", { practice: practiceName })]
  return {
    uid,
    kind,
    state: duty.state,
    day,
    window,
    title: say(TITLES[kind]),
    description: [windowInWords(window, duty), ...reminder, ...whom].join("\n"),
    hasAlarm: addDays(day, -7) > today,
  }
}

function windowInWords(window: CalendarEntry["window"], { closes }: Duty): string {
  if (window === null) {
    return say("As soon as you can: it was due by {day}.", { day: dayInWords(closes) })
  }
  const [from, to] = [dayInWords(window.from), dayInWords(window.to)]
  return from === to
    ? say("On {day} at the latest.", { day: to })
    : say("Any day from {from} to {to}.", { from, to })
}

const later = (a: CalendarDate, b: CalendarDate): CalendarDate => (a > b ? a : b)

/**
 * A name of 128 bits that stays the same as long as the duty does, so that a calendar read again replaces its entries.
 * It is a digest in the form of a UUID of version 8: neither child nor duty can be read from it.
 */
function uidOf(text: string): string {
  const hex = createHash("sha256").update(text).digest("hex")
  const variant = ((Number.parseInt(hex.slice(16, 17), 16) & 0x3) | 0x8).toString(16)
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    `8${hex.slice(13, 16)}`,
    `${variant}${hex.slice(17, 20)}`,
    hex.slice(20, 32),
  ].join("-")
}
