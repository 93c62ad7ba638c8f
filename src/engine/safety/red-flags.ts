import type { CalendarDate, Course, Visit } from "../course.js"
import { msg, say } from "../say.js"
import { capitalised } from "../words.js"
import { inRow } from "./in-row.js"
import { type RaisedConcern, RED_FLAG } from "./raised-concern.js"

/**
 * Questions whose "yes" asks for care on the same day, in the order in which they are said. The signs and the duty to
 * examine or refer are of COLLEGE-FLASHES (full-text excerpt), pain of UK-SMPC-1PCT; the words "same day" are general
 * practice (evidence: CD-112 to CD-114 and CD-120).
 */
export const RED_FLAG_QUESTIONS = {
  "sudden-vision-loss": msg("sudden loss of vision"),
  curtain: msg("a curtain over the sight"),
  flashes: msg("flashes"),
  floaters: msg("floaters"),
  "eye-pain": msg("pain in the eye"),
} as const

type RedFlagQuestion = keyof typeof RED_FLAG_QUESTIONS

/**
 * One concern for each visit at which any red flag was answered with yes. No later visit takes it away: only the record
 * kept of that day does, once it is closed.
 */
export function redFlags({
  course,
  today,
}: {
  readonly course: Course
  readonly today: CalendarDate
}): readonly RaisedConcern[] {
  return course.visits
    .filter(({ date }) => date <= today && !isClosed({ course, on: date, today }))
    .toSorted((a, b) => (a.date < b.date ? 1 : -1))
    .flatMap(redFlagOf)
}

function redFlagOf(visit: Visit): readonly RaisedConcern[] {
  const told = (Object.keys(RED_FLAG_QUESTIONS) as RedFlagQuestion[]).filter((question) =>
    visit.answers?.some((given) => given.question === question && given.answer === "yes"),
  )
  if (told.length === 0) return []
  const notes = told.flatMap(
    (question) => visit.answers?.find((given) => given.question === question)?.note ?? [],
  )
  const signs = capitalised(inRow(told.map((question) => say(RED_FLAG_QUESTIONS[question]))))
  const why =
    notes.length === 0
      ? say(
          "{signs}: told on {date}. Same-day care: the front vitreous and the dilated retina are looked at, or the child goes to someone who can. Nobody reassures without an examination.",
          { signs, date: visit.date },
        )
      : say(
          "{signs}: told on {date}. Noted: {notes}. Same-day care: the front vitreous and the dilated retina are looked at, or the child goes to someone who can. Nobody reassures without an examination.",
          { signs, date: visit.date, notes: notes.join("; ") },
        )
  return [{ kind: RED_FLAG, recordKind: RED_FLAG, why, on: visit.date, duty: dutyOf(told) }]
}

/** Pain alone leads to the duty on acute signs, everything else to the one on flashes and floaters. */
const dutyOf = (told: readonly RedFlagQuestion[]) =>
  told.every((question) => question === "eye-pain") ? "CD-120" : "CD-113"

function isClosed({
  course,
  on,
  today,
}: {
  readonly course: Course
  readonly on: CalendarDate
  readonly today: CalendarDate
}): boolean {
  const ofThatDay = (course.concerns ?? []).filter(({ kind, opened }) => kind === RED_FLAG && opened === on)
  return ofThatDay.length > 0 && ofThatDay.every(({ closed }) => closed !== undefined && closed <= today)
}
