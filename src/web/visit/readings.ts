import { say } from "../../engine/say.js"

/** What was typed into a field for repeated readings. */
export type Readings =
  | { readonly kind: "none" }
  | { readonly kind: "fault"; readonly message: string }
  | {
      readonly kind: "readings"
      readonly mean: number
      /** Largest minus smallest. */
      readonly spread: number
      readonly count: number
    }

/**
 * Reads numbers separated by spaces, semicolons or lines; a comma stands for the decimal point, as on many keyboards.
 *
 * @example
 * parseReadings("24.03 24,02 24.01") // => { kind: "readings", mean: 24.02, spread: 0.02, count: 3 }
 */
export function parseReadings(text: string): Readings {
  const words = text.split(/[\s;]+/).filter((word) => word !== "")
  if (words.length === 0) return { kind: "none" }
  const values: number[] = []
  for (const word of words) {
    const value = parseNumber(word)
    if (value === null) return { kind: "fault", message: say("not a number: {word}", { word }) }
    values.push(value)
  }
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length
  return {
    kind: "readings",
    mean: rounded(mean),
    spread: rounded(Math.max(...values) - Math.min(...values)),
    count: values.length,
  }
}

/** A plain decimal number, or null. Accepts a comma as the decimal point and a typographic minus. */
export function parseNumber(text: string): number | null {
  const plain = text.trim().replace(",", ".").replace("\u2212", "-")
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null
}

/** To the micrometre: finer digits of a mean are noise of the division. */
function rounded(value: number): number {
  return Math.round(value * 1000) / 1000
}
