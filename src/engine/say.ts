import { filledParts, type MessagePart, parseMessage } from "./message-format.js"

/**
 * Words in the language of whoever reads. English stands where it is used, as an ICU message; the other languages are
 * catalogues by the English text (`src/words`), so that a sentence is translated whole and never glued from pieces.
 *
 * The language is the one thing the engine takes from around it: it changes words and never a figure or a finding.
 */
export const LANGUAGES = ["en", "es", "zh-Hans"] as const
export type Language = (typeof LANGUAGES)[number]
/** What each language calls itself. */
export const LANGUAGE_NAMES: Readonly<Record<Language, string>> = {
  en: "English",
  es: "Español",
  "zh-Hans": "简体中文",
}
/** English text to the same in one language, both as ICU messages. */
export type Catalogue = Readonly<Record<string, string>>

export const isLanguage = (text: unknown): text is Language => LANGUAGES.includes(text as Language)

const catalogues = new Map<Language, Catalogue>()
let scoped: Language | undefined
let around: () => Language | undefined = () => undefined

/** Makes a language known. */
export function learn(language: Language, catalogue: Catalogue): void {
  catalogues.set(language, catalogue)
}

/** Where the language is read from when no `inLanguage` is under way: a request, a reader's choice. */
export function languageFrom(source: () => Language | undefined): void {
  around = source
}

export const language = (): Language => scoped ?? around() ?? "en"

/** Runs a task that speaks in a language. The task is synchronous, so that no other can fall into it. */
export function inLanguage<T>(spoken: Language, task: () => T): T {
  const before = scoped
  scoped = spoken
  try {
    return task()
  } finally {
    scoped = before
  }
}

type Values = Readonly<Record<string, string | number>>

/**
 * A message in the language in force, filled in. What follows a bar only tells two meanings of one English word apart
 * and is not said: "Left|eye".
 *
 * @throws RangeError when a value is missing.
 * @example
 * say("{count, plural, one {# bottle} other {# bottles}}", { count: 2 }) // => "2 bottles"
 */
export function say(message: string, values: Values = {}): string {
  return sayParts(message, values).join("")
}

/** As `say`, in pieces: for a page that has more than text to put in. */
export function sayParts<Value>(
  message: string,
  values: Readonly<Record<string, Value | string | number>>,
): readonly (Value | string)[] {
  const spoken = language()
  const known = spoken === "en" ? message : (catalogues.get(spoken)?.[message] ?? message)
  return filledParts(parsed(known), { values, language: spoken, digits: inDigitsOf(spoken) })
}

/** Marks a text that is said later, such as one in a table of names, so that the languages are asked for it. */
export const msg = <const Text extends string>(text: Text): Text => text

/** Whether a message is known in a language. */
export const isSaidIn = (message: string, spoken: Language): boolean =>
  spoken === "en" || catalogues.get(spoken)?.[message] !== undefined

const seen = new Map<string, readonly MessagePart[]>()

function parsed(message: string): readonly MessagePart[] {
  let parts = seen.get(message)
  if (parts === undefined) {
    const [spoken = ""] = message.split(MEANING)
    parts = parseMessage(spoken)
    seen.set(message, parts)
  }
  return parts
}

/** A bar with no blank around it; ICU gives it no meaning. */
const MEANING = /(?<=\S)\|(?=\S)/

/** The decimal sign of a language. */
export const decimalSign = (spoken: Language = language()): string => (spoken === "es" ? "," : ".")

const inDigitsOf =
  (spoken: Language) =>
  (value: number): string =>
    withDecimalSign(String(value), spoken)

/** A figure written with a point, as the language writes it. */
export const withDecimalSign = (figure: string, spoken: Language = language()): string =>
  decimalSign(spoken) === "." ? figure : figure.replace(".", decimalSign(spoken))

/**
 * A day of the calendar in words.
 *
 * @example
 * dayInWords("2026-03-10") // => "10 March 2026"
 */
export const dayInWords = (date: string, spoken: Language = language()): string =>
  dayFormat(spoken, "long").format(noonOf(date))

/** @example shortDayInWords("2026-11-05") // => "5 Nov 2026" */
export function shortDayInWords(date: string, spoken: Language = language()): string {
  if (spoken !== "en") return dayFormat(spoken, "short").format(noonOf(date))
  const [year, month, day] = date.split("-")
  return `${Number(day)} ${SHORT_MONTHS[Number(month) - 1]} ${year}`
}

/** Three letters each, which no English locale gives ("Sept"), so that dates stand in columns. */
const SHORT_MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"]

/** The middle of the day in UTC, so that no time zone moves it. */
const noonOf = (date: string): Date => new Date(`${date}T12:00:00Z`)

const dayFormats = new Map<string, Intl.DateTimeFormat>()

function dayFormat(spoken: Language, month: "long" | "short"): Intl.DateTimeFormat {
  const key = `${spoken} ${month}`
  let format = dayFormats.get(key)
  if (format === undefined) {
    // The day first in English too, as everywhere else.
    const locale = spoken === "en" ? "en-GB" : spoken
    format = new Intl.DateTimeFormat(locale, { day: "numeric", month, year: "numeric", timeZone: "UTC" })
    dayFormats.set(key, format)
  }
  return format
}

/** Words as one list with the language's own "and": "a, b and c". */
export const listed = (words: readonly string[], spoken: Language = language()): string =>
  new Intl.ListFormat(spoken === "en" ? "en-GB" : spoken, { type: "conjunction" }).format(words)
