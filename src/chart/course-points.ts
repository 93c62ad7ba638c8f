import { ageYears, calendarDate, dayNumber } from "../engine/calendar.js"
import type { CalendarDate, Course, Eye, SymptomKind } from "../engine/course.js"
import { EYES } from "../engine/course.js"
import { sphericalEquivalent } from "../engine/optics/spherical-equivalent.js"
import { prescriptionName } from "../engine/treatment-name.js"
import type { CourseFigureInput } from "./course-figure-input.js"

/** One value of one eye at one date. */
export interface EyePoint {
  readonly date: CalendarDate
  readonly age: number
  readonly eye: Eye
  readonly value: number
  /** Half of the 95 % interval of the measurement; null when unknown. */
  readonly half95: number | null
  /** Where the figure comes from when it was not measured here, e.g. "old glasses". */
  readonly from: string | null
}

export interface TreatmentSpan {
  readonly from: CalendarDate
  readonly to: CalendarDate | null
  readonly fromAge: number
  /** The age at the stop, or today's while the treatment goes on. */
  readonly toAge: number
  readonly ongoing: boolean
  readonly words: string
  /** True for a span that records that nothing is given. */
  readonly nothing: boolean
}

export interface SymptomPoint {
  readonly date: CalendarDate
  readonly age: number
  readonly kind: SymptomKind
  readonly grade: number
}

const Z95 = 1.96

/** Lengths in mm, in order of date. */
export function lengthPoints({ course, lengthSd }: CourseFigureInput): readonly EyePoint[] {
  return eyePoints(course, (visit, eye) => visit[eye]?.axialLength?.mm).map((point) => {
    const sd = lengthSd.find(({ date, eye }) => date === point.date && eye === point.eye)
    return sd === undefined ? point : { ...point, half95: Z95 * sd.mm }
  })
}

/** Spherical equivalents in dioptres, in order of date. */
export function refractionPoints({ course }: CourseFigureInput): readonly EyePoint[] {
  return eyePoints(course, (visit, eye) => {
    const refraction = visit[eye]?.refraction
    return refraction && sphericalEquivalent(refraction)
  })
}

/** Pupils in daylight, mm, in order of date. */
export function pupilPoints({ course }: CourseFigureInput): readonly EyePoint[] {
  return eyePoints(course, (visit, eye) => visit[eye]?.pupil?.photopic)
}

export function treatmentSpans({ course, today }: CourseFigureInput): readonly TreatmentSpan[] {
  const { born } = course.child
  return (course.treatments ?? [])
    .map((treatment) => {
      const to = treatment.to ?? null
      const ongoing = to === null || to > today
      return {
        from: treatment.from,
        to,
        fromAge: ageYears({ born, on: treatment.from }),
        toAge: ageYears({ born, on: ongoing && treatment.from < today ? today : (to ?? treatment.from) }),
        ongoing,
        words: prescriptionName(treatment),
        nothing: treatment.kind === "none",
      }
    })
    .sort((a, b) => a.fromAge - b.fromAge)
}

export function symptomPoints({ course }: CourseFigureInput): readonly SymptomPoint[] {
  return inOrder(course).flatMap(({ date, symptoms = [] }) =>
    symptoms.map(({ kind, grade }) => ({
      date,
      age: ageYears({ born: course.child.born, on: date }),
      kind,
      grade,
    })),
  )
}

/** The calendar date of a decimal age, to the nearest day. */
export function dateAtAge({ born, age }: { born: CalendarDate; age: number }): CalendarDate {
  return calendarDate(dayNumber(born) + Math.round(age * 365.25))
}

type Visit = Course["visits"][number]

function inOrder(course: Course): readonly Visit[] {
  return [...course.visits].sort((a, b) => (a.date < b.date ? -1 : 1))
}

function eyePoints(
  course: Course,
  valueIn: (visit: Visit, eye: Eye) => number | undefined,
): readonly EyePoint[] {
  return inOrder(course).flatMap((visit) =>
    EYES.flatMap((eye) => {
      const value = valueIn(visit, eye)
      if (value === undefined) return []
      const age = ageYears({ born: course.child.born, on: visit.date })
      return [{ date: visit.date, age, eye, value, half95: null, from: visit.from ?? null }]
    }),
  )
}
