import { addDays, type DayNumber, dayNumber } from "../calendar.js"
import type { CalendarDate, Course, Treatment } from "../course.js"
import { realTreatments } from "../protocol/treatment-course.js"
import { bottleSpan, isOfStrength } from "./bottle-span.js"

/** One prescription of drops up to a day, and its nights one by one. */
export interface PrescribedNights {
  readonly drops: Treatment
  readonly from: DayNumber
  /** First day after it, or the day asked about. */
  readonly end: DayNumber
  /** Night by night whether a bottle was in date; null where no bottle of this strength is recorded. */
  readonly covered: readonly boolean[] | null
  /** Share of its nights meant to have a drop: below 1 in a taper. */
  readonly nightly: number
}

/** Every prescription of drops begun before a day. The night of that day is still to come and does not count. */
export function prescribedNights(course: Course, asOf: CalendarDate): readonly PrescribedNights[] {
  const today = dayNumber(asOf)
  // Bottles that came later are not known yet.
  const supplies = (course.supplies ?? []).filter(
    ({ opened, dispensed }) => (opened ?? dispensed ?? asOf) <= asOf,
  )
  return realTreatments(course)
    .filter(({ kind, from }) => kind === "atropine" && from < asOf)
    .map((drops) => {
      const from = dayNumber(drops.from)
      const end = Math.min(today, drops.to ? dayNumber(drops.to) : today)
      const spans = supplies.flatMap((supply) => {
        const span = isOfStrength(supply, drops) ? bottleSpan(supply) : null
        return span ? [{ first: dayNumber(span.first), end: dayNumber(span.end) }] : []
      })
      const covered =
        spans.length === 0
          ? null
          : Array.from({ length: Math.max(0, end - from) }, (_, i) =>
              spans.some((span) => span.first <= from + i && from + i < span.end),
            )
      return { drops, from, end, covered, nightly: Math.min(1, (drops.nightsPerWeek ?? 7) / 7) }
    })
}

export const NIGHT_STATES = ["covered", "not-covered", "not-recorded", "not-prescribed"] as const
export type NightState = (typeof NIGHT_STATES)[number]

/** Nights in a row of one state, both ends included. */
export interface Run {
  readonly from: CalendarDate
  readonly to: CalendarDate
  readonly nights: number
  readonly state: NightState
}

/**
 * The nights from the first prescription of drops to the night before the day asked about. A night with two strengths,
 * one for each eye, is covered when both have a bottle; one whose strength has no bottle on record tells nothing.
 */
export function nightRuns(prescriptions: readonly PrescribedNights[]): readonly Run[] {
  const first = Math.min(...prescriptions.map(({ from }) => from))
  const end = Math.max(...prescriptions.map((one) => one.end))
  const runs: { from: DayNumber; nights: number; state: NightState }[] = []
  for (let night = first; night < end; night++) {
    const state = stateOf(prescriptions, night)
    const last = runs.at(-1)
    if (last?.state === state) last.nights++
    else runs.push({ from: night, nights: 1, state })
  }
  const dateOf = (day: DayNumber) => addDays(prescriptions[0]!.drops.from, day - prescriptions[0]!.from)
  return runs.map(({ from, nights, state }) => ({
    from: dateOf(from),
    to: dateOf(from + nights - 1),
    nights,
    state,
  }))
}

function stateOf(prescriptions: readonly PrescribedNights[], night: DayNumber): NightState {
  const due = prescriptions.filter(({ from, end }) => from <= night && night < end)
  const known = due.filter(({ covered }) => covered !== null)
  if (due.length === 0) return "not-prescribed"
  if (known.length === 0) return "not-recorded"
  return known.every(({ covered, from }) => covered?.[night - from]) ? "covered" : "not-covered"
}
