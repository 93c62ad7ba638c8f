/**
 * Shapes of the published evidence. Data only: the engine takes these as arguments and never loads them itself.
 */

/** How far a reference may be trusted on a screen: A fit to show, B with its limits, C approximate, D never as a centile. */
export type Grade = "A" | "B" | "C" | "D"

/** Where a table comes from and how its numbers reached this project. One per table, kept beside it. */
export interface Provenance {
  readonly id: string
  readonly title: string
  readonly authors: string
  readonly year: number | null
  readonly doi: string | null
  /** Table or figure of the source. */
  readonly where: string
  readonly obtained: string
  readonly population: string
  readonly n: string
  readonly ageRange: string
  readonly device: string
  /** UCUM codes of the table's columns, e.g. "mm; a". */
  readonly units: string
  readonly licence: string
  readonly transcribedBy: string
  readonly checkedBy: string | null
  readonly checkedOn: string | null
  readonly sha256: string
  readonly supersedes: string | null
  readonly notes: string
}

/** One entry of the registers of sources, named "folder/id" (two folders may have read different parts of one paper). */
export interface Source {
  readonly id: string
  readonly citation: string
  readonly doi: string | null
  readonly where: string
  /** "abstract", "full text table 2", "secondary ..." and so on, as written down when it was read. */
  readonly obtained: string
  readonly caveats: string
}

/** A published table exactly as carried in: header and cells as text. */
export interface Table {
  readonly file: string
  readonly provenance: Provenance
  readonly header: readonly string[]
  readonly rows: readonly Readonly<Record<string, string>>[]
}

/** A table as carried in, before it is read. */
export interface CarriedTable {
  readonly file: string
  readonly provenance: Provenance
  readonly text: string
}

/** One number of the growth model: never without its unit, its uncertainty and where it comes from. */
export interface Parameter {
  readonly value: number
  readonly unit: string
  /** Standard deviation of our knowledge of the value; null where none is given. */
  readonly sd: number | null
  /** Source ids in the evidence, or the one word "assumption". */
  readonly source: readonly string[]
  /** For assumptions: the range that was tried. */
  readonly rangeTried?: readonly [low: number, high: number]
  /** What the value means, and what changes over the range tried. */
  readonly note: string
}

/** What the trials report that one treatment withholds of natural growth. */
export interface TreatmentEffect {
  readonly id: string
  readonly kind:
    | "atropine"
    | "defocus-spectacles"
    | "lenslet-spectacles"
    | "dual-focus-lens"
    | "multifocal-lens"
    | "orthokeratology"
    | "atropine+orthokeratology"
  readonly concentrationPercent: number | null
  /** Mean share of natural growth withheld (0 nothing, 1 all), and SD of that mean in a new clinic. */
  readonly withheldFraction: number
  readonly withheldFractionSd: number
  readonly confidence: string
  readonly derivation: string
  /** True where the evidence says the effect may be nil. */
  readonly mayBeNil: boolean
  readonly source: readonly string[]
}

/** How much faster than untreated eyes grew after a treatment had stopped, where that was reported. */
export interface ReboundEffect {
  readonly id: string
  /** Drops of one strength, any drops, or any optical treatment. */
  readonly of: "atropine" | "optical"
  readonly concentrationPercent: number | null
  /** Growth above that of eyes never treated, and the SD of that figure. */
  readonly extraMm: number
  readonly extraMmSd: number
  /** Months after the stop in which it was gained. */
  readonly overMonths: number
  readonly derivation: string
  /** What other reports of the same found. */
  readonly against: string | null
  readonly source: readonly string[]
}

/** The dated parameter file of the growth model. */
export interface GrowthParameters {
  readonly version: string
  readonly dated: string
  /** Keys are fixed: the engine reads each by name. */
  readonly values: Readonly<Record<GrowthParameterName, Parameter>>
  readonly effects: readonly TreatmentEffect[]
}

export type GrowthParameterName =
  // natural growth of an untreated myope: r10 E^ea S exp(-k1 (age - 10)), knot at 13 years
  | "rateAt10MmPerYear"
  | "eastAsianFactor"
  | "girlFactor"
  | "boyFactor"
  | "declineBefore13PerYear"
  | "declineAfter13PerYear"
  | "kneeAgeYears"
  | "youngestAgeYears"
  | "oldestFittedAgeYears"
  | "oldestAgeYears"
  // season
  | "seasonAmplitude"
  | "seasonPeakDayOfYearNorth"
  | "seasonPeakDayOfYearSouth"
  | "tropicLatitudeDegrees"
  // between children and eyes
  | "logPaceSd"
  | "wobbleMmPerSqrtYear"
  | "wobbleCorrelationBetweenEyes"
  | "eyeDifferenceSd"
  // length noise
  | "opticalSessionSdMm"
  | "opticalReadingSdMm"
  | "opticalUsualReadings"
  | "ultrasoundSessionSdMm"
  | "deviceChangeSdMm"
  // refraction as a witness
  | "dioptresPerMm"
  | "cycloplegicAutorefractionSdD"
  | "dryAutorefractionSdD"
  | "subjectiveSdD"
  | "retinoscopySdD"
  | "dryAutorefractionBiasD"
  | "methodChangeSdD"
  | "refractionSharedShare"
  // treatments
  | "withheldSpreadSd"
  | "unlistedTreatmentSd"
  | "settingFactor"
  // who is myopic: spherical equivalent at or past this, D
  | "myopiaCutOffD"

/** The emmetropic curve AL(t) = asymptote - span exp(-rate t), t in years. */
export interface EmmetropicCurve {
  readonly id: string
  readonly grade: Grade
  readonly asymptoteMm: number
  readonly spanMm: number
  readonly ratePerYear: number
  readonly youngestAgeYears: number
  readonly oldestAgeYears: number
  readonly provenance: Provenance
}

