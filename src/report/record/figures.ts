import type { CalendarDate } from "../../engine/course.js"
import { say, shortDayInWords, withDecimalSign } from "../../engine/say.js"

/** Stands in a cell where nothing is recorded. */
export const NOTHING = "–"

/** Fixed decimals with a true minus sign. */
export function decimals(value: number, digits: number): string {
  const text = value.toFixed(digits)
  return withDecimalSign(Number(text) === 0 ? text.replace("-", "") : text.replace("-", "−"))
}

/** A power with its sign, dioptres. */
export const power = (dioptres: number): string => `${dioptres > 0 ? "+" : ""}${decimals(dioptres, 2)}`

/**
 * A figure with every digit it was recorded with, and at least so many decimals.
 *
 * @example
 * recorded(24.1234, 2) // => "24.1234"
 */
export function recorded(value: number | undefined, digits = 0): string {
  if (value === undefined) return NOTHING
  const written = String(value).split(".")[1]?.length ?? 0
  return decimals(value, Math.min(20, Math.max(digits, written)))
}

/** A recorded power keeps its sign and every digit. */
export function recordedPower(dioptres: number | undefined): string {
  if (dioptres === undefined) return NOTHING
  return `${dioptres > 0 ? "+" : ""}${recorded(dioptres, 2)}`
}

export const day = (date: CalendarDate | null | undefined): string =>
  date == null ? NOTHING : shortDayInWords(date)

export const text = (words: string | undefined): string =>
  words === undefined || words.trim() === "" ? NOTHING : words

export const yesOrNo = (answer: boolean | undefined): string =>
  answer === undefined ? NOTHING : answer ? say("yes|answer") : say("no|answer")

/** A share of certainty; a model is never wholly certain, whatever its sums round to. */
export function certainty(share: number): string {
  const rounded = Math.round(100 * share)
  return rounded >= 100
    ? say("over {percent} %", { percent: "99" })
    : say("{percent} %", { percent: String(rounded) })
}

/** A likelihood ratio as odds, the larger side first: "2.3 : 1". */
export function oddsOf(likelihoodRatio: number): string {
  const ratio = likelihoodRatio >= 1 ? likelihoodRatio : 1 / likelihoodRatio
  if (!Number.isFinite(ratio) || ratio > 1000) return say("over {most} : 1", { most: "1000" })
  return `${withDecimalSign(String(ratio >= 10 ? Math.round(ratio) : Number(ratio.toFixed(1))))} : 1`
}
