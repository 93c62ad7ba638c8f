import { resolve } from "node:path"
import type { CalendarDate, Child } from "../../engine/course.js"
import { noRules } from "../../engine/practice-rules.js"
import type { Problem } from "../../engine/problem.js"
import { protocolFor } from "../../engine/protocol/choose-protocol.js"
import { duties } from "../../engine/protocol/duties.js"
import type { Language } from "../../engine/say.js"
import { sentence } from "../../engine/words.js"
import { problem } from "../../interop/course/problem.js"
import { calendarOf } from "../../interop/ical/calendar.js"
import { type CalendarEntry, calendarEntries } from "../../interop/ical/calendar-entries.js"
import { learnEveryLanguage } from "../../words/index.js"
import { courseInput } from "../course-input.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { dateInWords, paragraph, section } from "../words.js"

export interface CalendarArguments {
  readonly file: string
  readonly out: string
  readonly language: Language
  readonly practice?: string | undefined
  readonly asOf?: CalendarDate | undefined
  readonly json?: boolean | undefined
}

/** Writes a family's calendar. Where nothing is owed no file is written, since the format has no empty calendar. */
export async function run(args: CalendarArguments, io: Io): Promise<ExitCode> {
  const { file, out, language, practice, json = false } = args
  learnEveryLanguage()
  const input = await courseInput(args, io)
  const problems = [...("problems" in input ? input.problems : []), ...argumentProblems(args)]
  if ("problems" in input || problems.length > 0) return toldProblems(problems, { io, json })
  const { course, asOf } = input
  const protocol = protocolFor({ course, today: asOf, rules: noRules })
  const asked = {
    duties: duties({ course, protocol, today: asOf }),
    today: asOf,
    language,
    practiceName: practice,
    childKey: childKey(course.child),
  }
  const text = calendarOf(asked)
  const entries = calendarEntries(asked)
  const checks = [...input.notes, ...noId(course.child)]
  if (text !== null) {
    const hindered = out === "-" ? null : await io.write(out, text)
    if (hindered) return toldProblems([hindered], { io, json })
  }
  if (json) return toldJson({ asOf, language, file, out: text === null ? null : out, entries, checks }, io)
  const told = answerText(entries, { asOf, out })
  const notes = section(
    "Checks",
    checks.map(({ path, why }) => `${path}: ${sentence(why)}`),
  )
  if (out === "-") {
    io.out(text ?? "")
    io.error(`${told}${notes}`)
  } else io.out(`${told}${notes}`)
  return 0
}

const MOST_LETTERS = 200

function argumentProblems({ file, out, practice, json }: CalendarArguments): readonly Problem[] {
  const faults: Problem[] = []
  if (practice !== undefined && (practice.trim() === "" || [...practice].length > MOST_LETTERS)) {
    const allowed = `a name of 1 to ${MOST_LETTERS} characters`
    faults.push(problem({ path: "--practice", value: practice.slice(0, MOST_LETTERS), allowed }))
  }
  if (file !== "-" && resolve(file) === resolve(out)) {
    faults.push(problem({ path: "--out", value: out, allowed: "another file than the course file" }))
  }
  if (out === "-" && json) {
    faults.push(problem({ path: "--out", value: out, allowed: "a file, since the JSON takes stdout" }))
  }
  return faults
}

/** What tells children apart; without an id, what a course file always has. */
const childKey = ({ id, born, sex }: Child): string => id ?? `${born} ${sex}`

function noId({ id }: Child) {
  if (id !== undefined) return []
  const why =
    "the child has no id, so entries of two children with the same birth date and sex would replace each other in one calendar"
  return [{ kind: "no-child-id", path: "child.id", why }]
}

function answerText(
  entries: readonly CalendarEntry[],
  { asOf, out }: { readonly asOf: CalendarDate; readonly out: string },
): string {
  if (entries.length === 0) {
    return paragraph(`Nothing lies ahead on ${dateInWords(asOf)}, so no calendar was written.`, 0)
  }
  const number = entries.length === 1 ? "1 entry" : `${entries.length} entries`
  return [
    out === "-" ? "" : `${number} written to ${out}.\n\n`,
    section(
      "In the calendar",
      entries.map(({ day, title, kind }) => `${dateInWords(day)}: ${title} (${kind}).`),
    ),
  ].join("")
}
