import type { Duty, DutyState } from "../assessment.js"
import { addDays } from "../calendar.js"
import { type ConsentState, consentInForce, coversStrength } from "../consent/consent-in-force.js"
import type { CalendarDate, Treatment } from "../course.js"
import { say } from "../say.js"
import { treatmentName } from "../treatment-name.js"
import { dutyFrom } from "./duty-source.js"
import type { Situation } from "./situation.js"
import { isInUse, realTreatments } from "./treatment-course.js"

/**
 * For each treatment and strength of the current course, planned ones included: the consent owed by its first day, and
 * the one owed again where the family withdrew theirs or a material new wording came into force while it is given.
 */
export function consentDuties(situation: Situation): readonly Duty[] {
  const { current, course, today } = situation
  if (!current) return []
  const names = new Set<string>()
  return [...current.treatments, ...realTreatments(course).filter(({ from }) => from > today)].flatMap(
    (treatment) => {
      const name = treatmentName(treatment)
      if (names.has(name)) return []
      names.add(name)
      return [firstConsent(situation, treatment), ...consentAgain(situation, treatment)]
    },
  )
}

function firstConsent(situation: Situation, treatment: Treatment): Duty {
  const { today, protocol } = situation
  const opens = addDays(treatment.from, -protocol.consentLeadDays)
  const consent = atStart(situation, treatment)
  const late = consent.kind === "in-force" ? undefined : lateConsent(situation, treatment)
  const state = stateOf({
    treatment,
    isGiven: consent.kind === "in-force",
    isLate: late !== undefined,
    opens,
    today,
  })
  const name = treatmentName(treatment)
  const lacking = consent.kind === "in-force" ? [] : [needOf({ treatment, consent, late })]
  return dutyFrom(
    { needsRepeatStep: lacking.includes(null) },
    {
      kind: "consent",
      step: say("consent to {treatment}", { treatment: name }),
      opens,
      due: treatment.from,
      closes: treatment.from,
      state,
      needs: lacking.map((need) => need ?? say("a consent that covers {treatment}", { treatment: name })),
    },
  )
}

/** Owed at once: treatment goes on, but the consent it began with no longer holds. */
function consentAgain(situation: Situation, treatment: Treatment): readonly Duty[] {
  const { current, today, course, wordings } = situation
  const isGoingOn = current!.treatments.some(
    (other) => treatmentName(other) === treatmentName(treatment) && isInUse(other, today),
  )
  if (!isGoingOn) return []
  const hadOne = atStart(situation, treatment).kind === "in-force" || lateConsent(situation, treatment)
  if (!hadOne) return []
  const now = consentInForce({ course, treatment, on: today, wordings })
  if (now.kind === "in-force" || now.since === undefined) return []
  const { since, why } = now
  return [
    {
      kind: "consent",
      step: say("consent to {treatment} again", { treatment: treatmentName(treatment) }),
      opens: since,
      due: since,
      closes: since,
      state: today > since ? "overdue" : "open",
      needs: [why],
    },
  ]
}

/** The consent as it stood on the first day of the treatment, or stands today where that day is still to come. */
function atStart({ course, today, wordings }: Situation, treatment: Treatment): ConsentState {
  const on = treatment.from < today ? treatment.from : today
  return consentInForce({ course, treatment, on, wordings })
}

/** The first consent given after the treatment had begun. */
function lateConsent({ course }: Situation, treatment: Treatment): CalendarDate | undefined {
  return (course.consents ?? [])
    .filter(
      (consent) =>
        consent.covers.kind === treatment.kind &&
        coversStrength(consent, treatment) &&
        consent.date > treatment.from,
    )
    .map(({ date }) => date)
    .toSorted()[0]
}

function stateOf({
  treatment,
  isGiven,
  isLate,
  opens,
  today,
}: {
  readonly treatment: Treatment
  readonly isGiven: boolean
  readonly isLate: boolean
  readonly opens: CalendarDate
  readonly today: CalendarDate
}): DutyState {
  if (isGiven) return "done"
  const isOver = isLate || (treatment.to != null && treatment.to <= today)
  if (isOver) return "missed"
  if (today > treatment.from) return "overdue"
  return today < opens ? "upcoming" : "open"
}

/** What is lacking besides the consent itself; null where nothing is. */
function needOf({
  treatment,
  consent,
  late,
}: {
  readonly treatment: Treatment
  readonly consent: ConsentState
  readonly late: CalendarDate | undefined
}): string | null {
  if (late !== undefined)
    return say("consent is dated {late}, after the start on {from}", { late, from: treatment.from })
  if (consent.kind === "withdrawn" || consent.kind === "wording-renewed") return consent.why
  return null
}
