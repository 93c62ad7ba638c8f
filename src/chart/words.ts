import { completedMonths } from "../engine/calendar.js"
import type { CalendarDate, SymptomKind } from "../engine/course.js"
import { shortDayInWords } from "../engine/say.js"
import { fixed as plain } from "../engine/words.js"

/** @example dateWords("2026-11-05") // => "5 Nov 2026" */
export const dateWords = (date: CalendarDate): string => shortDayInWords(date)

/** Completed years and months. @example ageWords({ born: "2016-03-14", on: "2025-09-12" }) // => "9 y 5 m" */
export function ageWords({ born, on }: { born: CalendarDate; on: CalendarDate }): string {
  const completed = completedMonths({ from: born, to: on })
  return `${Math.floor(completed / 12)} y ${completed % 12} m`
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
  return `${fixed(low, digits)} to ${fixed(high, digits)}`
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

/** @example listed(["a", "b"]) // => "a, b" */
export const listed = (parts: readonly string[]) => parts.filter((part) => part !== "").join(", ")
