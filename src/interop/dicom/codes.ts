import type { EyeDrop, LensStatus } from "../../engine/course.js"
import { type DataSet, firstItem, textOf } from "./data-set.js"
import type { Attribute } from "./tags.js"

/** A coded term: what it is, in which scheme. */
export interface Code {
  readonly value: string
  readonly scheme: string
  readonly meaning: string | undefined
}

export function codeOf(set: DataSet, attribute: Attribute): Code | undefined {
  const item = firstItem(set, attribute)
  return item && codeIn(item)
}

export function codeIn(item: DataSet): Code | undefined {
  const value = textOf(item, "codeValue")
  const scheme = textOf(item, "codingScheme")
  const meaning = textOf(item, "codeMeaning")
  return value === undefined || scheme === undefined ? undefined : { value, scheme, meaning }
}

/** What the other program calls it, for a person. */
export const nameOf = ({ meaning, scheme, value }: Code): string => meaning ?? `${scheme} ${value}`

/**
 * Terms by scheme and value. Older instruments write the same terms in the letters of SRT (also called SNM3 and 99SDM);
 * both are in the tables of pydicom 2.3.1, from where they were taken.
 */
type Terms<Meaning> = Readonly<Record<string, Meaning>>

function termOf<Meaning>(code: Code | undefined, terms: Terms<Meaning>): Meaning | undefined {
  if (!code) return undefined
  const scheme = code.scheme === "SNM3" || code.scheme === "99SDM" ? "SRT" : code.scheme
  const key = `${scheme} ${code.value}`
  return Object.hasOwn(terms, key) ? terms[key] : undefined
}

/** CID 4231 */
const LENS: Terms<LensStatus> = {
  "SCT 309649001": "phakic",
  "SRT R-2073F": "phakic",
  "SCT 24010005": "aphakic",
  "SRT DA-73410": "aphakic",
  "SCT 95217000": "pseudophakic",
  "SRT DA-73460": "pseudophakic",
  "SCT 397559001": "phakic-lens-implant",
  "SRT A-040F7": "phakic-lens-implant",
}
export const lensStatusOf = (code: Code | undefined) => termOf(code, LENS)

/** CID 4232: a vitreous that light runs through as in any eye. Everything else changes what a length means. */
const PLAIN_VITREOUS: Terms<true> = { "SCT 372242005": true, "SRT T-AA092": true }
export const isPlainVitreous = (code: Code) => termOf(code, PLAIN_VITREOUS) === true

/** CID 4208 */
const DROPS: Terms<EyeDrop> = {
  "SCT 349947003": "atropine",
  "SRT C-677B9": "atropine",
  "SCT 8348002": "cyclopentolate",
  "SRT C-97520": "cyclopentolate",
  "SCT 9190005": "tropicamide",
  "SRT C-97580": "tropicamide",
  "SCT 386693003": "phenylephrine",
  "SRT C-68165": "phenylephrine",
}
export const dropOf = (code: Code) => termOf(code, DROPS) ?? "other"

/** CID 4244: what one unit is in percent (weight in volume, so 10 mg/ml is 1 %). */
const PERCENT_PER_UNIT: Terms<number> = { "UCUM %": 1, "UCUM mg/ml": 0.1, "UCUM mg/mL": 0.1 }
export const percentPerUnit = (code: Code | undefined) => termOf(code, PERCENT_PER_UNIT)

/** CID 4216: what the child looked through. The rest of that list (pinhole, glare and others) is no acuity of ours. */
export type AcuityType = "uncorrected" | "worn" | "best"
const ACUITY: Terms<AcuityType> = {
  "SCT 420050001": "uncorrected",
  "SRT F-04D53": "uncorrected",
  "SCT 419775003": "best",
  "SRT F-04D54": "best",
  "DCM 111686": "worn",
}
export const acuityTypeOf = (code: Code | undefined) => termOf(code, ACUITY)

/** CID 4243 */
const METRICS: Terms<"signalToNoise" | "sdMm"> = { "DCM 111787": "signalToNoise", "DCM 111786": "sdMm" }
export const metricOf = (code: Code | undefined) => termOf(code, METRICS)

/** CID 4241 */
const SELECTIONS: Terms<"mean" | "chosen"> = { "DCM 121412": "mean", "DCM 121410": "chosen" }
export const selectionOf = (code: Code | undefined) => termOf(code, SELECTIONS)

/** CID 4230 */
const ULTRASOUND: Terms<"contact" | "immersion"> = { "DCM 111750": "contact", "DCM 111751": "immersion" }
export const ultrasoundMethodOf = (code: Code | undefined) => termOf(code, ULTRASOUND)

/** CID 4240: a figure that this instrument measured itself. */
const OWN: Terms<true> = { "DCM 111780": true }
export const isOwnMeasurement = (code: Code) => termOf(code, OWN) === true
