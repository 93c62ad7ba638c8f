import { STAGES, type Stage } from "./protocol.js"

/** How far the text behind a duty of the evidence was read (evidence/clinical/duties.json). */
export type EvidenceStatus = "verified" | "partly" | "unverified"

/** The places of an examination in the order in which a child passes them: what drops would disturb comes before them. */
export const ROOM = [
  "arrival",
  "distance-acuity",
  "near-acuity",
  "pupil",
  "accommodation",
  "length",
  "cornea",
  "pressure",
  "cycloplegia",
  "refraction",
  "fundus",
  "advice",
] as const
export type RoomPlace = (typeof ROOM)[number]

/** One duty of the evidence that makes something owed. */
export interface Owed {
  /** Id of the row, such as CD-028; also the switch of a practice. */
  readonly duty: string
  /** As the row says; held to the carried-in document by a test. */
  readonly status: EvidenceStatus
  readonly stages: readonly Stage[]
  /** Owed to these children or at these examinations alone. */
  readonly only?: "on-atropine" | "before-myopia" | "cycloplegia" | undefined
  /** Not owed again while it was answered within the last year. */
  readonly onceAYear?: true | undefined
}

export type QuestionKind =
  | "history"
  | "caution"
  | "red-flag"
  | "on-treatment"
  | "eye-finding"
  | "lifestyle"
  | "advice"

export interface Question {
  readonly id: string
  readonly kind: QuestionKind
  /** As it is put to the child's parent, or as the examiner reads it: in English, to be said. */
  readonly words: string
  /** In a list of what is missing; to be said. */
  readonly name: string
  readonly askedOf: "family" | "examiner"
  readonly place: RoomPlace
  /** What may be entered beside the answer. */
  readonly value?: QuestionValue | undefined
  /** The value is the answer: nothing is "no", more is "yes". */
  readonly byValue?: true | undefined
  /** What a note is for, where one is useful; to be said. */
  readonly note?: string | undefined
  /** Empty where no duty of the evidence asks for it: then it stands ready and is never owed. */
  readonly owed: readonly Owed[]
  /** Owed at every examination whatever is switched: the net for signs that need care the same day. */
  readonly always?: true | undefined
}

export interface QuestionValue {
  /** As read on the page, such as "hours a day"; to be said. */
  readonly unit: string
  readonly low: number
  readonly high: number
}

const BASELINE: readonly Stage[] = ["baseline"]
/** Visits at which the drops are in use. */
const TREATED: readonly Stage[] = ["safety-check", "review"]
/** Visits long enough for the growth figures. */
const GROWTH: readonly Stage[] = ["baseline", "review", "washout", "discharge"]

/** Lists of stages that rows are read into. */
export const at = { every: STAGES, baseline: BASELINE, treated: TREATED, growth: GROWTH }
