import { addDays, addMonths, calendarDate, dayNumber } from "../calendar.js"
import {
  type CalendarDate,
  EYES,
  type Eye,
  type Treatment,
  type TreatmentKind,
  type Visit,
} from "../course.js"
import { type Unmeasured, unmeasured } from "./measured.js"
import type { Anchor, Measure, ProtocolStep, StepKind } from "./protocol.js"
import type { Situation } from "./situation.js"
import { stepTitle, titleAfterChange } from "./titles.js"
import { type Change, changesOf, eyesOf, type TreatmentCourse } from "./treatment-course.js"

/** A step of the protocol on the calendar of one child. */
export interface Occasion {
  readonly step: ProtocolStep
  /** The day the step is counted from. */
  readonly anchored: CalendarDate
  readonly opens: CalendarDate
  readonly due: CalendarDate
  readonly closes: CalendarDate
  /** In the language in force. */
  readonly title: string
  /** Whether the step is owed again because of a change of treatment. */
  readonly isAfterChange: boolean
  readonly measures: readonly Measure[]
  /** The eyes in which what is asked for on atropine is measured; the rest is measured in both. */
  readonly eyesOnAtropine: readonly Eye[]
}

/**
 * Steps of a kind counted from the start, a change of treatment or the stop of the current course, in order of their due
 * date.
 */
export function datedOccasions(situation: Situation, kind: StepKind): readonly Occasion[] {
  const { current, protocol } = situation
  if (!current) return []
  const { stop } = current
  const stepsOf = (anchor: Anchor) =>
    protocol.steps.filter((step) => step.anchor === anchor && step.kind === kind)
  const occasions = stepsOf(startAnchor(situation)).flatMap((step) => {
    const changes = step.restartsOnChange ? changesOf(current, step.onlyFor ?? ["atropine"]) : []
    return [
      occasionOf({ step, anchored: current.start, current }),
      ...changes.map((change) => afterChange(step, change, current)),
    ].filter((occasion) => !isRestarted(occasion, changes, situation))
  })
  const afterStop =
    stop === null ? [] : stepsOf("stop").map((step) => occasionOf({ step, anchored: stop, current }))
  return [...occasions.filter(({ opens }) => stop === null || opens <= stop), ...afterStop]
    .filter((occasion) => isGiven(occasion, current))
    .toSorted((a, b) => (a.due < b.due ? -1 : a.due > b.due ? 1 : 0))
}

function afterChange(step: ProtocolStep, { date, eyes }: Change, current: TreatmentCourse): Occasion {
  const occasion = occasionOf({ step, anchored: date, current })
  return {
    ...occasion,
    isAfterChange: true,
    title: titleAfterChange(step, eyes.length < EYES.length ? eyes[0] : undefined),
    eyesOnAtropine: occasion.eyesOnAtropine.filter((eye) => eyes.includes(eye)),
  }
}

/** Whether a treatment that the step is for is given around it; after a stop, whether one had been. */
export function isGiven({ step, opens, due }: Occasion, current: TreatmentCourse | null): boolean {
  const { onlyFor, anchor } = step
  if (onlyFor === undefined) return true
  return anchor === "stop"
    ? (current?.treatments ?? []).some(({ kind }) => onlyFor.includes(kind))
    : givenAround(current, { opens, due }, onlyFor).length > 0
}

function givenAround(
  current: TreatmentCourse | null,
  { opens, due }: Pick<Occasion, "opens" | "due">,
  kinds: readonly TreatmentKind[],
): readonly Treatment[] {
  return (current?.treatments ?? []).filter(
    ({ kind, from, to }) => kinds.includes(kind) && from <= due && (to == null || to > opens),
  )
}

/** A later course follows the steps for a restart where the protocol has them. */
export function startAnchor({ current, protocol }: Situation): Anchor {
  const hasRestart = protocol.steps.some(({ anchor }) => anchor === "restart")
  return current?.isLater && hasRestart ? "restart" : "start"
}

export function stepsAnchoredAt({ protocol }: Situation, anchor: Anchor): readonly ProtocolStep[] {
  return protocol.steps.filter((step) => step.anchor === anchor)
}

export function occasionOf({
  step,
  anchored,
  current,
}: {
  step: ProtocolStep
  anchored: CalendarDate
  current: TreatmentCourse | null
}): Occasion {
  const due = addDays(addMonths(anchored, step.offsetMonths), step.offsetDays ?? 0)
  const opens = addDays(due, -step.windowDaysBefore)
  const closes = addDays(due, step.windowDaysAfter)
  const onAtropine = givenAround(current, { opens, due }, ["atropine"])
  const eyesOnAtropine = EYES.filter((eye) => onAtropine.some((treatment) => eyesOf(treatment).includes(eye)))
  const measures = onAtropine.length > 0 ? [...step.measures, ...step.measuresOnAtropine] : step.measures
  return {
    step,
    anchored,
    opens,
    due,
    closes,
    title: stepTitle(step),
    isAfterChange: false,
    measures,
    eyesOnAtropine,
  }
}

/** What these visits leave unmeasured of an occasion. */
export function unmeasuredOf(
  { step, eyesOnAtropine }: Pick<Occasion, "step" | "eyesOnAtropine">,
  visits: readonly Visit[],
): readonly Unmeasured[] {
  return [
    ...unmeasured({ measures: step.measures, visits }),
    ...unmeasured({ measures: step.measuresOnAtropine, visits, eyes: eyesOnAtropine }),
  ]
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
}): { readonly visits: readonly Visit[]; readonly usefulUntil: CalendarDate } {
  const { anchored, opens, closes } = occasion
  const due = dayNumber(occasion.due)
  const prior = Math.max(dayNumber(anchored), before ? dayNumber(before.due) : Number.NEGATIVE_INFINITY)
  const toNext = after ? dayNumber(after.due) - due : due - prior
  // The nearest days before and after: days are compared as dates, since there are many visits to few occasions.
  const nearest = calendarDate(Math.floor((prior + due) / 2) + 1)
  const latest = calendarDate(Math.floor(due + toNext / 2))
  const isReached = (date: CalendarDate) =>
    (opens <= date && date <= closes) || (nearest <= date && date <= latest)
  return {
    visits: visits.filter(({ date }) => date >= anchored && isReached(date)),
    usefulUntil: laterOf(latest, closes),
  }
}

function laterOf(one: CalendarDate, other: CalendarDate): CalendarDate {
  if (one < other) return other
  return one
}

// A change before a check is due makes the check start again, unless it had already been done or an eye on drops was
// left as it was.
function isRestarted(occasion: Occasion, changes: readonly Change[], { course }: Situation): boolean {
  const { anchored, due, opens, eyesOnAtropine } = occasion
  const change = changes.find(
    ({ date, eyes }) => anchored < date && date <= due && eyesOnAtropine.every((eye) => eyes.includes(eye)),
  )
  if (change === undefined) return false
  const visits = course.visits.filter(({ date }) => opens <= date && date <= change.date)
  return unmeasuredOf(occasion, visits).length > 0
}
