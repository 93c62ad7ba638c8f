import { dayNumberOrNull } from "../engine/calendar.js"
import { dayInWords } from "../engine/say.js"

/**
 * A sentence of the engine as a paper writes it: its ISO days in the words of the language in force. What only looks
 * like a day, such as a lot or part of a longer number, stays as it is.
 *
 * @example
 * datesInWords("given on 2026-02-01, in force") // => "given on 1 February 2026, in force"
 */
export const datesInWords = (text: string): string =>
  text.replace(/(?<![\w-])\d{4}-\d{2}-\d{2}(?![\w-])/g, (date) =>
    dayNumberOrNull(date) === null ? date : dayInWords(date),
  )
