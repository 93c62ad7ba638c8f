import { addDays, dayNumberOrNull } from "../../../engine/calendar.js"
import type { CalendarDate } from "../../../engine/course.js"
import { type Loose, record } from "../../course/loose.js"

/** Days as they stand in R4: a date, or the day of a moment as its writer's clock had it. */

/** The day of a date or a moment; undefined for a bare month or year, which name no day. */
export function dayIn(value: unknown): CalendarDate | undefined {
  if (typeof value !== "string") return undefined
  const [day = "", rest = ""] = [value.slice(0, 10), value.slice(10)]
  if (dayNumberOrNull(day) === null) return undefined
  return rest === "" || /^T\d\d:/.test(rest) ? day : undefined
}

/** The day of an Observation. */
export const effectiveDay = ({ effectiveDateTime, effectiveInstant, effectivePeriod }: Loose) =>
  dayIn(effectiveDateTime) ?? dayIn(effectiveInstant) ?? dayIn(record(effectivePeriod).start)

/** A period whose last day is included, for a span whose `to` is the first day after it. */
export const periodBefore = (from: CalendarDate | undefined, to: CalendarDate | null | undefined) => ({
  ...(from === undefined ? {} : { start: from }),
  // Withdrawn on the first day there is no day it held on, and a period may not end before it starts.
  ...(to && (from === undefined || to > from) ? { end: addDays(to, -1) } : {}),
})

export function spanIn(period: unknown): { readonly from?: CalendarDate; readonly to?: CalendarDate } {
  const [start, end] = [dayIn(record(period).start), dayIn(record(period).end)]
  return {
    ...(start === undefined ? {} : { from: start }),
    ...(end === undefined ? {} : { to: addDays(end, 1) }),
  }
}
