import type { TreatmentKind } from "../../engine/course.js"
import { risk } from "../../evidence/clinical.js"
import { citationOf, growthParameters } from "../../evidence/index.js"
import { sourceById } from "../../evidence/sources.js"
import {
  adverseEffects,
  metaAnalyses,
  opticalTreatments,
  rebound,
  trials,
} from "../../evidence/treatments.js"

/**
 * The rows that the answers to families' questions rest on, each found by its source. A row that is gone is a fault of ours
 * and stops the document: an answer never stands without what it rests on. Rows from memory are not in these tables.
 */

function required<Row>(row: Row | undefined, what: string): Row {
  if (row === undefined) throw new Error(`the evidence lost its row: ${what}`)
  return row
}

/** Growth of children with more time outdoors, against those without: trials pooled. */
export function outdoorTrials() {
  const row = required(
    opticalTreatments.arms.find(({ source }) => source === "mei2024"),
    "mei2024",
  )
  return {
    lessMm: -required(row.diff_AL, "mei2024 diff_AL"),
    children: required(row.n ?? undefined, "mei2024 n"),
    source: "treatments/mei2024",
  }
}

/**
 * Rows of progression/a_modifiers.csv (m13) and f_onset_predictors.csv (f20), taken over since these tables are not carried
 * into the program; a test holds them to the files.
 */
export const alreadyMyopic = { row: "m13", source: "progression/jonesjordan2021" } as const
export const nearWork = { row: "f20", oddsRatio: 1.31, source: "progression/dutheil2023" } as const

/** Growth in the year after a stop beside those who went on, at one strength. */
export function stopTrial(concentrationPercent: number | undefined) {
  const row = rebound.entries.find(
    (entry) =>
      entry.trial === "LAMP phase 3" &&
      concentrationPercent !== undefined &&
      entry.concentration_percent === concentrationPercent,
  )
  if (row?.dAL_off === undefined || row.continued_dAL === undefined) return null
  return {
    stoppedMm: row.dAL_off,
    wentOnMm: row.continued_dAL,
    treatedYears: (row.treated_months ?? 0) / 12,
    source: `treatments/${row.source}`,
  }
}

/** What a review of 14 studies found after each sort of optical treatment. */
type OpticalReturn = "strong" | "weak" | "varied"

export function opticalStop(
  kind: TreatmentKind,
): { readonly growth: OpticalReturn; readonly source: string } | null {
  required(
    rebound.entries.find(({ source }) => source === "jcm_optical_cessation2024"),
    "jcm_optical_cessation2024",
  )
  const growth = OPTICAL_RETURN[kind]
  return growth === undefined ? null : { growth, source: "treatments/jcm_optical_cessation2024" }
}

const OPTICAL_RETURN: Readonly<Partial<Record<TreatmentKind, OpticalReturn>>> = {
  orthokeratology: "strong",
  "multifocal-lens": "weak",
  "dual-focus-lens": "weak",
  "defocus-spectacles": "varied",
  "lenslet-spectacles": "varied",
}

/** Unwanted effects of one strength in one trial, per cent, beside drops without the drug where there were any. */
interface DropsBorne {
  readonly light: number
  readonly lightWithout: number | null
  readonly nearBlur: number | null
  readonly source: string
}

export function dropsBorne(concentrationPercent: number | undefined): DropsBorne | null {
  const rows = adverseEffects.events_percent
  const row = rows.find(
    ({ arm, photophobia }) => arm === `atropine ${concentrationPercent}%` && typeof photophobia === "number",
  )
  if (row?.photophobia === undefined) return null
  const control = rows.find(
    ({ trial, arm }) => trial === row.trial && (arm === "placebo" || arm === "vehicle"),
  )
  return {
    light: row.photophobia,
    lightWithout: control?.photophobia ?? null,
    nearBlur: row.blurred_near ?? null,
    source: `treatments/${row.source}`,
  }
}

/** Power to focus near that was lost after a year, D, with and without the drug. */
export function focusLost(concentrationPercent: number | undefined) {
  const of = (percent: number | undefined) =>
    adverseEffects.physiology.find(
      (row) => row.trial === "LAMP phase 1" && row.concentration_percent === percent,
    )
  const [row, control] = [of(concentrationPercent), of(0)]
  if (row?.accommodation_loss_D === undefined || control?.accommodation_loss_D === undefined) return null
  return {
    lostD: row.accommodation_loss_D,
    withoutD: control.accommodation_loss_D,
    source: `treatments/${row.source}`,
  }
}

/** The longest time that children on drops were followed in a trial that was read. */
export function longestTrialYears(): number {
  return Math.max(...trials.map(({ months }) => months ?? 0)) / 12
}

/** Infections of the cornea among 10,000 people with contact lenses in a year, from fewest to most. */
export function lensInfections() {
  const [fewest = 0, most = 0] = risk.risk_benefit.microbial_keratitis_per_10000_patient_years
  return { fewest, most, source: `clinical/${risk.risk_benefit.source_id}` }
}

export function dioptresPerMm() {
  const { value, source } = growthParameters.values.dioptresPerMm
  return { value, source }
}

interface ReviewedRow {
  readonly treatment?: string
  readonly dAL?: number
  readonly subjects?: number
}

/** Growth with glasses that are too weak against right ones. */
export function weakGlasses() {
  const rows: readonly ReviewedRow[] = metaAnalyses.find(({ id }) => id === "prousali2019")?.rows ?? []
  const { dAL, subjects } = required(
    rows.find(({ treatment }) => treatment === "undercorrection"),
    "prousali2019, undercorrection",
  )
  return {
    moreMm: required(dAL, "prousali2019 dAL"),
    children: required(subjects, "prousali2019 subjects"),
    source: "treatments/prousali2019",
  }
}

/**
 * A source as it is named beside an answer: who and when, else the journal and when, else its first word; never its title,
 * which is English and may hold the name of a product.
 *
 * @example
 * shortCitation("treatments/yam2022") // => "Yam 2022"
 */
export function shortCitation(id: string): string {
  const citation = (sourceById(id) ?? citationOf(id))?.citation
  if (citation === undefined) throw new Error(`no source is registered as ${id}`)
  const year = /\b(19|20)\d\d\b/.exec(citation)?.[0] ?? ""
  const author = /^([\p{Lu}][\p{L}'-]+(?: [\p{Lu}][\p{L}'-]+)*?) (?:[A-Z]{1,3}\b)/u.exec(citation)?.[1]
  const journal = /[.?] ([\p{Lu}][\p{L} ]+?) (?:19|20)\d\d\b/u.exec(citation)?.[1]
  return `${author ?? journal ?? citation.split(/\W/)[0]} ${year}`.trim()
}
