import type { Duty } from "../engine/assessment.js"
import type { CalendarDate, Eye, SymptomKind, Treatment, TreatmentKind } from "../engine/course.js"

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"]

/** @example dateWords("2026-11-05") // => "5 Nov 2026" */
export function dateWords(date: CalendarDate): string {
  const [year, month, day] = date.split("-")
  return `${Number(day)} ${MONTHS[Number(month) - 1]} ${year}`
}

/** Completed years and months. @example ageWords(10.5) // => "10 y 6 m" */
export function ageWords(ageYears: number): string {
  // A day of slack: a birthday in decimal years may fall a hair short of the whole number.
  const months = Math.floor(ageYears * 12 + 12 / 365.25)
  return `${Math.floor(months / 12)} y ${months % 12} m`
}

/** A number with a true minus sign and fixed decimals. */
export function fixed(value: number, digits: number): string {
  const text = value.toFixed(digits)
  return Number(text) === 0 ? text.replace("-", "") : text.replace("-", "−")
}

export const mmWords = (mm: number) => `${fixed(mm, 2)} mm`

export function dioptreWords(dioptres: number): string {
  return `${dioptres > 0 ? "+" : ""}${fixed(dioptres, 2)} D`
}

/** @example rangeWords({ low: 0.05, high: 0.23, digits: 2 }) // => "0.05 to 0.23" */
export function rangeWords({ low, high, digits }: { low: number; high: number; digits: number }): string {
  return `${fixed(low, digits)} to ${fixed(high, digits)}`
}

export const EYE_WORDS: Readonly<Record<Eye, string>> = { right: "right", left: "left" }

const TREATMENT_WORDS: Readonly<Record<TreatmentKind, string>> = {
  atropine: "atropine",
  "defocus-spectacles": "defocus spectacles",
  "lenslet-spectacles": "lenslet spectacles",
  "dual-focus-lens": "dual-focus lenses",
  "multifocal-lens": "multifocal lenses",
  orthokeratology: "orthokeratology",
  none: "no treatment",
}

/** @example treatmentWords({ kind: "atropine", concentrationPercent: 0.05 }) // => "atropine 0.05 %" */
export function treatmentWords({ kind, concentrationPercent }: Omit<Treatment, "from" | "to">): string {
  const strength = concentrationPercent === undefined ? "" : ` ${concentrationPercent} %`
  return TREATMENT_WORDS[kind] + strength
}

const SYMPTOM_WORDS: Readonly<Record<SymptomKind, string>> = {
  "light-sensitivity": "light sensitivity",
  "near-blur": "near blur",
  stinging: "stinging",
  redness: "redness",
  itching: "itching",
  headache: "headache",
  other: "other symptom",
}

export const symptomWords = (kind: SymptomKind) => SYMPTOM_WORDS[kind]

/** Ids of the engine ("6-month-review") as words. */
export const plainWords = (id: string) => id.replaceAll(/[-_]+/g, " ").trim()

/** What is owed, in one phrase. @example dutyWords(review) // => "review, stop" */
export function dutyWords({ kind, step }: Pick<Duty, "kind" | "step">): string {
  const [what, when] = [plainWords(kind), plainWords(step)]
  return what === when || what === "" ? when : `${what}, ${when}`
}

/** @example listed(["a", "b"]) // => "a, b" */
export const listed = (parts: readonly string[]) => parts.filter((part) => part !== "").join(", ")
