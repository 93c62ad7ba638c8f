import { consentInForce } from "../consent/consent-in-force.js"
import { type CalendarDate, type Course, EYES, type Supply, type Treatment } from "../course.js"
import type { ConsentWording, Pharmacy } from "../practice-rules.js"
import { say } from "../say.js"
import { lastDayInHand } from "../supply/last-day.js"
import { treatmentName } from "../treatment-name.js"
import type { Protocol } from "./protocol.js"
import { type TimeAway, timesAway } from "./time-away.js"
import { currentTreatmentCourse, eyesOf, isInUse, type TreatmentCourse } from "./treatment-course.js"

/** A course as it stood on a day: what came later is not known yet, planned treatments excepted. */
export interface Situation {
  readonly course: Course
  readonly protocol: Protocol
  readonly today: CalendarDate
  readonly current: TreatmentCourse | null
  readonly away: readonly TimeAway[]
  readonly wordings: readonly ConsentWording[]
  readonly pharmacies: readonly Pharmacy[]
}

export interface SituationInput {
  readonly course: Course
  readonly protocol: Protocol
  readonly today: CalendarDate
  /** The practice's consent wordings; without them no consent is asked for again because of its wording. */
  readonly wordings?: readonly ConsentWording[] | undefined
  /** The practice's pharmacies, for how long a bottle takes; without them the protocol's lead days count. */
  readonly pharmacies?: readonly Pharmacy[] | undefined
}

export function situationOn(input: SituationInput): Situation {
  const { course, protocol, today, wordings = [], pharmacies = [] } = input
  const known: Course = {
    ...course,
    visits: course.visits
      .filter(({ date }) => date <= today)
      .toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0)),
    consents: (course.consents ?? []).filter(({ date }) => date <= today),
    supplies: (course.supplies ?? []).filter((supply) => (useBegins(supply) ?? today) <= today),
    decisions: (course.decisions ?? []).filter(({ date }) => date <= today),
  }
  return {
    course: known,
    protocol,
    today,
    current: currentTreatmentCourse({ course, today, longestPauseDays: protocol.longestPauseDays }),
    away: timesAway({ course, today }),
    wordings,
    pharmacies,
  }
}

/** Whether the child is on treatment today. */
export function isTreated({ current, today }: Situation): boolean {
  return current !== null && current.start <= today && (current.stop === null || today < current.stop)
}

/** The drops in use today, the latest begun where two overlap: two entries where each eye has a strength of its own. */
export function dropsOfEyes({ current, today }: Situation): readonly Treatment[] {
  const inUse = EYES.flatMap((eye) => {
    const drops = current?.treatments.findLast(
      (treatment) =>
        treatment.kind === "atropine" && isInUse(treatment, today) && eyesOf(treatment).includes(eye),
    )
    return drops ? [drops] : []
  })
  return inUse.filter(
    ({ concentrationPercent }, index) =>
      inUse.findIndex((other) => other.concentrationPercent === concentrationPercent) === index,
  )
}

/** Date of the consent to this treatment at this strength that is in force today, or undefined. */
export function consentTo(
  { course, today, wordings }: Situation,
  treatment: Treatment,
): CalendarDate | undefined {
  const state = consentInForce({ course, treatment, on: today, wordings })
  return state.kind === "in-force" ? state.consent.date : undefined
}

/** Last day covered by the bottles recorded at this strength, or undefined when there are none. */
export function lastDayOfSupply({ course, protocol }: Situation, drops: Treatment): CalendarDate | undefined {
  const { bottleDaysAfterOpening: daysAfterOpening } = protocol
  return lastDayInHand({ supplies: course.supplies ?? [], drops, daysAfterOpening })
}

/** What must be in force and is not, in words. */
export function notInForce(
  situation: Situation,
  inForce: readonly ("consent" | "supply")[],
): readonly string[] {
  const { current, today, course } = situation
  if (!isTreated(situation)) return []
  const needs: string[] = []
  if (inForce.includes("consent")) {
    const unconsented = (current?.treatments ?? []).filter(
      (treatment) => isInUse(treatment, today) && consentTo(situation, treatment) === undefined,
    )
    for (const treatment of unconsented)
      needs.push(say("consent to {treatment}", { treatment: treatmentName(treatment) }))
  }
  // Without any supply record nothing can be said of the bottles; the bottle duty asks for the record.
  if (inForce.includes("supply") && (course.supplies ?? []).length > 0) {
    for (const drops of dropsOfEyes(situation)) {
      const last = lastDayOfSupply(situation, drops)
      if (last === undefined || last < today)
        needs.push(say("a bottle of {drops} in date", { drops: treatmentName(drops) }))
    }
  }
  return needs
}

/** Where no opening is recorded, the day the bottle was dispensed. */
function useBegins({ opened, dispensed }: Supply): CalendarDate | undefined {
  return opened ?? dispensed
}
