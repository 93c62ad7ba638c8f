import type { DutyState } from "../assessment.js"
import { addDays } from "../calendar.js"
import type { CalendarDate, Visit } from "../course.js"
import { lastGrowthVisit, seenHere, type Unmeasured } from "./measured.js"
import {
  datedOccasions,
  isGiven,
  type Occasion,
  occasionOf,
  stepsAnchoredAt,
  unmeasuredOf,
  visitsOf,
} from "./occasions.js"
import { isTreated, type Situation } from "./situation.js"
import { stillOwed } from "./still-owed.js"
import { isAwayOn } from "./time-away.js"

/** An examination on this child's calendar, with what is still to be measured for it. */
export interface Examination extends Occasion {
  readonly state: DutyState
  /** The visits that count for it so far. */
  readonly visits: readonly Visit[]
  readonly unmeasured: readonly Unmeasured[]
}

/** Every examination of the current course: baseline, dated steps, and the next one when none of these lies ahead. */
export function examinations(situation: Situation): readonly Examination[] {
  const dated = stillOwed(datedExaminations(situation), situation)
  return [...stillOwed(baselines(situation), situation), ...dated, ...nextAfter(dated, situation)]
}

/** The next examination where none lies ahead, or only the check after a stop that is still to come. */
function nextAfter(dated: readonly Examination[], situation: Situation): readonly Examination[] {
  const ahead = dated.filter(({ state }) => isAhead(state))
  if (isAwayOn(situation.away, situation.today)) return []
  if (ahead.length === 0) return standingExaminations(situation)
  if (!isTreated(situation) || ahead.some(({ step }) => step.anchor !== "stop")) return []
  const stop = situation.current?.stop ?? null
  return standingExaminations(situation).filter(({ due }) => stop === null || due < stop)
}

export const isAhead = (state: DutyState): boolean =>
  state === "open" || state === "overdue" || state === "upcoming"

function datedExaminations(situation: Situation): readonly Examination[] {
  const { today, course } = situation
  const occasions = datedOccasions(situation, "examination")
  const examined: Examination[] = []
  // From the last to the first, since a step is missed once the one after it is open or done.
  for (let index = occasions.length - 1; index >= 0; index--) {
    const occasion = occasions[index]!
    const after = examined[0]
    const { visits, usefulUntil } = visitsOf({
      occasion,
      before: occasions[index - 1],
      after,
      visits: course.visits,
    })
    const unmeasured = unmeasuredOf(occasion, visits)
    const isPast = after ? after.opens <= today || after.state === "done" : today > usefulUntil
    examined.unshift({
      ...occasion,
      visits,
      unmeasured,
      state: stateOf({ occasion, unmeasured, isPast, today }),
    })
  }
  return examined
}

/**
 * What is measured before the first drop cannot be measured after it: once treatment has begun a baseline is done or
 * missed. Before any treatment it stays owed from the first visit here on, whatever others had measured.
 */
function baselines(situation: Situation): readonly Examination[] {
  const { course, current, today } = situation
  return stepsAnchoredAt(situation, "before-start").map((step) => {
    if (current) {
      const occasion = { ...occasionOf({ step, anchored: current.start, current }), closes: current.start }
      const visits = course.visits.filter(({ date }) => occasion.opens <= date && date <= current.start)
      const unmeasured = unmeasuredOf(occasion, visits)
      return {
        ...occasion,
        visits,
        unmeasured,
        state: stateOf({ occasion, unmeasured, isPast: today > current.start, today }),
      }
    }
    const visits = course.visits.filter(seenHere)
    const first = visits[0]?.date ?? today
    const occasion = { ...occasionOf({ step, anchored: first, current }), opens: first }
    const unmeasured = unmeasuredOf(occasion, visits)
    return { ...occasion, visits, unmeasured, state: stateOf({ occasion, unmeasured, isPast: false, today }) }
  })
}

function standingExaminations(situation: Situation): readonly Examination[] {
  const { course, current, today } = situation
  const treated = isTreated(situation)
  const anchored = lastGrowthVisit(course.visits)?.date ?? (treated ? current?.start : current?.stop)
  if (anchored == null) return []
  const anchor = treated ? "last-visit-on-treatment" : "last-visit-off-treatment"
  const back = situation.away.at(-1)?.to
  const occasions = stepsAnchoredAt(situation, anchor).map((step) => occasionOf({ step, anchored, current }))
  return occasions
    .filter((occasion) => isGiven({ ...occasion, opens: today, due: today }, current))
    .map((counted) => {
      const occasion = notBefore(back, counted)
      const unmeasured = unmeasuredOf(occasion, [])
      return {
        ...occasion,
        visits: [],
        unmeasured,
        state: stateOf({ occasion, unmeasured, isPast: false, today }),
      }
    })
}

/** Nothing became overdue during a time away: what would have been due in it is due on the day of coming back. */
function notBefore(back: CalendarDate | null | undefined, occasion: Occasion): Occasion {
  if (back == null || occasion.due >= back) return occasion
  const { step, opens } = occasion
  return {
    ...occasion,
    opens: opens < back ? opens : back,
    due: back,
    closes: addDays(back, step.windowDaysAfter),
  }
}

function stateOf({
  occasion,
  unmeasured,
  isPast,
  today,
}: {
  occasion: Pick<Occasion, "opens" | "closes">
  unmeasured: readonly Unmeasured[]
  /** The moment is over: measuring now would serve another step. */
  isPast: boolean
  today: CalendarDate
}): DutyState {
  if (unmeasured.length === 0) return "done"
  if (today < occasion.opens) return "upcoming"
  if (today <= occasion.closes) return "open"
  return isPast ? "missed" : "overdue"
}
