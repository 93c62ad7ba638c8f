import type {
  AccommodationMethod,
  CalendarDate,
  Course,
  Eye,
  EyeExamination,
  LengthMethod,
  RefractionMethod,
  Symptom,
  SymptomKind,
  Visit,
} from "../../engine/course.js"
import type { Stage } from "../../engine/protocol/protocol.js"
import { withDecimalSign } from "../../engine/say.js"
import { type AnswerDrafts, answerDraftsOf, isAnswered } from "./answer-drafts.js"

/** One eye of a visit as typed: text, so that nothing is lost while it is not yet right. */
export interface EyeDraft {
  readonly length: string
  readonly refraction: string
  readonly pupil: string
  readonly accommodation: string
  readonly acuityFar: string
  readonly acuityNear: string
  /** Both radii, flat and steep, in either order. */
  readonly cornea: string
  readonly pupilDim: string
  readonly pressure: string
}

export type EyeField = keyof EyeDraft

/** How things were measured: remembered from one visit to the next on this computer. */
export interface Instruments {
  readonly lengthMethod: LengthMethod
  readonly device: string
  readonly refractionMethod: RefractionMethod
  readonly accommodationMethod: AccommodationMethod
}

/** Which examination the visit is: the one found to be owed, a stage chosen by hand, or one that nobody planned. */
export type StageChoice = "owed" | "extra" | Stage

export interface VisitDraft extends Instruments {
  readonly date: CalendarDate
  readonly stage: StageChoice
  readonly cycloplegic: boolean | null
  readonly right: EyeDraft
  readonly left: EyeDraft
  /** A kind that was not asked about is absent; "none" is grade 0. */
  readonly symptoms: Readonly<Partial<Record<SymptomKind, Symptom["grade"]>>>
  readonly answers: AnswerDrafts
}

export const EMPTY_EYE: EyeDraft = {
  length: "",
  refraction: "",
  pupil: "",
  accommodation: "",
  acuityFar: "",
  acuityNear: "",
  cornea: "",
  pupilDim: "",
  pressure: "",
}

export const USUAL_INSTRUMENTS: Instruments = {
  lengthMethod: "optical-biometry",
  device: "",
  refractionMethod: "autorefraction",
  accommodationMethod: "push-up",
}

/** How a child was measured last. */
export function instrumentsOf(course: Pick<Course, "visits">): Instruments {
  const last = course.visits.findLast((visit) => visit.right?.axialLength || visit.left?.axialLength)
  const { lengthMethod, device, refractionMethod, accommodationMethod } = last
    ? draftOf(last, USUAL_INSTRUMENTS)
    : USUAL_INSTRUMENTS
  return { lengthMethod, device, refractionMethod, accommodationMethod }
}

export function emptyDraft(date: CalendarDate, instruments: Instruments): VisitDraft {
  return {
    ...instruments,
    date,
    stage: "owed",
    cycloplegic: null,
    right: EMPTY_EYE,
    left: EMPTY_EYE,
    symptoms: {},
    answers: {},
  }
}

/** Nothing typed yet: then there is nothing to keep and nothing to say. */
export function isEmpty(draft: VisitDraft): boolean {
  const typed = [draft.right, draft.left].some((eye) => Object.values(eye).some((text) => text.trim() !== ""))
  const answered = Object.values(draft.answers).some(isAnswered)
  return !typed && !answered && Object.keys(draft.symptoms).length === 0
}

/** The draft that shows a stored visit, for correcting it. */
export function draftOf(visit: Visit, instruments: Instruments): VisitDraft {
  const eyes = [visit.right, visit.left].filter((eye) => eye !== undefined)
  const first = <Value>(pick: (eye: EyeExamination) => Value | undefined): Value | undefined =>
    eyes.map(pick).find((value) => value !== undefined)
  return {
    date: visit.date,
    stage: "owed",
    lengthMethod: first((eye) => eye.axialLength?.method) ?? instruments.lengthMethod,
    device: first((eye) => eye.axialLength?.device) ?? "",
    refractionMethod: first((eye) => eye.refraction?.method) ?? instruments.refractionMethod,
    accommodationMethod: first((eye) => eye.accommodation?.method) ?? instruments.accommodationMethod,
    cycloplegic: first((eye) => eye.refraction?.cycloplegic) ?? null,
    right: eyeDraftOf(visit.right),
    left: eyeDraftOf(visit.left),
    symptoms: Object.fromEntries((visit.symptoms ?? []).map(({ kind, grade }) => [kind, grade])),
    answers: answerDraftsOf(visit),
  }
}

function eyeDraftOf(eye: EyeExamination | undefined): EyeDraft {
  return {
    length: text(eye?.axialLength?.mm),
    refraction: eye?.refraction ? refractionText(eye.refraction) : "",
    pupil: text(eye?.pupil?.photopic),
    accommodation: text(eye?.accommodation?.dioptres),
    acuityFar: text(eye?.acuity?.distanceLogMAR),
    acuityNear: text(eye?.acuity?.nearLogMAR),
    cornea: eye?.corneaRadius ? `${text(eye.corneaRadius.flat)} ${text(eye.corneaRadius.steep)}` : "",
    pupilDim: text(eye?.pupil?.mesopic),
    pressure: text(eye?.intraocularPressure?.mmHg),
  }
}

const text = (value: number | undefined): string =>
  value === undefined ? "" : withDecimalSign(String(value))

export function withEyeField(
  draft: VisitDraft,
  { eye, field, value }: { eye: Eye; field: EyeField; value: string },
): VisitDraft {
  return { ...draft, [eye]: { ...draft[eye], [field]: value } }
}

// Printed to the hundredth and not to the quarter dioptre: a correction must not round what it does not correct.
function refractionText({ sphere, cylinder, axis }: NonNullable<EyeExamination["refraction"]>): string {
  const lens = cylinder === undefined || cylinder === 0 ? "" : ` ${power(cylinder)} x ${axis ?? ""}`
  return `${power(sphere)}${lens}`
}

const power = (value: number): string =>
  `${value < 0 ? "-" : "+"}${withDecimalSign(Math.abs(value).toFixed(2))}`
