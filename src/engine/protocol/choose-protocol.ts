import { type CalendarDate, type Course, EYES } from "../course.js"
import { sphericalEquivalent } from "../optics/spherical-equivalent.js"
import type { PracticeRules } from "../practice-rules.js"
import { OPTICAL, opticalProtocol } from "./optical.js"
import type { Protocol } from "./protocol.js"
import { shippedProtocols } from "./shipped.js"
import { standardProtocol } from "./standard.js"
import { currentTreatmentCourse, realTreatments } from "./treatment-course.js"
import { watchfulProtocol } from "./watchful.js"

/** Myopia from here on, in dioptres: the `myopiaCutOffD` of the growth parameters, and checked against it. */
export const MYOPIA_FROM_D = -0.5

/**
 * The protocol a child follows: the one chosen for it by name, else the one that fits its treatment; the practice's copy
 * before the shipped one of the same id. A name that nobody knows counts as none.
 */
export function protocolFor({
  course,
  today,
  rules,
}: {
  readonly course: Course
  readonly today: CalendarDate
  readonly rules: Pick<PracticeRules, "protocols">
}): Protocol {
  const named = (id: string | undefined) =>
    [...rules.protocols, ...shippedProtocols].find((protocol) => protocol.id === id)
  const fitting = fittingProtocol(course, today)
  return named(course.child.protocol) ?? named(fitting.id) ?? fitting
}

function fittingProtocol(course: Course, today: CalendarDate): Protocol {
  if (realTreatments(course).length === 0) {
    return isKnownNotMyopic(course, today) ? watchfulProtocol : standardProtocol
  }
  const { longestPauseDays } = standardProtocol
  const treatments = currentTreatmentCourse({ course, today, longestPauseDays })?.treatments ?? []
  return treatments.every(({ kind }) => OPTICAL.includes(kind)) ? opticalProtocol : standardProtocol
}

/** Whether the last refraction says so of every eye that was refracted. */
function isKnownNotMyopic({ visits }: Course, today: CalendarDate): boolean {
  const refracted = visits
    .filter(({ date }) => date <= today)
    .map((visit) => ({
      date: visit.date,
      powers: EYES.flatMap((eye) => visit[eye]?.refraction ?? []).map(sphericalEquivalent),
    }))
    .filter(({ powers }) => powers.length > 0)
  const last = refracted.toSorted((a, b) => (a.date < b.date ? -1 : 1)).at(-1)
  return last?.powers.every((power) => power > MYOPIA_FROM_D) ?? false
}
