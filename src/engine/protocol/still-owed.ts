import type { DutyState } from "../assessment.js"
import { addDays } from "../calendar.js"
import type { CalendarDate } from "../course.js"
import { seenHere } from "./measured.js"
import type { Occasion } from "./occasions.js"
import type { Situation } from "./situation.js"

type Judged = Occasion & { readonly state: DutyState }

/**
 * Examinations and decisions without those that nobody here could have seen to: what came while the child was discharged,
 * and what had closed before a child treated elsewhere, with figures passed on, first came here. What was overdue at a
 * discharge is missed.
 */
export function stillOwed<T extends Judged>(judged: readonly T[], situation: Situation): readonly T[] {
  return judged.flatMap((one) => {
    if (one.state === "done") return [one]
    const { away } = situation
    if (away.some(({ from, to }) => one.closes >= from && (to === null || one.due < to))) return []
    const wasClosed = one.state === "overdue" && away.some(({ from }) => one.closes < from)
    if (wasClosed) return [{ ...one, state: "missed" as const }]
    const arrived = arrivedOn(situation)
    if (arrived === null || one.closes >= arrived) return [one]
    // Nothing ends a treatment by itself, wherever it began: whether to stop is asked from the first visit on.
    if (one.step.decides !== "stop" || one.state !== "overdue") return []
    const closes = addDays(arrived, one.step.windowDaysAfter)
    return [
      {
        ...one,
        opens: arrived,
        due: arrived,
        closes,
        state: situation.today <= closes ? ("open" as const) : ("overdue" as const),
      },
    ]
  })
}

/**
 * First visit here of a child whose treatment had begun elsewhere; null for everybody else. That it began elsewhere shows in
 * figures of somebody else's from before that visit: a treatment that is merely older than the first visit may as well have
 * been begun here without its baseline, and then what was missed has to be seen.
 */
function arrivedOn({ course, current }: Situation): CalendarDate | null {
  const first = course.visits.find(seenHere)?.date
  if (current === null || first === undefined || first <= current.start) return null
  return course.visits.some((visit) => !seenHere(visit) && visit.date < first) ? first : null
}
