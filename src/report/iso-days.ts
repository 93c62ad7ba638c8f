import { dayNumberOrNull } from "../engine/calendar.js"
import { dayInWords } from "../engine/say.js"

/**
 * A sentence of the engine with its ISO days as the language writes them.
 *
 * @example
 * daysInWords("in force from 2026-01-01") // => "in force from 1 January 2026"
 */
export const daysInWords = (text: string): string =>
  text.replace(/(?<![\w-])\d{4}-\d{2}-\d{2}(?![\w-])/g, (day) =>
    dayNumberOrNull(day) === null ? day : dayInWords(day),
  )
