import { type Language, language, say, withDecimalSign } from "./say.js"

/**
 * Figures as they are said wherever they are read, with the decimal sign of the reader's language. A minus is a hyphen
 * here; a page sets a true minus sign.
 */

/** Fixed decimals, never "-0.00". */
export function fixed(value: number, decimals = 2): string {
  const text = value.toFixed(decimals)
  return withDecimalSign(Number(text) === 0 ? text.replace("-", "") : text)
}

/** Up to four digits that count, no trailing zeros: 0.272, 1.03, 12. */
export const inDigits = (value: number): string => withDecimalSign(String(Number(value.toPrecision(4))))

/**
 * A share as whole per cent. A share that only rounds to nothing or to everything is not said to be it.
 *
 * @example
 * percent(0.004) // => "under 1 %"
 */
export function percent(share: number): string {
  const rounded = Math.round(100 * share)
  if (rounded === 0 && share > 0) return say("under 1 %")
  if (rounded === 100 && share < 1) return say("over 99 %")
  return `${rounded} %`
}

/**
 * A likelihood ratio as odds, the larger side first.
 *
 * @example
 * odds(2.31) // => "2.3 : 1"
 */
export function odds(likelihoodRatio: number): string {
  const ratio = likelihoodRatio >= 1 ? likelihoodRatio : 1 / likelihoodRatio
  if (!Number.isFinite(ratio) || ratio > 1000) return say("over 1000 : 1")
  return `${withDecimalSign(String(ratio >= 10 ? Math.round(ratio) : Number(ratio.toFixed(1))))} : 1`
}

/** A centile without decimals, with one near the ends; the reference's own words where it gives no number: "below p3". */
export function centileInWords(centile: number | string): string {
  return typeof centile === "string" ? centile : fixed(centile, centile < 1 || centile > 99 ? 1 : 0)
}

const choices = new Map<Language, Intl.ListFormat>()

/** Words of which one will do, with the language's own "or": "a, b or c". */
export function eitherOf(words: readonly string[]): string {
  const spoken = language()
  const format =
    choices.get(spoken) ?? new Intl.ListFormat(spoken === "en" ? "en-GB" : spoken, { type: "disjunction" })
  choices.set(spoken, format)
  return format.format(words)
}

export const counted = (count: number, thing: string): string => `${count} ${thing}${count === 1 ? "" : "s"}`

export const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** A sentence from words that may lack a capital or a full stop. */
export function sentence(words: string): string {
  const text = capitalised(words)
  return /[.?!]$/.test(text) ? text : `${text}.`
}
