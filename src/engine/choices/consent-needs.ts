import { consentInForce } from "../consent/consent-in-force.js"
import type { CalendarDate, Course, TreatmentChoice } from "../course.js"
import type { ConsentWording } from "../practice-rules.js"
import { say } from "../say.js"
import { treatmentName } from "../treatment-name.js"

/** Whether one part of an option may be ordered as consents stand. */
export interface ConsentNeed {
  readonly treatment: TreatmentChoice
  readonly isInForce: boolean
  /** "in force since 2026-03-10", or what is lacking. */
  readonly words: string
}

export function consentNeeds({
  parts,
  course,
  on,
  wordings,
}: {
  readonly parts: readonly TreatmentChoice[]
  readonly course: Pick<Course, "consents">
  readonly on: CalendarDate
  readonly wordings: readonly ConsentWording[]
}): readonly ConsentNeed[] {
  return parts.map((treatment) => {
    const state = consentInForce({ course, treatment, on, wordings })
    const isInForce = state.kind === "in-force"
    const words =
      state.kind === "in-force"
        ? say("consent to {treatment} is in force since {date}", {
            treatment: treatmentName(treatment),
            date: state.consent.date,
          })
        : state.why
    return { treatment, isInForce, words }
  })
}
