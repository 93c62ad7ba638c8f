import { questionOf } from "../../engine/protocol/questions.js"
import { msg, say } from "../../engine/say.js"

/** A question by its name; one that no version of the program knows stands by its id. */
export function questionName(id: string): string {
  const name = questionOf(id)?.name
  return name === undefined ? id.replaceAll("-", " ") : say(name)
}

/** Values beside an answer with the units of the questions; a test holds them to the questions. */
export const QUESTION_UNITS: Readonly<Record<string, string>> = {
  "weeks at birth": msg("{value} weeks at birth"),
  "nights a week": msg("{value} nights a week"),
  "hours a day": msg("{value} hours a day"),
  cm: msg("{value} cm"),
  "minutes between breaks": msg("{value} minutes between breaks"),
  "minutes from first drop to reading": msg("{value} minutes from first drop to reading"),
}

export function valueInWords(question: string, value: string): string {
  const unit = questionOf(question)?.value?.unit
  const words = unit === undefined ? undefined : QUESTION_UNITS[unit]
  return words === undefined ? value : say(words, { value })
}
