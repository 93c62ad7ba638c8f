import { addMonths } from "../calendar.js"
import type { CalendarDate } from "../course.js"
import { type Examination, examinations, isAhead } from "../protocol/examinations.js"
import { lastGrowthVisit, missing } from "../protocol/measured.js"
import { type Occasion, occasionOf, stepsAnchoredAt } from "../protocol/occasions.js"
import { plannedReviews } from "../protocol/planned-reviews.js"
import type { Anchor, Measure, Stage } from "../protocol/protocol.js"
import { isTreated, type Situation, type SituationInput, situationOn } from "../protocol/situation.js"
import { stageOf } from "../protocol/stage-of.js"

export interface PlannedVisit {
  readonly date: CalendarDate
  readonly title: string
  readonly stage: Stage
  /** Still to be measured. */
  readonly measures: readonly Measure[]
  /** A visit that counts for it has been, so that only the rest of it is to come. */
  readonly hasBegun: boolean
}

export interface PlannedVisits {
  readonly visits: readonly PlannedVisit[]
  /** First day without treatment, as recorded or as the protocol plans it; null where no end is in sight. */
  readonly plannedStop: CalendarDate | null
}

/**
 * Every examination still to come up to a day, each on its due date, or today when it is overdue: those of the course,
 * then those after the planned stop, then those that repeat without end.
 */
export function plannedVisits({
  until,
  ...input
}: SituationInput & { readonly until: CalendarDate }): PlannedVisits {
  const situation = situationOn(input)
  const { current, today } = situation
  const { plannedStop } = plannedReviews(input)
  const coming = examinations(situation).filter(
    ({ state, step }) => isAhead(state) && !isStanding(step.anchor),
  )
  const onCourse = coming
    .filter(({ step, due }) => step.anchor === "stop" || plannedStop === null || due <= plannedStop)
    .map((examination) => visitOf(examination, today))
  const afterStop =
    plannedStop !== null && current?.stop == null
      ? stepsAnchoredAt(situation, "stop")
          .filter(({ kind }) => kind === "examination")
          .map((step) => visitOf(occasionOf({ step, anchored: plannedStop, current }), today))
      : []
  const dated = [...onCourse, ...afterStop].toSorted(byDate)
  const all = [...dated, ...repeated({ situation, dated, plannedStop, until })]
  return { visits: joined(all.filter(({ date }) => date <= until).toSorted(byDate)), plannedStop }
}

/** What repeats for as long as treatment goes on, and what repeats once it has ended or where there is none. */
function repeated({
  situation,
  dated,
  plannedStop,
  until,
}: {
  readonly situation: Situation
  readonly dated: readonly PlannedVisit[]
  readonly plannedStop: CalendarDate | null
  readonly until: CalendarDate
}): readonly PlannedVisit[] {
  const { course, current, today } = situation
  const willBeTreated = isTreated(situation) || (current !== null && today < current.start)
  const goesOn = willBeTreated && plannedStop === null
  const anchor: Anchor = goesOn ? "last-visit-on-treatment" : "last-visit-off-treatment"
  // Before a planned stop the steps of the course are all there is; after it, what is seen off treatment goes on.
  const last =
    dated.at(-1)?.date ??
    lastGrowthVisit(course.visits)?.date ??
    (goesOn ? current?.start : (current?.stop ?? plannedStop))
  if (last == null) return []
  const from = plannedStop !== null && plannedStop > last ? plannedStop : last
  return stepsAnchoredAt(situation, anchor).flatMap((step) => {
    const interval = Math.max(1, step.offsetMonths)
    const first = addMonths(from, interval)
    // Counted from the last visit, so that a short month on the way shortens nothing after it; from today when overdue.
    const dateOf = (n: number) =>
      first < today ? addMonths(today, n * interval) : addMonths(from, (n + 1) * interval)
    const visits: PlannedVisit[] = []
    for (let n = 0; dateOf(n) <= until; n++) {
      const occasion = occasionOf({ step, anchored: addMonths(dateOf(n), -interval), current })
      const measures = goesOn ? occasion.measures : step.measures
      visits.push({ ...visitOf({ ...occasion, measures }, today), date: dateOf(n) })
    }
    return visits
  })
}

const isStanding = (anchor: Anchor) => anchor.startsWith("last-visit")

function visitOf(
  occasion: Occasion & Partial<Pick<Examination, "visits">>,
  today: CalendarDate,
): PlannedVisit {
  const { visits = [], due, title, step } = occasion
  return {
    date: due < today ? today : due,
    title,
    stage: stageOf(step),
    measures: occasion.measures.filter((measure) => missing({ measures: [measure], visits }).length > 0),
    hasBegun: visits.length > 0,
  }
}

/** Two steps on one day are one visit, named and charged by the one that measures more. */
function joined(visits: readonly PlannedVisit[]): readonly PlannedVisit[] {
  const byDay = new Map<CalendarDate, PlannedVisit>()
  for (const visit of visits) {
    const other = byDay.get(visit.date)
    const [larger, smaller] =
      other && other.measures.length >= visit.measures.length ? [other, visit] : [visit, other]
    byDay.set(visit.date, {
      ...larger,
      measures: [...new Set([...larger.measures, ...(smaller?.measures ?? [])])],
    })
  }
  return [...byDay.values()]
}

const byDate = (a: PlannedVisit, b: PlannedVisit) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0)
