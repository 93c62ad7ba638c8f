import { TREATMENT_KINDS, type TreatmentKind } from "../../engine/course.js"
import type { FeeOccasion } from "../../engine/practice-rules.js"
import { MEASURES, type Measure, STAGES, type Stage } from "../../engine/protocol/protocol.js"
import { msg, say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"

/** What a fee can be charged for, as the choices of its row. */
type Labels<Value> = readonly (readonly [Value, string])[]

const KINDS: Readonly<Record<FeeOccasion["kind"], string>> = {
  examination: msg("examination"),
  measure: msg("measurement"),
  bottle: msg("bottle"),
  device: msg("device|spectacles or lenses"),
}
const STAGE_NAMES: Readonly<Record<Stage, string>> = {
  baseline: msg("baseline"),
  "safety-check": msg("safety check"),
  review: msg("review"),
  washout: msg("after the stop"),
  discharge: msg("discharge"),
}
const MEASURE_NAMES: Readonly<Record<Measure, string>> = {
  "axial-length": msg("axial length"),
  refraction: msg("refraction"),
  "cycloplegic-refraction": msg("cycloplegic refraction"),
  "cornea-radius": msg("cornea radius"),
  "photopic-pupil": msg("photopic pupil"),
  accommodation: msg("accommodation"),
  "near-acuity": msg("near acuity"),
  "distance-acuity": msg("distance acuity"),
  symptoms: msg("symptoms"),
}
const KIND_ORDER = ["examination", "measure", "bottle", "device"] as const

export const kindLabels = (): Labels<FeeOccasion["kind"]> =>
  KIND_ORDER.map((kind) => [kind, say(KINDS[kind])])
export const stageLabels = (): Labels<Stage> => STAGES.map((stage) => [stage, say(STAGE_NAMES[stage])])
export const measureLabels = (): Labels<Measure> =>
  MEASURES.map((measure) => [measure, say(MEASURE_NAMES[measure])])
export const deviceLabels = (): Labels<TreatmentKind> =>
  TREATMENT_KINDS.filter((kind) => kind !== "atropine" && kind !== "none").map((kind) => [
    kind,
    treatmentName({ kind }),
  ])
