import { msg, say, withDecimalSign } from "../../engine/say.js"

/**
 * What a course file may hold. The limits are wide on purpose: they catch slips of the pen (a lost decimal point, an
 * axis of 190) and never judge a child. Common practice, no source; nothing is calculated from them.
 */
export interface Limit {
  readonly low: number
  readonly high: number
  /** True when `low` itself is not allowed. */
  readonly aboveLow?: boolean
  readonly whole?: boolean
  /** UCUM code, as published in the JSON Schema. */
  readonly ucum: string
  /** The unit as a person reads it; empty for a count or a logMAR. */
  readonly unit: string
}

export const limits = {
  axialLengthMm: { low: 15, high: 40, ucum: "mm", unit: "mm" },
  signalToNoise: { low: 0, high: 100_000, ucum: "1", unit: "" },
  sdMm: { low: 0, high: 5, ucum: "mm", unit: "mm" },
  readings: { low: 1, high: 50, whole: true, ucum: "1", unit: "" },
  sphereD: { low: -30, high: 30, ucum: "[diop]", unit: "D" },
  cylinderD: { low: -10, high: 10, ucum: "[diop]", unit: "D" },
  axisDegrees: { low: 0, high: 180, ucum: "deg", unit: msg("degrees") },
  addD: { low: -1, high: 10, ucum: "[diop]", unit: "D" },
  vertexDistanceMm: { low: 0, high: 30, ucum: "mm", unit: "mm" },
  corneaPowerD: { low: 25, high: 70, ucum: "[diop]", unit: "D" },
  dilatedPupilMm: { low: 1, high: 12, ucum: "mm", unit: "mm" },
  dropPercent: { low: 0, high: 10, aboveLow: true, ucum: "%", unit: "%" },
  corneaRadiusMm: { low: 5.5, high: 10, ucum: "mm", unit: "mm" },
  pupilMm: { low: 1, high: 10, ucum: "mm", unit: "mm" },
  accommodationD: { low: 0, high: 25, ucum: "[diop]", unit: "D" },
  acuityLogMAR: { low: -0.5, high: 3, ucum: "1", unit: "logMAR" },
  concentrationPercent: { low: 0, high: 1.5, aboveLow: true, ucum: "%", unit: msg("% w/v") },
  volumeMl: { low: 0, high: 1000, aboveLow: true, ucum: "mL", unit: "mL" },
  intraocularPressureMmHg: { low: 1, high: 80, ucum: "mm[Hg]", unit: "mmHg" },
  answerValue: { low: 0, high: 10_000, ucum: "1", unit: "" },
  nightsPerWeek: { low: 1, high: 7, whole: true, ucum: "1", unit: "" },
  nights: { low: 1, high: 3660, whole: true, ucum: "1", unit: "" },
  bottles: { low: 1, high: 100, whole: true, ucum: "1", unit: "" },
  stockPercent: { low: 0, high: 100, aboveLow: true, ucum: "%", unit: msg("% w/v") },
  cents: { low: 0, high: 100_000_000, whole: true, ucum: "1", unit: "" },
  latitudeDegrees: { low: -90, high: 90, ucum: "deg", unit: msg("degrees") },
} as const satisfies Record<string, Limit>

/** Ten megabytes: a child's whole course is a few kilobytes, so anything larger is another file. */
export const LARGEST_FILE_BYTES = 10_000_000

/**
 * A limit in words, to stand after "must be".
 *
 * @example
 * limitInWords(limits.axialLengthMm) // => "a number from 15 to 40 mm"
 */
export function limitInWords({ low, high, aboveLow, whole, unit }: Limit): string {
  const most = withDecimalSign(String(high))
  const range = {
    low: withDecimalSign(String(low)),
    high: unit === "" ? most : `${most} ${say(unit)}`,
  }
  if (aboveLow) return say("a number above {low} and up to {high}", range)
  return whole
    ? say("a whole number from {low} to {high}", range)
    : say("a number from {low} to {high}", range)
}

/**
 * What was probably meant by a figure whose decimal point slipped by one or two places; null when nothing fits.
 *
 * @example
 * slippedDecimal(241, limits.axialLengthMm) // => 24.1
 */
export function slippedDecimal(value: number, { low, high }: Limit): number | null {
  if (value <= 0) return null
  const meant = [10, 0.1, 100, 0.01].map((factor) => Number((value * factor).toPrecision(6)))
  return meant.find((figure) => figure >= low && figure <= high) ?? null
}
