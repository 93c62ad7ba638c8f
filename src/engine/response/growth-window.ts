import { addMonths, dayNumber } from "../calendar.js"
import type { CalendarDate, Course, Eye } from "../course.js"
import { EYES } from "../course.js"
import { realTreatments } from "../protocol/treatment-course.js"

/** The stretch that the question "is this eye growing slowly enough?" is asked of. */
export interface GrowthWindow {
  readonly from: CalendarDate
  readonly to: CalendarDate
  /** Set when the window began with a change of treatment less than 12 months ago. */
  readonly sinceChange: boolean
}

/** A visit this near to 12 months ago is taken as the start, so that the figures are ones that were measured. */
const NEAR_DAYS = 45

/**
 * The last 12 months up to the last length, or since the last change of treatment when that is later.
 * A change on the day of the last length acts only after it and does not count, nor does one in an eye not asked about.
 * Null with fewer than two lengths.
 */
export function growthWindow({
  course,
  asOf,
  eyes = EYES,
}: {
  course: Course
  asOf: CalendarDate
  eyes?: readonly Eye[]
}): GrowthWindow | null {
  const dates = course.visits
    .filter((visit) => visit.date <= asOf && eyes.some((eye) => visit[eye]?.axialLength))
    .map((visit) => visit.date)
    .sort()
  const first = dates[0]
  const to = dates.at(-1)
  if (first === undefined || to === undefined || first === to) return null

  const lastChange = realTreatments(course)
    .filter(({ eye }) => eye === undefined || eyes.includes(eye))
    .flatMap((treatment) => (treatment.to ? [treatment.from, treatment.to] : [treatment.from]))
    .filter((date) => date < to)
    .sort()
    .at(-1)
  const yearAgo = addMonths(to, -12)
  const earliest = lastChange !== undefined && lastChange > first ? lastChange : first
  if (earliest >= yearAgo) {
    return { from: earliest, to, sinceChange: lastChange !== undefined && lastChange >= earliest }
  }
  const distance = (date: CalendarDate) => Math.abs(dayNumber(date) - dayNumber(yearAgo))
  const nearest = dates
    .filter((date) => date >= earliest && date < to && distance(date) <= NEAR_DAYS)
    .sort((a, b) => distance(a) - distance(b))[0]
  return { from: nearest ?? yearAgo, to, sinceChange: false }
}
