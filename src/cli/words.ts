import { completedMonths, dayNumber, dayNumberOrNull } from "../engine/calendar.js"
import type { CalendarDate } from "../engine/course.js"
import { counted } from "../engine/words.js"

/** Dates and paragraphs as they are read aloud from a terminal. */

const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
]

/** "10 January 2025" */
export function dateInWords(date: CalendarDate): string {
  const [year, month, day] = date.split("-").map(Number)
  return `${day} ${MONTHS[(month ?? 1) - 1]} ${year}`
}

/** "9 years and 10 months", completed. */
export function ageInWords({ born, on }: { readonly born: CalendarDate; readonly on: CalendarDate }): string {
  const months = completedMonths({ from: born, to: on })
  return `${counted(Math.floor(months / 12), "year")} and ${counted(months % 12, "month")}`
}

export const daysBetween = ({
  from,
  to,
}: {
  readonly from: CalendarDate
  readonly to: CalendarDate
}): number => dayNumber(to) - dayNumber(from)

const WIDTH = 100

/** Days that a sentence names the way a file does; one that is part of a file's name stays as it is. */
const datesInWords = (words: string): string =>
  words.replace(/(?<![\w./-])\d{4}-\d{2}-\d{2}(?![\w/-]|\.\w)/g, (date) =>
    dayNumberOrNull(date) === null ? date : dateInWords(date),
  )

/** Words in lines of a terminal, every line after `indent` blanks, days in words. */
export function paragraph(words: string, indent = 2): string {
  const blanks = " ".repeat(indent)
  const lines: string[] = []
  let line = ""
  for (const word of datesInWords(words)
    .split(/\s+/)
    .filter((part) => part !== "")) {
    if (line !== "" && indent + line.length + 1 + word.length > WIDTH) {
      lines.push(line)
      line = word
    } else line = line === "" ? word : `${line} ${word}`
  }
  return [...lines, line].map((text) => `${blanks}${text}\n`).join("")
}

/** A heading, then paragraphs; nothing at all when there are none. */
export function section(heading: string, paragraphs: readonly string[]): string {
  if (paragraphs.length === 0) return ""
  return `${heading}\n${paragraphs.map((words) => paragraph(words)).join("")}\n`
}

export const CAUTION =
  "Not a medical device. It supports and never replaces a licensed clinician's judgement; local law, product licences and the pharmacist decide."
