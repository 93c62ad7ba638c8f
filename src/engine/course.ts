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

export interface AxialLength {
  readonly mm: number
  readonly readings?: number | undefined
  readonly method?: LengthMethod | undefined
  readonly device?: string | undefined
}

export interface Refraction {
  readonly sphere: number
  readonly cylinder?: number | undefined
  readonly axis?: number | undefined
  readonly cycloplegic?: boolean | undefined
  readonly method?: RefractionMethod | undefined
}

export interface EyeExamination {
  readonly axialLength?: AxialLength | undefined
  readonly refraction?: Refraction | undefined
  /** Radii of the cornea, mm. */
  readonly corneaRadius?: { readonly flat: number; readonly steep: number } | undefined
  /** Diameters, mm. */
  readonly pupil?:
    | { readonly photopic?: number | undefined; readonly mesopic?: number | undefined }
    | undefined
  readonly accommodation?:
    | { readonly dioptres: number; readonly method?: AccommodationMethod | undefined }
    | undefined
  readonly acuity?:
    | { readonly distanceLogMAR?: number | undefined; readonly nearLogMAR?: number | undefined }
    | undefined
}

export interface Symptom {
  readonly kind: SymptomKind
  /** 0 none to 3 severe. */
  readonly grade: 0 | 1 | 2 | 3
}

export interface Visit {
  readonly date: CalendarDate
  readonly right?: EyeExamination | undefined
  readonly left?: EyeExamination | undefined
  readonly symptoms?: readonly Symptom[] | undefined
  /** Where the figures come from when not measured here, e.g. "old glasses" or "referring practice". */
  readonly from?: string | undefined
}

export interface Treatment {
  readonly from: CalendarDate
  /** First day no longer treated; null or absent while it goes on. */
  readonly to?: CalendarDate | null | undefined
  readonly kind: TreatmentKind
  readonly concentrationPercent?: number | undefined
}

export interface Supply {
  readonly dispensed?: CalendarDate | undefined
  readonly opened?: CalendarDate | undefined
  readonly concentrationPercent?: number | undefined
  readonly volumeMl?: number | undefined
  /** Last day of use once opened. */
  readonly beyondUse?: CalendarDate | undefined
  readonly lot?: string | undefined
}

export interface Consent {
  readonly date: CalendarDate
  readonly covers: {
    readonly kind: TreatmentKind
    readonly concentrationPercent?: number | undefined
  }
}

export interface Child {
  readonly id?: string | undefined
  readonly born: CalendarDate
  readonly sex: Sex
  readonly ancestry?: Ancestry | undefined
  readonly myopicParents?: 0 | 1 | 2 | undefined
}

export interface Course {
  readonly lengthwise: 1
  readonly child: Child
  readonly practice?: { readonly latitude?: number | undefined } | undefined
  readonly visits: readonly Visit[]
  readonly treatments?: readonly Treatment[] | undefined
  readonly supplies?: readonly Supply[] | undefined
  readonly consents?: readonly Consent[] | undefined
}
