import type { Eye, EyeExamination, Visit } from "../../engine/course.js"
import { EYES } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { type Limit, limits, slippedDecimal } from "../../server/contract/limits.js"
import type { Problem } from "../../server/contract/problem.js"
import { ruleInWords } from "../faults.js"
import { inWords } from "../format.js"
import type { DraftFault } from "./examination.js"
import type { EyeField } from "./visit-draft.js"

const LIMITED: readonly (readonly [EyeField, Limit, (eye: EyeExamination) => number | undefined])[] = [
  ["length", limits.axialLengthMm, (eye) => eye.axialLength?.mm],
  ["refraction", limits.sphereD, (eye) => eye.refraction?.sphere],
  ["refraction", limits.cylinderD, (eye) => eye.refraction?.cylinder],
  ["pupil", limits.pupilMm, (eye) => eye.pupil?.photopic],
  ["pupilDim", limits.pupilMm, (eye) => eye.pupil?.mesopic],
  ["cornea", limits.corneaRadiusMm, (eye) => eye.corneaRadius?.flat],
  ["cornea", limits.corneaRadiusMm, (eye) => eye.corneaRadius?.steep],
  ["accommodation", limits.accommodationD, (eye) => eye.accommodation?.dioptres],
  ["acuityFar", limits.acuityLogMAR, (eye) => eye.acuity?.distanceLogMAR],
  ["acuityNear", limits.acuityLogMAR, (eye) => eye.acuity?.nearLogMAR],
  ["pressure", limits.intraocularPressureMmHg, (eye) => eye.intraocularPressure?.mmHg],
]

/** Where a figure out of bounds is most often a lost or a doubled place of the decimal point. */
const SLIPS: readonly EyeField[] = ["length", "cornea"]

/** Figures outside what the record takes, such as a length of 2.41 or 241 mm, at their fields. */
export function limitFaults(visit: Visit): readonly DraftFault[] {
  return EYES.flatMap((eye) => {
    const found = LIMITED.flatMap(([field, limit, pick]) => {
      const value = visit[eye] && pick(visit[eye])
      if (value === undefined || (value >= limit.low && value <= limit.high)) return []
      const meant = SLIPS.includes(field) ? slippedDecimal(value, limit) : null
      return [{ eye, field, message: beyondInWords({ limit, value, meant }) }]
    })
    // A field of two figures is told of once, with the first that is out.
    return found.filter(({ field }, index) => found.findIndex((other) => other.field === field) === index)
  })
}

function beyondInWords(told: {
  readonly limit: Limit
  readonly value: number
  /** What a slipped decimal point makes likely. */
  readonly meant: number | null
}): string {
  const { low, high, unit } = told.limit
  const { value, meant } = told
  return meant === null
    ? say("must be a number from {low} to {high} {unit}, not {value}", { low, high, unit, value })
    : say("must be a number from {low} to {high} {unit}, not {value}; did you mean {meant}?", {
        low,
        high,
        unit,
        value,
        meant,
      })
}

/** The visit without the figures at fault, so that the rest can still be looked at. */
export function withoutFields(visit: Visit, faults: readonly DraftFault[]): Visit {
  const left = (eye: Eye): EyeExamination | undefined => {
    const examination = visit[eye]
    if (!examination) return undefined
    const bad = new Set(faults.filter((fault) => fault.eye === eye).map(({ field }) => PARTS[field]))
    return Object.fromEntries(
      Object.entries(examination).filter(([part]) => !bad.has(part as keyof EyeExamination)),
    ) as EyeExamination
  }
  return { ...visit, right: left("right"), left: left("left") }
}

const PARTS: Readonly<Record<EyeField, keyof EyeExamination>> = {
  length: "axialLength",
  refraction: "refraction",
  pupil: "pupil",
  accommodation: "accommodation",
  acuityFar: "acuity",
  acuityNear: "acuity",
  cornea: "corneaRadius",
  pupilDim: "pupil",
  pressure: "intraocularPressure",
}

/** The field that a path of the server's answer speaks of, e.g. "right.axialLength.mm"; null when it is none of an eye. */
export function fieldAtPath(path: string): { readonly eye: Eye; readonly field: EyeField } | null {
  const [eye, part, detail] = path.replace(/^visit\./, "").split(".")
  if (eye !== "right" && eye !== "left") return null
  if (part === "acuity") return { eye, field: detail === "nearLogMAR" ? "acuityNear" : "acuityFar" }
  if (part === "pupil") return { eye, field: detail === "mesopic" ? "pupilDim" : "pupil" }
  const field = (Object.keys(PARTS) as EyeField[]).find((key) => PARTS[key] === part)
  return field ? { eye, field } : null
}

/** The server's problems at the fields of the form; those without a field are told apart. */
export function serverFaults(problems: readonly Problem[]): {
  readonly fields: readonly DraftFault[]
  readonly date: string | undefined
  readonly reason: string | undefined
  readonly general: readonly string[]
} {
  const at = (path: string) => problems.filter((problem) => problem.path.replace(/^visit\./, "") === path)
  const words = (found: readonly Problem[]) => found.map(ruleInWords).join("; ") || undefined
  const fields = problems.flatMap((problem) => {
    const field = fieldAtPath(problem.path)
    return field ? [{ ...field, message: ruleInWords(problem) }] : []
  })
  const known = (problem: Problem) =>
    fieldAtPath(problem.path) !== null || ["date", "reason"].includes(problem.path.replace(/^visit\./, ""))
  return {
    fields,
    date: words(at("date")),
    reason: words(at("reason")),
    general: problems.filter((problem) => !known(problem)).map(({ message }) => inWords(message)),
  }
}
