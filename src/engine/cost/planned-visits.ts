import type { CalendarDate, Course } from "../course.js"
import { examinations, isAhead } from "../protocol/examinations.js"
import { livedThrough } from "../protocol/lived-through.js"
import { missing } from "../protocol/measured.js"
import type { Measure, Protocol, Stage } from "../protocol/protocol.js"
import { situationOn } from "../protocol/situation.js"
import { stageOf } from "../protocol/stage-of.js"

export interface PlannedVisit {
  readonly date: CalendarDate
  readonly title: string
  readonly stage: Stage
  /** Still to be measured. */
  readonly measures: readonly Measure[]
  /** Some of it was measured already, so that only the rest is to come. */
  readonly hasBegun: boolean
}

export interface PlannedVisits {
  readonly visits: readonly PlannedVisit[]
  /** Day of the planned decision to stop, when it falls into these months. */
  readonly decidedStop: CalendarDate | null
}

/** The visits of the coming months when everything goes to plan, the last day included, and the stop among them. */
export function plannedVisits({
  course,
  protocol,
  today,
  until,
  months,
}: {
  readonly course: Course
  readonly protocol: Protocol
  readonly today: CalendarDate
  readonly until: CalendarDate
  readonly months: number
}): PlannedVisits {
  // One month more, since the last day itself belongs to these months: the seventh visit falls on it.
  const lived = livedThrough({ course, protocol, today, months: months + 1 }).filter(
    ({ date }) => date <= until,
  )
  const begun = new Map(
    examinations(situationOn({ course, protocol, today }))
      .filter(({ state }) => isAhead(state))
      .map(({ title, due, visits }) => [`${title} ${due < today ? today : due}`, visits]),
  )
  const visits = lived
    .filter(({ step }) => step.kind === "examination")
    .map(({ step, title, date, measures }): PlannedVisit => {
      const sofar = begun.get(`${title} ${date}`) ?? []
      const left = measures.filter((measure) => missing({ measures: [measure], visits: sofar }).length > 0)
      return { date, title, stage: stageOf(step), measures: left, hasBegun: left.length < measures.length }
    })
  const stop = lived.find(({ step }) => step.decides === "stop")
  return { visits: joined(visits), decidedStop: stop?.date ?? null }
}

/** Steps on one day are one visit, named and charged by the one that measures most. */
function joined(visits: readonly PlannedVisit[]): readonly PlannedVisit[] {
  const byDay = new Map<CalendarDate, PlannedVisit>()
  for (const visit of visits) {
    const other = byDay.get(visit.date)
    const main = other && other.measures.length >= visit.measures.length ? other : visit
    byDay.set(visit.date, {
      ...main,
      measures: [...new Set([...main.measures, ...(other?.measures ?? []), ...visit.measures])],
    })
  }
  return [...byDay.values()]
}