/** value(t) = intercept + girl + fast exp(-fastRatePerYear t) + linear t + quadratic t^2, t = age - 0.25 years. */
export interface InfancyEquation {
  readonly intercept: number
  /** Added for a girl. */
  readonly girl: number
  readonly fast: number
  readonly fastRatePerYear: number
  readonly linear: number
  readonly quadratic: number
}

/** Mean length (mm) and refraction (dioptres) from 3 months to 6.5 years. Means only: no spread, so never a centile. */
export interface InfancyMean {
  readonly id: string
  readonly grade: Grade
  readonly axialLengthMm: InfancyEquation
  readonly sphericalEquivalentD: InfancyEquation
  readonly youngestAgeYears: number
  readonly oldestAgeYears: number
  readonly provenance: Provenance
}

export type ReferenceSex = "female" | "male" | "all"

interface ReferenceBase {
  readonly id: string
  readonly measure: "axial-length" | "spherical-equivalent"
  readonly grade: Grade
  readonly population: string
  readonly n: string
  readonly instrument: string
  readonly youngestAgeYears: number
  readonly oldestAgeYears: number
  readonly note: string
  readonly provenance: Provenance
}

/** L, M, S by sex and age. */
export interface LmsReference extends ReferenceBase {
  readonly shape: "lms"
  readonly rows: readonly {
    readonly sex: ReferenceSex
    readonly ageYears: number
    readonly l: number
    readonly m: number
    readonly s: number
  }[]
}

/** Mean and SD under a normal shape. */
export interface NormalReference extends ReferenceBase {
  readonly shape: "normal"
  readonly rows: readonly {
    readonly sex: ReferenceSex
    readonly ageYears: number
    readonly mean: number
    readonly sd: number
  }[]
}

/** Printed centiles; a blank cell of the source is absent from `values`. */
export interface CentileReference extends ReferenceBase {
  readonly shape: "centiles"
  /** Whole-year cells that must not be interpolated between ages (too few published rows). */
  readonly agesAreCells: boolean
  readonly rows: readonly {
    readonly sex: ReferenceSex
    readonly ageYears: number
    /** Keyed by centile, e.g. 2.5 or 50. */
    readonly values: Readonly<Record<string, number>>
  }[]
}

/** p3, p50, p97 of a refraction: split normal. */
export interface SplitNormalReference extends ReferenceBase {
  readonly shape: "split-normal"
  readonly rows: readonly {
    readonly sex: ReferenceSex
    readonly ageYears: number
    readonly p3: number
    readonly p50: number
    readonly p97: number
  }[]
}

export type Reference = LmsReference | NormalReference | CentileReference | SplitNormalReference

/** Everything an assessment needs, chosen and loaded by the caller. */
export interface Evidence {
  readonly growth: GrowthParameters
  readonly emmetropic: EmmetropicCurve
  readonly references: readonly Reference[]
  /** Without it nothing is said of rebound. */
  readonly rebound?: readonly ReboundEffect[]
}

/** A refraction below which a study found that children become myopic; between `lowD` and `highD` where it tried several. */
export interface OnsetCutOff {
  readonly row: string
  readonly quantity: "sphere" | "spherical equivalent"
  /** Completed years, both included. */
  readonly youngestAge: number
  readonly oldestAge: number
  /** Where the study speaks of a school grade instead of an age. */
  readonly grade?: string
  readonly lowD: number
  readonly highD: number
  /** Whether a refraction exactly at the cut-off counts as at risk. */
  readonly isAtCutOffAtRisk: boolean
  readonly outcome: string
  readonly sensitivity?: string
  readonly specificity?: string
  readonly population: string
  readonly source: string
  readonly cited: string
  readonly obtained: string
  /** The study's own text was not read. */
  readonly isSecondHand: boolean
}

/** Share of children in a band of cycloplegic refraction (from inclusive, below exclusive) who became myopic. */
export interface OnsetShare {
  readonly fromD: number | null
  readonly belowD: number | null
  readonly n: number
  readonly became: number
  readonly percent: number
  readonly low95: number
  readonly high95: number
}

export interface ParentOdds {
  readonly row: string
  readonly myopicParents: 1 | 2
  /** Against no myopic parent. */
  readonly oddsRatio: number
  readonly low95: number
  readonly high95: number
  readonly source: string
  readonly cited: string
  readonly obtained: string
}

/** A piece of advice by a duty, with what was found about it. */
export interface OnsetAdvice {
  readonly duty: string
  readonly what: string
  readonly findings: readonly {
    readonly words: string
    /** What kind of study says so: the grade of it. */
    readonly kind: string
    readonly people: string
    readonly source: string
    readonly cited: string
    readonly obtained: string
  }[]
}

/** What was read about children who are not myopic yet. */
export interface BeforeMyopiaEvidence {
  readonly cutOffs: readonly OnsetCutOff[]
  readonly shares: {
    /** Completed years. */
    readonly age: number
    readonly outcome: string
    readonly population: string
    readonly source: string
    readonly cited: string
    readonly obtained: string
    readonly bands: readonly OnsetShare[]
  }
  readonly parents: readonly ParentOdds[]
  readonly advice: readonly OnsetAdvice[]
  /** What one would look for here and does not find, and why. */
  readonly keptOff: readonly { readonly what: string; readonly why: string }[]
  /** How emmetropic eyes of an age differ among themselves, mm; sexes mixed. */
  readonly betweenEyesSd: readonly { readonly ageYears: number; readonly mm: number }[]
}
