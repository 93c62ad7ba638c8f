/**
 * One child's course as the engine reads it: the course file (design, section 7) after validation.
 * Dates are plain ISO days. Lengths in mm, powers in dioptres, pupils in mm, acuity in logMAR.
 * What is optional may be missing; what is missing is said in the checks, never guessed in silence.
 */
export type CalendarDate = string

export const SEXES = ["female", "male"] as const
export type Sex = (typeof SEXES)[number]
export const ANCESTRIES = ["east-asian", "european", "south-asian", "african", "other", "unstated"] as const
export type Ancestry = (typeof ANCESTRIES)[number]
export type Eye = "right" | "left"
export const EYES: readonly Eye[] = ["right", "left"]

export const LENGTH_METHODS = ["optical-biometry", "ultrasound"] as const
export type LengthMethod = (typeof LENGTH_METHODS)[number]
export const REFRACTION_METHODS = ["autorefraction", "subjective", "retinoscopy"] as const
export type RefractionMethod = (typeof REFRACTION_METHODS)[number]
export const ACCOMMODATION_METHODS = ["push-up", "retinoscopy"] as const
export type AccommodationMethod = (typeof ACCOMMODATION_METHODS)[number]
export const SYMPTOM_KINDS = [
  "light-sensitivity",
  "near-blur",
  "stinging",
  "redness",
  "itching",
  "headache",
  "other",
] as const
export type SymptomKind = (typeof SYMPTOM_KINDS)[number]
export const TREATMENT_KINDS = [
  "atropine",
  "defocus-spectacles",
  "lenslet-spectacles",
  "dual-focus-lens",
  "multifocal-lens",
  "orthokeratology",
  "none",
] as const
export type TreatmentKind = (typeof TREATMENT_KINDS)[number]

export const LENS_STATUSES = ["phakic", "aphakic", "pseudophakic", "phakic-lens-implant"] as const
export type LensStatus = (typeof LENS_STATUSES)[number]
export const EYE_DROPS = ["atropine", "cyclopentolate", "tropicamide", "phenylephrine", "other"] as const
export type EyeDrop = (typeof EYE_DROPS)[number]
export const ACUITY_CORRECTIONS = ["uncorrected", "worn", "best"] as const
export type AcuityCorrection = (typeof ACUITY_CORRECTIONS)[number]
export const SOURCE_KINDS = ["dicom", "fhir", "table", "course-file"] as const
export type SourceKind = (typeof SOURCE_KINDS)[number]

/** One reading of a length, before any was chosen or averaged. */
export interface LengthReading {
  readonly mm: number
  readonly signalToNoise?: number | undefined
  /** Whether somebody moved the marks by hand. */
  readonly byHand?: boolean | undefined
}

export interface AxialLength {
  readonly mm: number
  readonly readings?: number | undefined
  readonly method?: LengthMethod | undefined
  readonly device?: string | undefined
  /** Quality of the chosen length, as the instrument states it. */
  readonly signalToNoise?: number | undefined
  readonly sdMm?: number | undefined
  readonly each?: readonly LengthReading[] | undefined
}

export interface Refraction {
  readonly sphere: number
  readonly cylinder?: number | undefined
  readonly axis?: number | undefined
  readonly cycloplegic?: boolean | undefined
  readonly method?: RefractionMethod | undefined
  readonly vertexDistanceMm?: number | undefined
  readonly device?: string | undefined
}

/** Radii of the cornea, mm; meridians in degrees; powers in dioptres as the instrument gave them. */
export interface CorneaRadius {
  readonly flat: number
  readonly steep: number
  readonly flatAxis?: number | undefined
  readonly steepAxis?: number | undefined
  readonly flatD?: number | undefined
  readonly steepD?: number | undefined
  readonly device?: string | undefined
}

/** Glasses as they were read off while worn: no refraction of the eye on that day. */
export interface SpectaclesWorn {
  readonly sphere: number
  readonly cylinder?: number | undefined
  readonly axis?: number | undefined
  readonly addD?: number | undefined
  /** Horizontal and vertical prism, as written. */
  readonly prism?: string | undefined
}

