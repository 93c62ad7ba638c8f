import { dateWords, fixed } from "../../chart/words.js"
import type { CalendarDate, Course } from "../../engine/course.js"
import { EYES } from "../../engine/course.js"

/** The lengths of a course as inputs of a "why?", one line a visit: date, and "right 24.02 mm, left 23.95 mm". */
export function lengthInputs(
  course: Course,
  within?: { readonly from: CalendarDate; readonly to: CalendarDate },
): readonly (readonly [string, string])[] {
  return course.visits
    .filter((visit) => !within || (visit.date >= within.from && visit.date <= within.to))
    .flatMap((visit) => {
      const lengths = EYES.flatMap((eye) => {
        const length = visit[eye]?.axialLength
        if (!length) return []
        const readings = length.readings === undefined ? "" : ` (${length.readings} readings)`
        return [`${eye} ${fixed(length.mm, 2)} mm${readings}`]
      })
      return lengths.length === 0 ? [] : [[`Length, ${dateWords(visit.date)}`, lengths.join(", ")] as const]
    })
}

/** How many refractions from before the first treatment count as a witness, as one input line. */
export function refractionInputs(course: Course): readonly (readonly [string, string])[] {
  const start = (course.treatments ?? [])
    .filter((treatment) => treatment.kind !== "none")
    .map((treatment) => treatment.from)
    .sort()[0]
  const dates = course.visits
    .filter((visit) => EYES.some((eye) => visit[eye]?.refraction))
    .filter((visit) => start === undefined || visit.date <= start)
    .map((visit) => dateWords(visit.date))
  return [["Refractions that count (before treatment)", dates.length === 0 ? "none" : dates.join(", ")]]
}
