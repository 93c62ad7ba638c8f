import { addDays, addMonths, type DayNumber, dayNumber } from "../calendar.js"
import type { CalendarDate, Visit } from "../course.js"
import { missing } from "./measured.js"
import type { Anchor, Measure, ProtocolStep } from "./protocol.js"
import type { Situation } from "./situation.js"
import { changesOfStrength, type TreatmentCourse } from "./treatment-course.js"

/** A step of the protocol on the calendar of one child. */
export interface Occasion {
  readonly step: ProtocolStep
  /** The day the step is counted from. */
  readonly anchored: CalendarDate
  readonly opens: CalendarDate
  readonly due: CalendarDate
  readonly closes: CalendarDate
  readonly title: string
  readonly measures: readonly Measure[]
}

/** Steps counted from the start, a change of strength or the stop of the current course, in order of their due date. */
export function datedOccasions(situation: Situation): readonly Occasion[] {
  const { current, protocol } = situation
  if (!current) return []
  const { stop } = current
  const changes = changesOfStrength(current)
  const fromStart = stepsAnchoredAt(situation, startAnchor(situation))
  const occasions = [
    ...fromStart.map((step) => occasionOf({ step, anchored: current.start, current })),
    ...changes.flatMap((change) =>
      fromStart
        .filter(({ restartsOnChange }) => restartsOnChange)
        .map((step) => ({
          ...occasionOf({ step, anchored: change, current }),
          title: titleAfterChange(step),
        })),
    ),
  ].filter(
    (occasion) => (stop === null || occasion.opens <= stop) && !isRestarted(occasion, changes, situation),
  )
  const afterStop =
    stop === null
      ? []
      : protocol.steps
          .filter(({ anchor }) => anchor === "stop")
          .map((step) => occasionOf({ step, anchored: stop, current }))
  return [...occasions, ...afterStop].toSorted((a, b) => (a.due < b.due ? -1 : a.due > b.due ? 1 : 0))
}

/** A later course follows the steps for a restart where the protocol has them. */
export function startAnchor({ current, protocol }: Situation): Anchor {
  const hasRestart = protocol.steps.some(({ anchor }) => anchor === "restart")
  return current?.isLater && hasRestart ? "restart" : "start"
}

export function stepsAnchoredAt({ protocol }: Situation, anchor: Anchor): readonly ProtocolStep[] {
  return protocol.steps.filter((step) => step.anchor === anchor)
}

/** What a step is called where it is owed again after a change of strength. */
export const titleAfterChange = ({ title }: ProtocolStep): string => `${title} after the change of strength`

export function occasionOf({
  step,
  anchored,
  current,
}: {
  step: ProtocolStep
  anchored: CalendarDate
  current: TreatmentCourse | null
}): Occasion {
  const due = addMonths(anchored, step.offsetMonths)
  const opens = addDays(due, -step.windowDaysBefore)
  const closes = addDays(due, step.windowDaysAfter)
  const onAtropine = (current?.treatments ?? []).some(
    ({ kind, from, to }) => kind === "atropine" && from <= due && (to == null || to > opens),
  )
  const measures = onAtropine ? [...step.measures, ...step.measuresOnAtropine] : step.measures
  return { step, anchored, opens, due, closes, title: step.title, measures }
}

/**
 * The visits that belong to one of several occasions, and the last day on which one still would.
 * A visit belongs to an occasion when it lies in its window, or when that due date is the nearest and no further than
 * half the interval to its neighbour. So two visits may complete one occasion (the drops for cycloplegia a week later),
 * and one visit two occasions whose windows overlap.
 */
export function visitsOf({
  occasion,
  before,
  after,
  visits,
}: {
  occasion: Occasion
  before: Occasion | undefined
  after: Occasion | undefined
  visits: readonly Visit[]
}): { readonly visits: readonly Visit[]; readonly usefulUntil: DayNumber } {
  const due = dayNumber(occasion.due)
  const anchored = dayNumber(occasion.anchored)
  const prior = before ? Math.max(anchored, dayNumber(before.due)) : anchored
  const earliest = (prior + due) / 2
  const latest = after ? (due + dayNumber(after.due)) / 2 : due + (due - prior) / 2
  const isNear = (day: DayNumber) => day > earliest && day <= latest
  return {
    visits: visits.filter(
      ({ date }) => date >= occasion.anchored && (isInWindow(occasion, date) || isNear(dayNumber(date))),
    ),
    usefulUntil: Math.max(latest, dayNumber(occasion.closes)),
  }
}

export function isInWindow({ opens, closes }: Occasion, date: CalendarDate): boolean {
  return opens <= date && date <= closes
}

// A change of strength before a check is due makes the check start again, unless it had already been done.
function isRestarted(
  { step, anchored, due, opens, measures }: Occasion,
  changes: readonly CalendarDate[],
  { course }: Situation,
): boolean {
  const change = step.restartsOnChange ? changes.find((date) => anchored < date && date <= due) : undefined
  if (change === undefined) return false
  const visits = course.visits.filter(({ date }) => opens <= date && date <= change)
  return missing({ measures, visits }).length > 0
}