/** Whether the pupil was widened when the eye was measured, and by which drops. */
export interface Dilation {
  readonly dilated: boolean
  readonly pupilMm?: number | undefined
  readonly drops?:
    | readonly { readonly drop: EyeDrop; readonly concentrationPercent?: number | undefined }[]
    | undefined
}

export interface EyeExamination {
  readonly axialLength?: AxialLength | undefined
  readonly refraction?: Refraction | undefined
  /** Further refractions of the same day by other methods. */
  readonly otherRefractions?: readonly Refraction[] | undefined
  readonly spectaclesWorn?: SpectaclesWorn | undefined
  readonly corneaRadius?: CorneaRadius | undefined
  readonly lensStatus?: LensStatus | undefined
  readonly dilation?: Dilation | undefined
  /** Diameters, mm. */
  readonly pupil?:
    | { readonly photopic?: number | undefined; readonly mesopic?: number | undefined }
    | undefined
  readonly accommodation?:
    | { readonly dioptres: number; readonly method?: AccommodationMethod | undefined }
    | undefined
  readonly acuity?:
    | {
        readonly distanceLogMAR?: number | undefined
        /** What the child looked through; the best correction when absent. */
        readonly distanceCorrection?: AcuityCorrection | undefined
        readonly nearLogMAR?: number | undefined
      }
    | undefined
  readonly intraocularPressure?: { readonly mmHg: number } | undefined
}

export interface Symptom {
  readonly kind: SymptomKind
  /** 0 none to 3 severe. */
  readonly grade: 0 | 1 | 2 | 3
}

export const ANSWERS = ["yes", "no", "not-done"] as const

/** What was asked about or looked at and is no figure of an eye. Questions are listed in `protocol/questions.ts`. */
export interface Answer {
  readonly question: string
  /** For a finding "yes" means present; "not-done" is said when it was owed and left out on purpose. */
  readonly answer: (typeof ANSWERS)[number]
  /** In the question's own unit, such as hours a day. */
  readonly value?: number | undefined
  readonly note?: string | undefined
}

export interface Visit {
  readonly date: CalendarDate
  readonly right?: EyeExamination | undefined
  readonly left?: EyeExamination | undefined
  readonly symptoms?: readonly Symptom[] | undefined
  readonly answers?: readonly Answer[] | undefined
  /** Where the figures come from when not measured here, e.g. "old glasses" or "referring practice". */
  readonly from?: string | undefined
  /** Files of instruments and of other programs that figures of this visit were taken from. */
  readonly sources?: readonly VisitSource[] | undefined
}

export interface VisitSource {
  readonly kind: SourceKind
  /** What tells the file or object from all others: a UID, an address, a SHA-256. */
  readonly id: string
  readonly device?: string | undefined
}

export interface Treatment {
  readonly from: CalendarDate
  /** First day no longer treated; null or absent while it goes on. */
  readonly to?: CalendarDate | null | undefined
  readonly kind: TreatmentKind
  readonly concentrationPercent?: number | undefined
  /** Set where only one eye is treated; both are when absent. */
  readonly eye?: Eye | undefined
  /** For a taper: nights of the week with a drop; every night when absent. */
  readonly nightsPerWeek?: number | undefined
}

export interface Supply {
  readonly dispensed?: CalendarDate | undefined
  readonly opened?: CalendarDate | undefined
  readonly concentrationPercent?: number | undefined
  readonly volumeMl?: number | undefined
  /** Last day of use once opened. */
  readonly beyondUse?: CalendarDate | undefined
  readonly lot?: string | undefined
  readonly pharmacy?: string | undefined
  readonly preserved?: boolean | undefined
}

/** Nights without a drop that the family told of, over a span of days, both ends included. */
export interface MissedNights {
  readonly from: CalendarDate
  readonly to: CalendarDate
  readonly nights: number
}

/** A treatment by kind and strength, whenever it is given. */
export interface TreatmentChoice {
  readonly kind: TreatmentKind
  readonly concentrationPercent?: number | undefined
}

export const CONSENT_FORMS = ["screen", "paper"] as const
export const ASSENTS = ["given", "declined", "not-asked"] as const

