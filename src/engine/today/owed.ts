import type { Assessment, Duty, DutyState } from "../assessment.js"
import { addDays } from "../calendar.js"
import type { BottleOrder, CalendarDate, Course } from "../course.js"
import type { PracticeRules } from "../practice-rules.js"
import { sourceOf } from "../protocol/duty-source.js"
import { seenHere } from "../protocol/measured.js"
import type { Protocol } from "../protocol/protocol.js"
import { openConcerns } from "../safety/open-concerns.js"
import { say } from "../say.js"
import { inDigits } from "../words.js"
import type { Role } from "./roles.js"
import { lastGrowthVisit, telling, unansweredFinding } from "./unanswered-finding.js"

/** What a day's work is made of, in the order in which it is shown: what concerns a child's safety first. */
export const OWED_GROUPS = ["concern", "decide", "see", "supply", "sign", "tell"] as const
export type OwedGroup = (typeof OWED_GROUPS)[number]

export { ROLES, type Role } from "./roles.js"

/** Where the one action of a row leads. */
export type OwedAction = "visit" | "consent" | "supply" | "choices" | "safety" | "explain"

/** One thing somebody in the practice has to do for a child now. */
export interface Owed {
  readonly group: OwedGroup
  readonly what: string
  /** Why, or what it needs; empty when `what` says it all. */
  readonly why: string
  /** Since when it waits. */
  readonly since: CalendarDate
  /** The day by which it is owed; null for what is simply waiting. */
  readonly due: CalendarDate | null
  /** Last day of its window; null where it has none. */
  readonly closes: CalendarDate | null
  readonly state: Extract<DutyState, "open" | "overdue">
  readonly role: Role
  readonly action: OwedAction
}

export interface OwedInput {
  readonly course: Course
  readonly today: CalendarDate
  readonly protocol: Protocol
  readonly assessment: Pick<Assessment, "finding" | "growth">
  readonly duties: readonly Duty[]
  readonly rules: Pick<PracticeRules, "pharmacies" | "examinationSwitches">
}

/** Results older than this are not asked about any more. Ours; common practice, no source. */
const TOLD_WITHIN_DAYS = 90
/** A pharmacy answers an order within this many days. Ours; common practice, no source. */
const ANSWER_WITHIN_DAYS = 3
/** From order to bottle where the practice has not said. Ours; common practice, no source. */
const USUAL_LEAD_DAYS = 7

/**
 * Everything owed to one child today, in order of the groups and of its date. Duties that are only coming are not
 * there: a list of today holds what can be done today.
 *
 * @example
 * owed({ course, today, protocol, assessment, duties: duties({ course, protocol, today }), rules: noRules })
 */
export function owed(input: OwedInput): readonly Owed[] {
  const rows = [
    ...concernRows(input),
    ...decisionRows(input),
    ...dutyRows(input),
    ...orderRows(input),
    ...untoldRows(input),
  ]
  return rows.toSorted(
    (a, b) =>
      OWED_GROUPS.indexOf(a.group) - OWED_GROUPS.indexOf(b.group) ||
      byText(a.due ?? a.since, b.due ?? b.since),
  )
}

const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)

function concernRows({ course, today, protocol, rules }: OwedInput): readonly Owed[] {
  return openConcerns({ course, today, protocol, switches: rules.examinationSwitches }).map(
    ({ what, since, owner, isRedFlag }) => ({
      group: "concern",
      what: isRedFlag ? say("same-day care: {what}", { what }) : what,
      why: owner === null ? say("nobody looks after it yet") : say("looked after by {owner}", { owner }),
      since,
      // A warning sign is owed on the day it was told of.
      due: isRedFlag ? since : null,
      closes: null,
      state: isRedFlag && since < today ? "overdue" : "open",
      role: "clinician",
      action: "safety",
    }),
  )
}

