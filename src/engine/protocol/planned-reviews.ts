import { addMonths } from "../calendar.js"
import type { CalendarDate } from "../course.js"
import { decisions } from "./decisions.js"
import { type Examination, examinations, isAhead } from "./examinations.js"
import { missing } from "./measured.js"
import { occasionOf, stepsAnchoredAt } from "./occasions.js"
import { isTreated, type Situation, type SituationInput, situationOn } from "./situation.js"

export interface PlannedReview {
  /** Title of the step. */
  readonly step: string
  readonly date: CalendarDate
  /** Whether the child is on treatment up to this day, as planned. */
  readonly treated: boolean
}

export interface PlannedReviews {
  /** Coming examinations that measure length, the baseline left out, in order. One overdue is planned for today. */
  readonly reviews: readonly PlannedReview[]
  /** First day without treatment as recorded or as the protocol plans it; null without treatment or with no end in sight. */
  readonly plannedStop: CalendarDate | null
}

/** How far ahead examinations are planned that repeat without end. */
const HORIZON_MONTHS = 24

export function plannedReviews(input: SituationInput): PlannedReviews {
  const situation = situationOn(input)
  const { today, current } = situation
  const plannedStop = plannedStopOf(situation)
  const willBeTreated = isTreated(situation) || (current !== null && today < current.start)
  const planned = [
    ...examinations(situation)
      .filter(isComingLength)
      // Reviews for as long as treatment goes on end with it.
      .flatMap((examination) =>
        datesOf(examination, today).filter(
          ({ date }) => plannedStop === null || date <= plannedStop || !isStanding(examination),
        ),
      ),
    ...(current?.stop == null ? afterPlannedStop(situation, plannedStop) : []),
  ]
  return {
    reviews: planned
      .map(({ step, date }) => ({
        step,
        date,
        treated: willBeTreated && (plannedStop === null || date <= plannedStop),
      }))
      .toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0)),
    plannedStop,
  }
}

function plannedStopOf(situation: Situation): CalendarDate | null {
  const { current, today } = situation
  if (!current) return null
  if (current.stop !== null) return current.stop > today ? current.stop : null
  const decision = decisions(situation).find(({ step }) => step.decides === "stop")
  // Once the window of the decision is past and treatment goes on, no end is planned any more.
  if (decision?.state !== "upcoming" && decision?.state !== "open") return null
  return notBefore(today, decision.due)
}

function isComingLength({ state, step, visits }: Examination): boolean {
  const isLength = step.anchor !== "before-start" && step.measures.includes("axial-length")
  return isLength && isAhead(state) && missing({ measures: ["axial-length"], visits }).length > 0
}

const isStanding = ({ step }: Examination): boolean => step.anchor.startsWith("last-visit")

function datesOf(
  examination: Examination,
  today: CalendarDate,
): readonly { step: string; date: CalendarDate }[] {
  const { title, anchored, due, step } = examination
  if (!isStanding(examination)) return [{ step: title, date: notBefore(today, due) }]
  const interval = Math.max(1, step.offsetMonths)
  const times = Math.max(1, Math.floor(HORIZON_MONTHS / interval))
  // Counted from the last visit, so that a short month on the way shortens nothing after it; from today when overdue.
  const isOverdue = due < today
  return Array.from({ length: times }, (_, n) => ({
    step: title,
    date: isOverdue ? addMonths(today, n * interval) : addMonths(anchored, (n + 1) * interval),
  }))
}

function notBefore(today: CalendarDate, date: CalendarDate): CalendarDate {
  if (date < today) return today
  return date
}

function afterPlannedStop(situation: Situation, plannedStop: CalendarDate | null) {
  if (plannedStop === null) return []
  return stepsAnchoredAt(situation, "stop")
    .filter(({ measures }) => measures.includes("axial-length"))
    .map((step) => {
      const { title, due } = occasionOf({ step, anchored: plannedStop, current: situation.current })
      return { step: title, date: due }
    })
}
