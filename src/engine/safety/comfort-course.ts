import { type CalendarDate, type Course, EYES, type Eye, type EyeExamination } from "../course.js"
import { correctedDistanceLogMAR } from "../optics/corrected-acuity.js"
import { seenHere } from "../protocol/measured.js"
import type { Protocol } from "../protocol/protocol.js"
import { standardProtocol } from "../protocol/standard.js"
import { msg, say } from "../say.js"
import { visitsBeforeDrops } from "./compared.js"
import { dropsOf } from "./raised.js"

/** One value of one eye, and how far it lies from the same eye's own value before the drops. */
export interface ComfortPoint {
  readonly date: CalendarDate
  readonly eye: Eye
  readonly value: number
  /** For accommodation: null where the method was not stated. */
  readonly method: string | null
  /** Null before the drops, without a baseline, and where the method is another or not stated. */
  readonly change: number | null
  readonly isBaseline: boolean
}

export type ComfortMeasure =
  | "photopic-pupil"
  | "accommodation"
  | "near-acuity"
  | "distance-acuity"
  | "intraocular-pressure"

export interface ComfortLine {
  readonly measure: ComfortMeasure
  readonly title: string
  readonly unit: string
  readonly digits: number
  readonly points: readonly ComfortPoint[]
}

export interface ComfortCourse {
  /** First day of drops in the current course; null where none was begun. */
  readonly begun: CalendarDate | null
  readonly lines: readonly ComfortLine[]
}

interface Read {
  readonly value: number
  readonly method: string | null
}

const MEASURES: readonly (Omit<ComfortLine, "points"> & {
  readonly of: (eye: EyeExamination) => Read | undefined
})[] = [
  {
    measure: "photopic-pupil",
    title: msg("Pupil in daylight"),
    unit: "mm",
    digits: 1,
    of: ({ pupil }) => plain(pupil?.photopic),
  },
  {
    measure: "accommodation",
    title: msg("Accommodation"),
    unit: "D",
    digits: 1,
    of: ({ accommodation }) =>
      accommodation && { value: accommodation.dioptres, method: accommodation.method ?? null },
  },
  {
    measure: "near-acuity",
    title: msg("Near acuity"),
    unit: "logMAR",
    digits: 2,
    of: ({ acuity }) => plain(acuity?.nearLogMAR),
  },
  {
    measure: "distance-acuity",
    title: msg("Distance acuity"),
    unit: "logMAR",
    digits: 2,
    of: (eye) => plain(correctedDistanceLogMAR(eye)),
  },
  {
    measure: "intraocular-pressure",
    title: msg("Pressure in the eye"),
    unit: "mmHg",
    digits: 0,
    of: ({ intraocularPressure }) => plain(intraocularPressure?.mmHg),
  },
]

const plain = (value: number | undefined): Read | undefined =>
  value === undefined ? undefined : { value, method: null }

/**
 * How pupil, accommodation, acuity and pressure went over the visits, against the child's own values before the drops of
 * the current course. Accommodation is compared within one stated method only.
 */
export function comfortCourse({
  course,
  today,
  protocol = standardProtocol,
}: {
  readonly course: Course
  readonly today: CalendarDate
  readonly protocol?: Pick<Protocol, "longestPauseDays">
}): ComfortCourse {
  const begun = dropsOf({ course, today, protocol })?.begun ?? null
  const visits = course.visits
    .filter((visit) => visit.date <= today && seenHere(visit))
    .toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
  const before = begun === null ? [] : visitsBeforeDrops({ course, begun })
  const lines = MEASURES.map(({ of, ...line }) => {
    const read = (visit: Course["visits"][number], eye: Eye) => {
      const examination = visit[eye]
      return examination && of(examination)
    }
    const points = EYES.flatMap((eye) => {
      const baseline = before.findLast((visit) => read(visit, eye) !== undefined)
      const was = baseline && read(baseline, eye)
      return visits.flatMap((visit): ComfortPoint[] => {
        const now = read(visit, eye)
        if (!now) return []
        const isUnderDrops = begun !== null && visit.date > begun
        const isComparable =
          line.measure !== "accommodation" || (now.method !== null && now.method === was?.method)
        return [
          {
            date: visit.date,
            eye,
            ...now,
            change: isUnderDrops && was && isComparable ? now.value - was.value : null,
            isBaseline: visit === baseline,
          },
        ]
      })
    })
    return { ...line, title: say(line.title), points }
  })
  return { begun, lines: lines.filter(({ points }) => points.length > 0) }
}
