import { type CalendarDate, type Course, EYES } from "../course.js"
import { sphericalEquivalent } from "../optics/spherical-equivalent.js"
import { realTreatments } from "../protocol/treatment-course.js"

export type Myopia = "myopic" | "not-myopic" | "unknown"

/**
 * Whether the child is myopic, from the last refraction before any treatment (or the last at all).
 * One eye at or past the cut-off is enough.
 */
export function myopiaOf(course: Course, asOf: CalendarDate, cutOffD: number): Myopia {
  const firstTreated = realTreatments(course)[0]?.from
  const refracted = course.visits
    .filter((visit) => visit.date <= asOf)
    .map((visit) => ({
      date: visit.date,
      values: EYES.flatMap((eye) => {
        const refraction = visit[eye]?.refraction
        return refraction ? [sphericalEquivalent(refraction)] : []
      }),
    }))
    .filter(({ values }) => values.length > 0)
    .sort((a, b) => (a.date < b.date ? -1 : 1))
  const before = refracted.filter(({ date }) => firstTreated === undefined || date <= firstTreated)
  const last = (before.length > 0 ? before : refracted).at(-1)
  if (!last) return "unknown"
  return last.values.some((value) => value <= cutOffD) ? "myopic" : "not-myopic"
}
