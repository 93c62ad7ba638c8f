import type { Eye, EyeExamination, Symptom, SymptomKind, Visit } from "../../engine/course.js"
import { EYES } from "../../engine/course.js"
import { logMARFromSnellen } from "../../engine/optics/acuity.js"
import { parsePrescription } from "../../engine/optics/parse-prescription.js"
import type { Problem } from "../../engine/problem.js"
import { msg, say } from "../../engine/say.js"
import { withMinusSigns } from "../format.js"
import { type AnswerFault, readAnswers } from "./answer-drafts.js"
import { parseNumber, parseReadings } from "./readings.js"
import type { EyeField, VisitDraft } from "./visit-draft.js"

/** Something typed that cannot be read, at its field. */
export interface DraftFault {
  readonly eye: Eye
  readonly field: EyeField
  readonly message: string
}

export interface ReadDraft {
  /** What could be read; a field at fault is absent. */
  readonly visit: Visit
  readonly faults: readonly DraftFault[]
  readonly answerFaults: readonly AnswerFault[]
}

type Reading<Value> = { readonly value: Value | undefined } | { readonly fault: string }

/**
 * The visit that a draft describes, and every field that cannot be read.
 * `base` is the stored visit when one is corrected: what the form does not ask for is carried over from it.
 */
export function readDraft(draft: VisitDraft, base?: Visit): ReadDraft {
  const faults: DraftFault[] = []
  const eyes = EYES.map((eye) => readEye({ draft, eye, base: base?.[eye], faults }))
  const symptoms = Object.entries(draft.symptoms).map(
    ([kind, grade]): Symptom => ({ kind: kind as SymptomKind, grade }),
  )
  const [right, left] = eyes
  const { answers, faults: answerFaults } = readAnswers(draft.answers, base)
  const visit: Visit = {
    ...base,
    date: draft.date,
    right: right && hasAny(right) ? right : undefined,
    left: left && hasAny(left) ? left : undefined,
    symptoms: symptoms.length > 0 ? symptoms : undefined,
    answers: answers.length > 0 ? answers : undefined,
  }
  return { visit: withoutUndefined(visit), faults, answerFaults }
}

function readEye(input: {
  readonly draft: VisitDraft
  readonly eye: Eye
  readonly base: EyeExamination | undefined
  readonly faults: DraftFault[]
}): EyeExamination {
  const { draft, eye, base, faults } = input
  const typed = draft[eye]
  const take = <Value>(field: EyeField, reading: Reading<Value>): Value | undefined => {
    if (!("fault" in reading)) return reading.value
    faults.push({ eye, field, message: reading.fault })
    return undefined
  }
  const photopic = take("pupil", readNumber(typed.pupil))
  const mesopic = take("pupilDim", readNumber(typed.pupilDim))
  const corneaRadius = take("cornea", readCornea(typed.cornea))
  const dioptres = take("accommodation", readNumber(typed.accommodation))
  const distanceLogMAR = take("acuityFar", readAcuity(typed.acuityFar))
  const nearLogMAR = take("acuityNear", readAcuity(typed.acuityNear))
  const mmHg = take("pressure", readNumber(typed.pressure))
  const pupil = withoutUndefined({ photopic, mesopic })
  const acuity = withoutUndefined({ distanceLogMAR, nearLogMAR })
  return withoutUndefined({
    ...base,
    axialLength: take("length", readLength(typed.length, draft, base?.axialLength)),
    refraction: take("refraction", readRefraction(typed.refraction, draft)),
    corneaRadius,
    pupil: hasAny(pupil) ? pupil : undefined,
    accommodation: dioptres === undefined ? undefined : { dioptres, method: draft.accommodationMethod },
    acuity: hasAny(acuity) ? acuity : undefined,
    intraocularPressure: mmHg === undefined ? undefined : { mmHg },
  })
}

function readLength(
  text: string,
  draft: VisitDraft,
  base: EyeExamination["axialLength"],
): Reading<EyeExamination["axialLength"]> {
  const readings = parseReadings(text)
  if (readings.kind === "none") return { value: undefined }
  if (readings.kind === "fault") return { fault: readings.message }
  const device = draft.device.trim()
  // A stored mean is shown as one number: that it came from several readings is not lost by opening it.
  const count = readings.count === 1 && base?.mm === readings.mean ? base.readings : readings.count
  return {
    value: withoutUndefined({
      mm: readings.mean,
      readings: count,
      method: draft.lengthMethod,
      device: device === "" ? undefined : device,
    }),
  }
}

function readRefraction(text: string, draft: VisitDraft): Reading<EyeExamination["refraction"]> {
  if (text.trim() === "") return { value: undefined }
  const parsed = parsePrescription(text, "refraction")
  if ("problems" in parsed) return { fault: prescriptionFault(parsed.problems) }
  const { sphere, cylinder, axis } = parsed.refraction
  return {
    value: withoutUndefined({
      sphere,
      ...(cylinder === 0 ? {} : { cylinder, axis }),
      cycloplegic: draft.cycloplegic ?? undefined,
      method: draft.refractionMethod,
    }),
  }
}

/** The faults of a prescription without the path that leads to them: they stand at their field. */
export function prescriptionFault(problems: readonly Problem[]): string {
  return withMinusSigns(problems.map(prescriptionRule).join("; "))
}

const PARTS: Readonly<Record<string, string>> = {
  sphere: msg("sphere|of a prescription"),
  cylinder: msg("cylinder|of a prescription"),
  axis: msg("axis|of a prescription"),
}

function prescriptionRule({ path, value, allowed }: Problem): string {
  const name = PARTS[path.split(".")[1] ?? ""]
  if (name === undefined) return say('must be {allowed}, not "{value}"', { allowed, value: String(value) })
  const told = { part: say(name), allowed }
  return value === null
    ? say("{part} is missing: {allowed} is needed", told)
    : say('{part} must be {allowed}, not "{value}"', { ...told, value: String(value) })
}

/** Two radii in either order: the larger one is the flat one by its very meaning. */
function readCornea(text: string): Reading<EyeExamination["corneaRadius"]> {
  const words = text.split(/[\s;/]+/).filter((word) => word !== "")
  if (words.length === 0) return { value: undefined }
  const [first, second, ...more] = words.map(parseNumber)
  if (first == null || second == null || more.length > 0)
    return { fault: say("must be two radii in mm, flat and steep, such as 7.85 7.70") }
  return { value: { flat: Math.max(first, second), steep: Math.min(first, second) } }
}

function readNumber(text: string): Reading<number> {
  if (text.trim() === "") return { value: undefined }
  const value = parseNumber(text)
  return value === null
    ? { fault: say('must be one number, not "{text}"', { text: text.trim() }) }
    : { value }
}

/** A plain number is logMAR; a fraction such as 20/25 or 6/9 is Snellen. To the hundredth, half a letter. */
function readAcuity(text: string): Reading<number> {
  if (!text.includes("/")) return readNumber(text)
  const parsed = logMARFromSnellen(text)
  if ("problems" in parsed)
    return {
      fault: say(
        'acuity must be two numbers above 0 with a slash between, such as 6/12 or 20/40, not "{text}"',
        {
          text,
        },
      ),
    }
  return { value: Math.round(parsed.logMAR * 100) / 100 }
}

const hasAny = (part: object): boolean => Object.keys(part).length > 0

/** Absent is absent: a key that holds undefined would not survive being sent, and is not equal to a missing one. */
function withoutUndefined<Part extends object>(part: Part): Part {
  return Object.fromEntries(Object.entries(part).filter(([, value]) => value !== undefined)) as Part
}
