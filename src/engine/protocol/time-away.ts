import type { CalendarDate, Course } from "../course.js"
import { seenHere } from "./measured.js"
import { realTreatments } from "./treatment-course.js"

/** A stretch after a discharge in which nothing is owed. */
export interface TimeAway {
  /** Day of the discharge. */
  readonly from: CalendarDate
  /** Day on which the programme is open again, also when it is still to come; null while nothing opens it. */
  readonly to: CalendarDate | null
}

/**
 * When a child was discharged and not yet back. A visit here, a treatment (a planned one as well), or a decision to start
 * or restart, each dated after the discharge, opens the programme again.
 */
export function timesAway({
  course,
  today,
}: {
  readonly course: Course
  readonly today: CalendarDate
}): readonly TimeAway[] {
  const decisions = (course.decisions ?? []).filter(({ date }) => date <= today)
  const discharges = decisions.filter(({ kind }) => kind === "discharge").map(({ date }) => date)
  if (discharges.length === 0) return []
  const openings = [
    ...course.visits.filter((visit) => seenHere(visit) && visit.date <= today).map(({ date }) => date),
    ...realTreatments(course).map(({ from }) => from),
    ...decisions.filter(({ kind }) => kind === "start" || kind === "restart").map(({ date }) => date),
  ].toSorted()
  return [...new Set(discharges)]
    .toSorted()
    .map((from) => ({ from, to: openings.find((date) => date > from) ?? null }))
}

export const isAwayOn = (away: readonly TimeAway[], day: CalendarDate): boolean =>
  away.some(({ from, to }) => from <= day && (to === null || day < to))
