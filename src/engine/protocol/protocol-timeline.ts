import { addDays } from "../calendar.js"
import type { CalendarDate, TreatmentChoice } from "../course.js"
import { livedThrough } from "./lived-through.js"
import type { Measure, Protocol, StepKind } from "./protocol.js"

/** A step of a protocol on the day on which it comes. */
export interface TimelineStep {
  readonly stepId: string
  readonly title: string
  readonly kind: StepKind
  readonly date: CalendarDate
  /** First and last day of its window. */
  readonly opens: CalendarDate
  readonly closes: CalendarDate
  readonly measures: readonly Measure[]
}

/**
 * The dates of a protocol for a child who is first seen on a day and, where a treatment is named, begins it that day; each
 * examination made on its day, each stop taken as planned; the last day is counted in.
 *
 * @example
 * protocolTimeline({ protocol: standardProtocol, start: "2026-01-15", treatment: { kind: "atropine" } })
 */
export function protocolTimeline({
  protocol,
  start,
  treatment,
  months = 24,
}: {
  readonly protocol: Protocol
  readonly start: CalendarDate
  /** Null for a child who is observed only. */
  readonly treatment: TreatmentChoice | null
  readonly months?: number
}): readonly TimelineStep[] {
  const course = {
    lengthwise: 1 as const,
    // Nothing here depends on the child.
    child: { born: start, sex: "female" as const },
    visits: [],
    treatments: treatment === null ? [] : [{ ...treatment, from: start }],
  }
  return livedThrough({ course, protocol, today: start, months }).map(({ step, title, date, measures }) => ({
    stepId: step.id,
    title,
    kind: step.kind,
    date,
    opens: addDays(date, -step.windowDaysBefore),
    closes: addDays(date, step.windowDaysAfter),
    measures,
  }))
}