/** Decisions the protocol asks for, and findings of the last visit that nobody has answered yet. */
function decisionRows(input: OwedInput): readonly Owed[] {
  const { duties } = input
  const asked = duties.filter(({ kind, state }) => kind === "decision" && isNow(state))
  if (asked.length > 0)
    return asked.map((duty) => ({
      group: "decide",
      what: duty.step,
      why: telling(input),
      since: duty.opens,
      due: duty.due,
      closes: duty.closes,
      state: duty.state as Owed["state"],
      role: "clinician",
      action: "choices",
    }))
  const finding = unansweredFinding(input)
  if (finding === null) return []
  return [
    {
      group: "decide",
      what: finding.what,
      why: say("no decision since that visit"),
      since: finding.since,
      due: null,
      closes: null,
      state: "open",
      role: "clinician",
      action: "choices",
    },
  ]
}

function dutyRows(input: OwedInput): readonly Owed[] {
  return (
    input.duties
      .filter(({ kind, state }) => kind !== "decision" && isNow(state))
      // What has been ordered is followed up as an order, as long as the child is not out of drops.
      .filter(({ kind, state }) => kind !== "bottle" || state === "overdue" || openOrders(input).length === 0)
      .map((duty): Owed => {
        const shared = {
          why: duty.needs.join(", "),
          since: duty.opens,
          due: duty.due,
          closes: duty.closes,
          state: duty.state as Owed["state"],
        }
        if (duty.kind === "consent")
          // That a consent is lacking says the step once more; anything else a consent needs is news.
          return {
            ...shared,
            why: sourceOf(duty).needsRepeatStep ? "" : shared.why,
            group: "sign",
            what: duty.step,
            role: "clinician",
            action: "consent",
          }
        if (duty.kind === "bottle")
          return { ...shared, group: "supply", what: duty.step, role: "front-desk", action: "supply" }
        // Begun and not finished is the measuring person's; not begun has to be booked.
        const begun = input.course.visits.some(
          (visit) => seenHere(visit) && visit.date >= duty.opens && visit.date <= input.today,
        )
        return {
          ...shared,
          group: "see",
          what: duty.step,
          role: begun ? "technician" : "front-desk",
          action: "visit",
        }
      })
  )
}

const openOrders = ({ course, today }: OwedInput): readonly BottleOrder[] =>
  (course.orders ?? []).filter(({ date, received, cancelled }) => date <= today && !received && !cancelled)

function orderRows(input: OwedInput): readonly Owed[] {
  const { today, rules } = input
  return (
    openOrders(input)
      .map((order) => {
        const bottles = { count: order.bottles, percent: inDigits(order.concentrationPercent) }
        const lead = rules.pharmacies.find(
          ({ name: known, id }) => known === order.pharmacy || id === order.pharmacy,
        )
        const due = order.confirmed
          ? addDays(order.date, lead?.leadDays ?? USUAL_LEAD_DAYS)
          : addDays(order.date, ANSWER_WITHIN_DAYS)
        return {
          group: "supply",
          what: order.confirmed
            ? say("{count, plural, one {# bottle} other {# bottles}} of {percent} % on the way", bottles)
            : say(
                "order of {count, plural, one {# bottle} other {# bottles}} of {percent} % not confirmed",
                bottles,
              ),
          isOnTheWay: order.confirmed !== undefined,
          why: order.pharmacy ?? "",
          since: order.date,
          due,
          closes: null,
          state: today > due ? "overdue" : "open",
          role: "front-desk",
          action: "supply",
        } as const
      })
      // What is on its way and not late needs nobody today.
      .filter(({ state, isOnTheWay }) => state === "overdue" || !isOnTheWay)
      .map(({ isOnTheWay: _, ...row }): Owed => row)
  )
}

function untoldRows(input: OwedInput): readonly Owed[] {
  const { course, today } = input
  const visit = lastGrowthVisit(input)
  if (!visit || visit.date < addDays(today, -TOLD_WITHIN_DAYS)) return []
  if ((course.explanations ?? []).some(({ date }) => date >= visit.date)) return []
  return [
    {
      group: "tell",
      what: say("results not explained to the family"),
      why: "",
      since: visit.date,
      due: null,
      closes: null,
      state: "open",
      role: "clinician",
      action: "explain",
    },
  ]
}

const isNow = (state: DutyState): boolean => state === "open" || state === "overdue"
