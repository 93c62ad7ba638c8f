import { completedMonths } from "../engine/calendar.js"
import type { CalendarDate, Eye, SymptomKind } from "../engine/course.js"
import { isSaidIn, language, msg, say, shortDayInWords } from "../engine/say.js"
import { fixed as plain } from "../engine/words.js"

/** @example dateWords("2026-11-05") // => "5 Nov 2026" */
export const dateWords = (date: CalendarDate): string => shortDayInWords(date)

/** Completed years and months. @example ageWords({ born: "2016-03-14", on: "2025-09-12" }) // => "9 y 5 m" */
export function ageWords({ born, on }: { born: CalendarDate; on: CalendarDate }): string {
  const completed = completedMonths({ from: born, to: on })
  return say("{years} y {months} m", { years: Math.floor(completed / 12), months: completed % 12 })
}

/** An age of the axis, e.g. 13 or 13.5, years. */
export const axisAge = (age: number) => fixed(age, Number.isInteger(age) ? 0 : 1)

/** A number with a true minus sign and fixed decimals. */
export function fixed(value: number, digits: number): string {
  return plain(value, digits).replace("-", "−")
}

export const mmWords = (mm: number) => `${fixed(mm, 2)} mm`

export function dioptreWords(dioptres: number): string {
  return `${dioptres > 0 ? "+" : ""}${fixed(dioptres, 2)} D`
}

/** @example rangeWords({ low: 0.05, high: 0.23, digits: 2 }) // => "0.05 to 0.23" */
export function rangeWords({ low, high, digits }: { low: number; high: number; digits: number }): string {
  return say("{low} to {high}", { low: fixed(low, digits), high: fixed(high, digits) })
}

const SYMPTOM_WORDS: Readonly<Record<SymptomKind, string>> = {
  "light-sensitivity": msg("light sensitivity"),
  "near-blur": msg("near blur"),
  stinging: msg("stinging"),
  redness: msg("redness"),
  itching: msg("itching"),
  headache: msg("headache"),
  other: msg("other symptom"),
}

export const symptomWords = (kind: SymptomKind): string => say(SYMPTOM_WORDS[kind])

/** An eye on its own, as short as the trade writes it: "right", in Spanish "OD". */
export const eyeWords = (eye: Eye): string => (eye === "right" ? say("right|eye") : say("left|eye"))

/** @example ofEye("right", "24.12 mm") // => "right 24.12 mm" */
export const ofEye = (eye: Eye, value: string): string =>
  eye === "right" ? say("right {value}", { value }) : say("left {value}", { value })

/**
 * What ships with the program in the reader's language; what a practice wrote, as it was written. Never taken for a
 * message by itself: it may hold braces.
 */
export const knownWords = (text: string): string =>
  language() !== "en" && isSaidIn(text, language()) ? say(text) : text

/** Where figures come from that were not measured here. */
export const fromWords = (from: string): string => (from === OLD_GLASSES ? say("old glasses") : from)

const OLD_GLASSES = "old glasses"

/** @example listed(["a", "b"]) // => "a, b" */
export const listed = (parts: readonly string[]) => parts.filter((part) => part !== "").join(", ")
