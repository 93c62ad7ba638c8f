import type { Belief } from "../assessment.js"
import { type CalendarDate, type Course, EYES, type LengthMethod } from "../course.js"
import { realTreatments } from "../protocol/treatment-course.js"
import { msg, say } from "../say.js"
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
        const { readings } = length
        const values = { eye, mm: fixed(length.mm), method: say(METHODS[length.method ?? "not-stated"]) }
        return [
          readings === undefined
            ? say("{eye, select, right {right} other {left}} {mm} mm ({method})", values)
            : say(
                "{eye, select, right {right} other {left}} {mm} mm ({readings, plural, one {# reading} other {# readings}}, {method})",
                { ...values, readings },
              ),
        ]
      })
      return lengths.length === 0
        ? []
        : [[say("Length on {date}", { date: visit.date }), lengths.join("; ")] as const]
    })
}

/** As a course file names them. */
const METHODS: Readonly<Record<LengthMethod | "not-stated", string>> = {
  "optical-biometry": msg("optical-biometry|method"),
  ultrasound: msg("ultrasound|method"),
  "not-stated": msg("method not stated"),
}

/** The days of the refractions that are a second witness of growth: those before the first treatment. */
export function refractionInput({ course, asOf }: CourseOnDay): WhyInput {
  const start = realTreatments(course)[0]?.from
  const dates = course.visits
    .filter((visit) => EYES.some((eye) => visit[eye]?.refraction))
    .map(({ date }) => date)
    .filter((date) => date <= asOf && (start === undefined || date <= start))
  return [
    say("Refractions that count (before treatment)"),
    dates.length === 0 ? say("none|refractions") : dates.join(", "),
  ]
}

export function treatmentInputs({ course }: Pick<CourseOnDay, "course">): readonly WhyInput[] {
  return realTreatments(course).map((treatment) => [
    capitalised(treatmentName(treatment)),
    treatment.to
      ? say("from {from} to {to}", { from: treatment.from, to: treatment.to })
      : say("from {from} to now", { from: treatment.from }),
  ])
}

/** What was believed before the child's figures beside what is believed after them. */
export function beliefInputs(beliefs: readonly Belief[]): readonly WhyInput[] {
  return beliefs.map(({ what, prior, posterior }) => [
    capitalised(what),
    say("before the measurements {before}, after them {after} (mean ± SD)", {
      before: spread(prior),
      after: spread(posterior),
    }),
  ])
}

const spread = ({ mean, sd }: Belief["prior"]): string => `${fixed(mean)} ± ${fixed(sd)}`