export interface Consent {
  readonly date: CalendarDate
  readonly covers: TreatmentChoice
  /** Who gave it; a course file needs no name. */
  readonly by?: { readonly name?: string | undefined; readonly relation?: string | undefined } | undefined
  readonly form?: (typeof CONSENT_FORMS)[number] | undefined
  /** The practice's wording that was read: its id, its version, its language (BCP 47) and the SHA-256 (hex) of the text. */
  readonly wording?:
    | {
        readonly id: string
        readonly version: string
        readonly language?: string | undefined
        readonly sha256?: string | undefined
      }
    | undefined
  readonly assent?: (typeof ASSENTS)[number] | undefined
  /** First day it no longer holds, when it was withdrawn. */
  readonly until?: CalendarDate | undefined
}

export const DECISION_KINDS = [
  "start",
  "continue",
  "change-strength",
  "add",
  "switch",
  "stop",
  "taper",
  "restart",
  "refer",
  "discharge",
  "decline",
] as const
export type DecisionKind = (typeof DECISION_KINDS)[number]

/** What was decided, why, out of what, and on which figures. */
export interface Decision {
  readonly date: CalendarDate
  readonly kind: DecisionKind
  readonly reason: string
  readonly treatment?: TreatmentChoice | undefined
  /** The options that were put side by side, in words. */
  readonly offered?: readonly string[] | undefined
  /** What the screen showed at that moment, as it was worded. */
  readonly figures?: readonly { readonly label: string; readonly value: string }[] | undefined
}

export const SERIOUSNESS = ["mild", "moderate", "serious"] as const
export const RELATEDNESS = ["unlikely", "possible", "probable"] as const

/** Something about a child's safety that somebody has to look after until it is closed. */
export interface SafetyConcern {
  readonly opened: CalendarDate
  readonly kind: string
  readonly what: string
  /** Who looks after it. */
  readonly owner?: string | undefined
  readonly seriousness?: (typeof SERIOUSNESS)[number] | undefined
  readonly relatedness?: (typeof RELATEDNESS)[number] | undefined
  /** Whether it is kept as an unwanted effect of a treatment. */
  readonly adverseEvent?: boolean | undefined
  readonly closed?: CalendarDate | undefined
  readonly outcome?: string | undefined
}

/** Bottles asked of a compounding pharmacy. */
export interface BottleOrder {
  readonly date: CalendarDate
  readonly concentrationPercent: number
  readonly bottles: number
  readonly volumeMl: number
  /** Stock the strength is to be made from, % w/v. */
  readonly stockPercent?: number | undefined
  readonly pharmacy?: string | undefined
  readonly preserved?: boolean | undefined
  /** The day the pharmacy said it would make it. */
  readonly confirmed?: CalendarDate | undefined
  readonly received?: CalendarDate | undefined
  readonly cancelled?: CalendarDate | undefined
  /** Why it was ordered although no consent in force covers it. */
  readonly override?: string | undefined
}

/** The family was told what was found, up to and with that day's visit. */
export interface Explanation {
  readonly date: CalendarDate
  readonly to?: string | undefined
}

export interface Payment {
  readonly date: CalendarDate
  /** In the smallest unit of the currency. */
  readonly cents: number
  /** ISO 4217. */
  readonly currency: string
  readonly what?: string | undefined
}

export interface Child {
  readonly id?: string | undefined
  readonly born: CalendarDate
  readonly sex: Sex
  readonly ancestry?: Ancestry | undefined
  readonly myopicParents?: 0 | 1 | 2 | undefined
  /** Id of the protocol the child follows; the one that fits the treatment when absent. */
  readonly protocol?: string | undefined
}

export interface Course {
  readonly lengthwise: 1
  readonly child: Child
  readonly practice?: { readonly latitude?: number | undefined } | undefined
  readonly visits: readonly Visit[]
  readonly treatments?: readonly Treatment[] | undefined
  readonly supplies?: readonly Supply[] | undefined
  readonly consents?: readonly Consent[] | undefined
  readonly missedNights?: readonly MissedNights[] | undefined
  readonly decisions?: readonly Decision[] | undefined
  readonly concerns?: readonly SafetyConcern[] | undefined
  readonly orders?: readonly BottleOrder[] | undefined
  readonly explanations?: readonly Explanation[] | undefined
  readonly payments?: readonly Payment[] | undefined
}
