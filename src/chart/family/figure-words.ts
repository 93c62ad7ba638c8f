import { fixed } from "../words.js"

/** Figures for families: one decimal for lengths, the unit with each. */
export const lengthWords = (mm: number): string => `${fixed(mm, 1)} mm`

/** A range without a word, so that it reads the same in every language. */
export const spanWords = (low: number, high: number): string => `${fixed(low, 1)}–${fixed(high, 1)} mm`

/**
 * How much longer or shorter than another length, from the two as they are written, so that a parent who takes one from
 * the other gets the same. Nothing where they are written alike.
 *
 * @example
 * differenceWords(24.04, 23.36) // => "+0.6 mm", as 24.0 and 23.4 stand there
 */
export function differenceWords(mm: number, firstMm: number): string {
  const tenths = Math.round(10 * Number(mm.toFixed(1)) - 10 * Number(firstMm.toFixed(1)))
  return tenths === 0 ? "" : `${tenths > 0 ? "+" : ""}${lengthWords(tenths / 10)}`
}
