import type { Belief } from "../assessment.js"
import { type CalendarDate, type Course, EYES } from "../course.js"
import { realTreatments } from "../protocol/treatment-course.js"
import { treatmentName } from "../treatment-name.js"
import { capitalised, fixed } from "../words.js"
import type { WhyInput } from "./why.js"

interface CourseOnDay {
  readonly course: Course
  readonly asOf: CalendarDate
}

/** One line a visit: "Length on 2025-01-10", "right 24.12 mm (5 readings, optical-biometry); left ...". */
export function lengthInputs({ course, asOf }: CourseOnDay): readonly WhyInput[] {
  return course.visits
    .filter(({ date }) => date <= asOf)
    .flatMap((visit) => {
      const lengths = EYES.flatMap((eye) => {
        const length = visit[eye]?.axialLength
        if (!length) return []
        const readings = length.readings === undefined ? "" : `${length.readings} readings, `
        return [`${eye} ${fixed(length.mm)} mm (${readings}${length.method ?? "method not stated"})`]
      })
      return lengths.length === 0 ? [] : [[`Length on ${visit.date}`, lengths.join("; ")] as const]
    })
}

/** The days of the refractions that are a second witness of growth: those before the first treatment. */
export function refractionInput({ course, asOf }: CourseOnDay): WhyInput {
  const start = realTreatments(course)[0]?.from
  const dates = course.visits
    .filter((visit) => EYES.some((eye) => visit[eye]?.refraction))
    .map(({ date }) => date)
    .filter((date) => date <= asOf && (start === undefined || date <= start))
  return ["Refractions that count (before treatment)", dates.length === 0 ? "none" : dates.join(", ")]
}

export function treatmentInputs({ course }: Pick<CourseOnDay, "course">): readonly WhyInput[] {
  return realTreatments(course).map((treatment) => [
    capitalised(treatmentName(treatment)),
    `from ${treatment.from} to ${treatment.to ?? "now"}`,
  ])
}

/** What was believed before the child's figures beside what is believed after them. */
export function beliefInputs(beliefs: readonly Belief[]): readonly WhyInput[] {
  return beliefs.map(({ what, prior, posterior }) => [
    capitalised(what),
    `before the measurements ${spread(prior)}, after them ${spread(posterior)} (mean ± SD)`,
  ])
}

const spread = ({ mean, sd }: Belief["prior"]): string => `${fixed(mean)} ± ${fixed(sd)}`
