import type { GrowthParameters } from "../../evidence/types.js"
import { addMonths, ageYears } from "../calendar.js"
import type { AxialLength, CalendarDate, Course, Eye, Refraction } from "../course.js"
import { EYES } from "../course.js"
import { sphericalEquivalent } from "../optics/spherical-equivalent.js"
import { realTreatments } from "../protocol/treatment-course.js"

/** One figure that bears on the growth of one eye. Ages in years, lengths in mm, refractions in dioptres. */
export interface Observation {
  readonly kind: "length" | "refraction"
  readonly eye: 0 | 1
  readonly ageYears: number
  readonly value: number
  /** Variance of the noise of this figure alone. */
  readonly ownVariance: number
  /** Variance of noise it shares with the other eye at the same visit. */
  readonly sharedVariance: number
  /** Index of the visit in the course. */
  readonly visit: number
  /**
   * Lasting offset it shares with every figure of the same group: another device than the first, or another
   * way of refracting than with cycloplegia. -1 where there is none.
   */
  readonly group: number
  readonly groupVariance: number
}

export const eyeIndex = (eye: Eye): 0 | 1 => (eye === "right" ? 0 : 1)

/** SD of one visit's length by instrument: sd_session^2 + sd_reading^2 / readings. */
export function lengthSdMm(length: Omit<AxialLength, "mm">, parameters: GrowthParameters): number {
  const { values } = parameters
  if (length.method === "ultrasound") return values.ultrasoundSessionSdMm.value
  const readings = length.readings ?? values.opticalUsualReadings.value
  return Math.hypot(values.opticalSessionSdMm.value, values.opticalReadingSdMm.value / Math.sqrt(readings))
}

/**
 * Whether the growth evidence covers a child on a day: from the birthday of its youngest age to that of its oldest,
 * both included. Counted by birthdays, since years of 365.25 days put one a day early or late.
 */
export function withinAges(
  { born, on }: { born: CalendarDate; on: CalendarDate },
  { values }: GrowthParameters,
): boolean {
  const birthday = (years: number) => addMonths(born, Math.round(12 * years))
  return birthday(values.youngestAgeYears.value) <= on && on <= birthday(values.oldestAgeYears.value)
}

/**
 * What the model may learn from a course up to `asOf`, in order of age.
 *
 * Lengths: all within the ages of the model. Refractions: only up to the first treatment of that eye, since atropine changes
 * refraction more than length (LAMP: 67 % in dioptres, 51 % in mm), so after that they are shown but kept out.
 */
export function observations({
  course,
  asOf,
  parameters,
}: {
  course: Course
  asOf: CalendarDate
  parameters: GrowthParameters
}): readonly Observation[] {
  const { values } = parameters
  const treatments = realTreatments(course)
  const firstTreated = EYES.map(
    (own) => treatments.find(({ eye }) => eye === undefined || eye === own)?.from,
  ) as [CalendarDate | undefined, CalendarDate | undefined]
  const devices = new Map<string, number>()
  const found: Observation[] = []
  // By date, whatever the order of the file: the first instrument is the one that lengths are told by.
  const inOrder = course.visits
    .map((visit, index) => ({ visit, index }))
    .sort((a, b) => (a.visit.date < b.visit.date ? -1 : a.visit.date > b.visit.date ? 1 : a.index - b.index))
  inOrder.forEach(({ visit, index }) => {
    const age = ageYears({ born: course.child.born, on: visit.date })
    if (visit.date > asOf || !withinAges({ born: course.child.born, on: visit.date }, parameters)) return
    for (const eye of EYES) {
      const { axialLength, refraction } = visit[eye] ?? {}
      if (axialLength) {
        const device = deviceNumber(axialLength, devices)
        found.push({
          kind: "length",
          eye: eyeIndex(eye),
          ageYears: age,
          value: axialLength.mm,
          ownVariance: lengthSdMm(axialLength, parameters) ** 2,
          sharedVariance: 0,
          visit: index,
          group: device === 0 ? -1 : device,
          groupVariance: device === 0 ? 0 : values.deviceChangeSdMm.value ** 2,
        })
      }
      const treatedFrom = firstTreated[eyeIndex(eye)]
      if (refraction && (treatedFrom === undefined || visit.date <= treatedFrom)) {
        const way = refractionWay(refraction, parameters)
        const variance = way.sdD ** 2
        found.push({
          kind: "refraction",
          eye: eyeIndex(eye),
          ageYears: age,
          value: sphericalEquivalent(refraction) - way.biasD,
          ownVariance: variance * (1 - values.refractionSharedShare.value),
          sharedVariance: variance * values.refractionSharedShare.value,
          visit: index,
          group: way.group,
          groupVariance: way.groupSdD ** 2,
        })
      }
    }
  })
  return found.sort((a, b) => a.ageYears - b.ageYears || a.visit - b.visit)
}

// An instrument that is not named is taken as the one used before: a change that nobody stated is not invented.
// The map is kept in order of last use.
function deviceNumber(length: AxialLength, seen: Map<string, number>): number {
  const method = length.method ?? "optical-biometry"
  const last = [...seen.keys()].findLast((name) => name.startsWith(`${method}/`))
  const name = length.device === undefined ? (last ?? `${method}/`) : `${method}/${length.device}`
  const known = seen.get(name)
  if (known !== undefined) {
    seen.delete(name)
    seen.set(name, known)
    return known
  }
  // The first name given to a nameless instrument names it; it is not a second one.
  const nameless = seen.get(`${method}/`)
  if (nameless !== undefined) {
    seen.delete(`${method}/`)
    seen.set(name, nameless)
    return nameless
  }
  seen.set(name, seen.size)
  return seen.size - 1
}

// Groups of refraction start at 1000 so that they can never meet a device's number.
function refractionWay(refraction: Refraction, { values }: GrowthParameters) {
  const dry = refraction.cycloplegic !== true
  if (refraction.method === "autorefraction") {
    return dry
      ? {
          sdD: values.dryAutorefractionSdD.value,
          biasD: values.dryAutorefractionBiasD.value,
          group: 1001,
          groupSdD: values.dryAutorefractionBiasD.sd ?? 0,
        }
      : { sdD: values.cycloplegicAutorefractionSdD.value, biasD: 0, group: -1, groupSdD: 0 }
  }
  const sdD = (refraction.method === "retinoscopy" ? values.retinoscopySdD : values.subjectiveSdD).value
  return dry
    ? { sdD, biasD: 0, group: 1002, groupSdD: values.methodChangeSdD.value }
    : { sdD, biasD: 0, group: -1, groupSdD: 0 }
}
