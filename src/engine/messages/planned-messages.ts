import type { Duty } from "../assessment.js"
import { addDays, dayNumber } from "../calendar.js"
import type { CalendarDate } from "../course.js"
import type { MessageRules } from "../practice-rules.js"
import type { Language } from "../say.js"
import type { Owed } from "../today/owed.js"
import { agreesTo, type Channel, type FamilyContact, type MessageTopic, reachOf } from "./family-contact.js"

/** What a message is about. */
export const MESSAGE_KINDS = ["visit-ahead", "visit-due", "visit-overdue", "bottle"] as const
export type MessageKind = (typeof MESSAGE_KINDS)[number]

/** Something a family is to be told on a day, and where. */
export interface PlannedMessage {
  /** Made of the child, the kind and the day it is about: the same thing never has two. */
  readonly key: string
  readonly child: string
  readonly kind: MessageKind
  /** The day it is to be said. */
  readonly on: CalendarDate
  /** Window of what it is about. */
  readonly opens: CalendarDate
  readonly due: CalendarDate
  readonly closes: CalendarDate
  readonly channel: Channel
  readonly to: string
  readonly name: string
  readonly language: Language
}

export interface PlannedInput {
  readonly child: string
  readonly contact: FamilyContact
  readonly duties: readonly Duty[]
  /** The child's rows of the list of today. */
  readonly owed: readonly Owed[]
  readonly today: CalendarDate
  readonly rules: Pick<MessageRules, "daysBefore">
}

/** What should have been said longer ago than this is not said any more. Ours; common practice, no source. */
const CATCH_UP_DAYS = 14
/** Two reminders of one visit stand at least this far apart. Ours; common practice, no source. */
const APART_DAYS = 7

/**
 * What this family is to be told, in order of the day: what should be said by now, one message for each duty at most, and
 * what comes as things stand today. Empty for a family that has not agreed or can't be reached.
 */
export function plannedMessages(input: PlannedInput): readonly PlannedMessage[] {
  const { child, contact, duties, today } = input
  const reach = reachOf(contact)
  if (reach === null) return []
  const { name, language } = contact
  const planned = duties.flatMap((duty) => {
    const topic = TOPICS[duty.kind]
    if (topic === undefined || !agreesTo(contact, { topic, today })) return []
    const { opens, due, closes } = duty
    return timely(occasionsOf(duty, input), today).map(
      ({ kind, on }): PlannedMessage => ({
        key: `${child} ${kind} ${due}`,
        child,
        kind,
        on,
        opens,
        due,
        closes,
        ...reach,
        name,
        language,
      }),
    )
  })
  // Two examinations due on one day are one visit.
  const once = new Map(planned.map((message) => [message.key, message]))
  return [...once.values()].toSorted((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0))
}

/** Only what a family does itself is said to it; consents and decisions are spoken of in the practice. */
const TOPICS: Readonly<Record<string, MessageTopic>> = { examination: "visits", bottle: "bottles" }

interface MessageOccasion {
  readonly kind: MessageKind
  readonly on: CalendarDate
}

function occasionsOf(duty: Duty, input: PlannedInput): readonly MessageOccasion[] {
  if (duty.state !== "upcoming" && duty.state !== "open" && duty.state !== "overdue") return []
  // What the list of today leaves to the practice (a visit begun, a bottle ordered) is no work of the family.
  if (duty.state !== "upcoming" && !isFamilysTurn(duty, input.owed)) return []
  return duty.kind === "bottle" ? bottleOccasions(duty, input) : visitOccasions(duty, input)
}

function isFamilysTurn(duty: Duty, owed: readonly Owed[]): boolean {
  const group = duty.kind === "bottle" ? "supply" : "see"
  return owed.some(
    (row) =>
      row.group === group && row.role === "front-desk" && row.due === duty.due && row.what === duty.step,
  )
}

function visitOccasions(duty: Duty, { today, rules }: PlannedInput): readonly MessageOccasion[] {
  const { opens, due, closes, state } = duty
  if (state === "overdue") return [{ kind: "visit-overdue", on: addDays(closes, 1) }]
  if (today > due) return []
  const ahead: MessageOccasion = { kind: "visit-ahead", on: addDays(opens, -rules.daysBefore) }
  const isWide = dayNumber(due) - dayNumber(opens) >= APART_DAYS
  return isWide ? [ahead, { kind: "visit-due", on: addDays(due, -rules.daysBefore) }] : [ahead]
}

function bottleOccasions(duty: Duty, { today }: PlannedInput): readonly MessageOccasion[] {
  // A first bottle is handed over in the practice: it has no days before it and is never late.
  const isNext = duty.opens < duty.due || duty.state === "overdue"
  if (!isNext) return []
  return [{ kind: "bottle", on: today > duty.due ? addDays(duty.due, 1) : duty.opens }]
}

/** Of what should be said by now only the last, and that only while it is news; and everything that is to come. */
function timely(occasions: readonly MessageOccasion[], today: CalendarDate): readonly MessageOccasion[] {
  const last = occasions.findLast(({ on }) => on <= today)
  const isNews = last !== undefined && last.on >= addDays(today, -CATCH_UP_DAYS)
  return [...(isNews ? [last] : []), ...occasions.filter(({ on }) => on > today)]
}
