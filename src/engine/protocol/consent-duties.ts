import type { Duty, DutyState } from "../assessment.js"
import { addDays } from "../calendar.js"
import type { CalendarDate, Treatment } from "../course.js"
import { treatmentName } from "../treatment-name.js"
import { consentTo, type Situation } from "./situation.js"
import { realTreatments } from "./treatment-course.js"

/** One duty for each treatment and strength of the current course, planned ones included. */
export function consentDuties(situation: Situation): readonly Duty[] {
  const { current, course, today, protocol } = situation
  if (!current) return []
  const names = new Set<string>()
  return [...current.treatments, ...realTreatments(course).filter(({ from }) => from > today)].flatMap(
    (treatment) => {
      const name = treatmentName(treatment)
      if (names.has(name)) return []
      names.add(name)
      const given = consentTo(situation, treatment)
      const opens = addDays(treatment.from, -protocol.consentLeadDays)
      const state = stateOf({ treatment, given, opens, today })
      return {
        kind: "consent",
        step: `consent to ${name}`,
        opens,
        due: treatment.from,
        closes: treatment.from,
        state,
        needs: state === "done" ? [] : [needOf({ treatment, given })],
      }
    },
  )
}

function stateOf({
  treatment,
  given,
  opens,
  today,
}: {
  treatment: Treatment
  given: CalendarDate | undefined
  opens: CalendarDate
  today: CalendarDate
}): DutyState {
  if (given !== undefined && given <= treatment.from) return "done"
  const isOver = given !== undefined || (treatment.to != null && treatment.to <= today)
  if (isOver) return "missed"
  if (today > treatment.from) return "overdue"
  return today < opens ? "upcoming" : "open"
}

function needOf({ treatment, given }: { treatment: Treatment; given: CalendarDate | undefined }): string {
  return given === undefined
    ? `a consent that covers ${treatmentName(treatment)}`
    : `consent is dated ${given}, after the start on ${treatment.from}`
}
