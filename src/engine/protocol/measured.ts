import { EYES, type Eye, type EyeExamination, type Visit } from "../course.js"
import type { Measure } from "./protocol.js"

const NAMES: Readonly<Record<Measure, string>> = {
  "axial-length": "axial length",
  refraction: "refraction",
  "cycloplegic-refraction": "refraction with cycloplegia",
  "cornea-radius": "corneal radius",
  "photopic-pupil": "photopic pupil",
  accommodation: "amplitude of accommodation",
  "near-acuity": "near acuity",
  "distance-acuity": "distance acuity",
  symptoms: "symptoms",
}

/** A measure as a person says it. */
export const measureName = (measure: Measure): string => NAMES[measure]

const OF_EYE: Readonly<Record<Exclude<Measure, "symptoms">, (eye: EyeExamination) => boolean>> = {
  "axial-length": (eye) => eye.axialLength !== undefined,
  refraction: (eye) => eye.refraction !== undefined,
  "cycloplegic-refraction": (eye) => eye.refraction?.cycloplegic === true,
  "cornea-radius": (eye) => eye.corneaRadius !== undefined,
  "photopic-pupil": (eye) => eye.pupil?.photopic !== undefined,
  accommodation: (eye) => eye.accommodation !== undefined,
  "near-acuity": (eye) => eye.acuity?.nearLogMAR !== undefined,
  "distance-acuity": (eye) => eye.acuity?.distanceLogMAR !== undefined,
}

/**
 * What these visits together left unmeasured, in words, an eye named when only one is missing.
 * An empty list of symptoms is an answer (asked, none); no list is not.
 *
 * @example
 * missing({ measures: ["axial-length"], visits: [] }) // => ["axial length"]
 */
export function missing({
  measures,
  visits,
  eyes: owed = EYES,
}: {
  measures: readonly Measure[]
  visits: readonly Visit[]
  /** The eyes to be measured; both when absent. */
  eyes?: readonly Eye[]
}): readonly string[] {
  return measures.flatMap((measure) => {
    const name = NAMES[measure]
    if (measure === "symptoms") return visits.some((visit) => visit.symptoms !== undefined) ? [] : [name]
    const eyes = owed.filter((eye) => !visits.some((visit) => measuredIn(visit, eye, measure)))
    if (eyes.length === 0) return []
    return [eyes.length === EYES.length ? name : `${name} (${eyes[0]} eye)`]
  })
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
