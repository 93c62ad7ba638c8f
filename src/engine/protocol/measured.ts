import { EYES, type Eye, type EyeExamination, type Visit } from "../course.js"
import { correctedDistanceLogMAR } from "../optics/corrected-acuity.js"
import { msg, say } from "../say.js"
import type { Measure } from "./protocol.js"

const NAMES: Readonly<Record<Measure, string>> = {
  "axial-length": msg("axial length"),
  refraction: msg("refraction"),
  "cycloplegic-refraction": msg("refraction with cycloplegia"),
  "cornea-radius": msg("corneal radius"),
  "photopic-pupil": msg("photopic pupil"),
  accommodation: msg("amplitude of accommodation"),
  "near-acuity": msg("near acuity"),
  "distance-acuity": msg("distance acuity"),
  symptoms: msg("symptoms"),
}

/** A measure as a person says it. */
export const measureName = (measure: Measure): string => say(NAMES[measure])

const OF_EYE: Readonly<Record<Exclude<Measure, "symptoms">, (eye: EyeExamination) => boolean>> = {
  "axial-length": (eye) => eye.axialLength !== undefined,
  refraction: (eye) => eye.refraction !== undefined,
  "cycloplegic-refraction": (eye) => eye.refraction?.cycloplegic === true,
  "cornea-radius": (eye) => eye.corneaRadius !== undefined,
  "photopic-pupil": (eye) => eye.pupil?.photopic !== undefined,
  accommodation: (eye) => eye.accommodation !== undefined,
  "near-acuity": (eye) => eye.acuity?.nearLogMAR !== undefined,
  "distance-acuity": (eye) => correctedDistanceLogMAR(eye) !== undefined,
}

/** A measure that is still owed, in both eyes or in one. */
export interface Unmeasured {
  readonly measure: Measure
  /** In words, the eye named when only one is missing. */
  readonly name: string
}

interface MeasuresOwed {
  readonly measures: readonly Measure[]
  readonly visits: readonly Visit[]
  /** The eyes to be measured; both when absent. */
  readonly eyes?: readonly Eye[]
}

/**
 * What these visits together left unmeasured. An empty list of symptoms is an answer (asked, none); no list is not.
 *
 * @example
 * unmeasured({ measures: ["axial-length"], visits: [] }) // => [{ measure: "axial-length", name: "axial length" }]
 */
export function unmeasured({ measures, visits, eyes: owed = EYES }: MeasuresOwed): readonly Unmeasured[] {
  return measures.flatMap((measure): Unmeasured[] => {
    const name = measureName(measure)
    if (measure === "symptoms")
      return visits.some((visit) => visit.symptoms !== undefined) ? [] : [{ measure, name }]
    const eyes = owed.filter((eye) => !visits.some((visit) => measuredIn(visit, eye, measure)))
    return eyes.length === 0 ? [] : [{ measure, name: nameIn(name, eyes) }]
  })
}

/** As `unmeasured`, in words alone. */
export const missing = (owed: MeasuresOwed): readonly string[] => unmeasured(owed).map(({ name }) => name)

/** The name of a measure with the eye that it is missing in, where it is one. */
export function nameIn(name: string, eyes: readonly Eye[]): string {
  const [eye, other] = eyes
  if (eye === undefined || other !== undefined) return name
  return say("{name} ({eye, select, right {right eye} other {left eye}})", { name, eye })
}

function measuredIn(visit: Visit, eye: Eye, measure: Exclude<Measure, "symptoms">): boolean {
  const examination = visit[eye]
  return examination !== undefined && OF_EYE[measure](examination)
}

/** Whether the child was seen here: old glasses and figures passed on by others are history, not visits. */
export const seenHere = (visit: Visit): boolean => visit.from === undefined

/** The last visit that measured how the eye grows, else the last visit at all. */
export function lastGrowthVisit(visits: readonly Visit[]): Visit | undefined {
  const here = visits.filter(seenHere).toSorted((a, b) => (a.date < b.date ? -1 : 1))
  return (
    here.findLast((visit) =>
      EYES.some((eye) => measuredIn(visit, eye, "axial-length") || measuredIn(visit, eye, "refraction")),
    ) ?? here.at(-1)
  )
}
