import type { PracticeSettings } from "../../engine/assessment.js"
import type { CalendarDate, Course } from "../../engine/course.js"
import { noRules, type PracticeRules } from "../../engine/practice-rules.js"
import type { Problem } from "../../engine/problem.js"
import { defaultSettings } from "../../engine/settings.js"
import { OWED_GROUPS, type Owed, type OwedGroup, type Role } from "../../engine/today/owed.js"
import { capitalised, counted, sentence } from "../../engine/words.js"
import { readCourse } from "../../interop/course/read-course.js"
import { childReading } from "../../server/child-readings.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { dateInWords, daysBetween, paragraph, section } from "../words.js"

export interface OwedArguments {
  readonly file: string
  readonly asOf?: CalendarDate | undefined
  readonly role?: Role | undefined
  readonly json?: boolean | undefined
}

/** A child with its course, from a file or out of the record. */
interface OneChild {
  /** What the list calls it: a name and number of the record, or a file. */
  readonly label: string
  readonly id: string
  readonly course: Course
}

interface Practice {
  readonly children: readonly OneChild[]
  readonly skipped: readonly { readonly file: string; readonly problems: readonly Problem[] }[]
  readonly rules: PracticeRules
  readonly settings: PracticeSettings
}

/** The list of the Today page for a folder of course files or a data folder; one course file has its duties told. */
export async function run(args: OwedArguments, io: Io): Promise<ExitCode> {
  const place = await io.place(args.file)
  if (place.kind === "file") return (await import("./due.js")).run(args, io)
  const asOf = args.asOf ?? io.today()
  const practice =
    place.kind === "record" ? await ofRecord(args.file) : await ofFiles(place.files, { io, today: asOf })
  const rows = practice.children.flatMap(({ course, ...child }) =>
    childReading(course, { today: asOf, rules: practice.rules, settings: practice.settings })
      .owed.filter(({ role }) => args.role === undefined || role === args.role)
      .map((owed) => ({ child, owed })),
  )
  if (args.json) {
    const owed = rows.map(({ child, owed }) => ({ child, ...owed }))
    toldJson({ asOf, children: practice.children.length, owed, skipped: practice.skipped }, io)
  } else {
    io.out(listText(rows, { asOf, children: practice.children.length }))
  }
  if (practice.skipped.length === 0) return 0
  return toldProblems(
    practice.skipped.flatMap(({ file, problems }) =>
      problems.map((fault) => ({ ...fault, message: `${file}: ${fault.message}` })),
    ),
    { io, json: false },
  )
}

async function ofFiles(
  files: readonly string[],
  { io, today }: { readonly io: Io; readonly today: CalendarDate },
): Promise<Practice> {
  const children: OneChild[] = []
  const skipped: Practice["skipped"][number][] = []
  for (const file of files) {
    const source = await io.read(file)
    const read =
      "problem" in source
        ? { problems: [source.problem] }
        : readCourse(source.text, { today: [today, io.today()].sort()[1] })
    if ("problems" in read) skipped.push({ file, problems: read.problems })
    else children.push({ label: file, id: read.course.child.id ?? file, course: read.course })
  }
  return { children, skipped, rules: noRules, settings: defaultSettings }
}

/** Read beside a running server: nothing is written, and nothing is locked. */
async function ofRecord(folder: string): Promise<Practice> {
  const { openEmbedded, practiceRecord, practicesIn } = await import("../../record/index.js")
  const database = openEmbedded(folder)
  try {
    const [practice] = await practicesIn(database.queries)
    if (!practice) return { children: [], skipped: [], rules: noRules, settings: defaultSettings }
    const record = practiceRecord(database, practice)
    const listed = await record.everyChild()
    const courses = await record.coursesOf(listed.map(({ id }) => id))
    const children = listed.flatMap(({ id, name, number }) => {
      const course = courses.get(id)
      return course ? [{ id, label: number ? `${name} (${number})` : name, course }] : []
    })
    const settings = { ...defaultSettings, ...practice.settings }
    return { children, skipped: [], rules: await record.rules(), settings }
  } finally {
    await database.close()
  }
}

const HEADINGS: Readonly<Record<OwedGroup, string>> = {
  concern: "Concerns",
  decide: "To decide",
  see: "To be seen",
  supply: "Bottles and orders",
  sign: "Consents",
  tell: "Results to explain",
}

type Row = { readonly child: Omit<OneChild, "course">; readonly owed: Owed }

function listText(
  rows: readonly Row[],
  { asOf, children }: { readonly asOf: CalendarDate; readonly children: number },
): string {
  const head = paragraph(
    rows.length === 0
      ? `Nothing is owed to ${childrenInWords(children)} on ${dateInWords(asOf)}.`
      : `${counted(rows.length, "thing")} owed among ${childrenInWords(children)} on ${dateInWords(asOf)}.`,
    0,
  )
  const groups = OWED_GROUPS.map((group) =>
    section(
      HEADINGS[group],
      rows
        .filter(({ owed }) => owed.group === group)
        .sort((a, b) => ((a.owed.due ?? a.owed.since) < (b.owed.due ?? b.owed.since) ? -1 : 1))
        .map(({ child, owed }) => rowText(child.label, owed, asOf)),
    ),
  )
  return `${head}\n${groups.join("")}`
}

/** "Ren Galwain (LW-0031): 6-month review, 101 days late. Needs: axial length." */
function rowText(label: string, { what, why, since, due, state, role }: Owed, asOf: CalendarDate): string {
  const late = due === null ? 0 : daysBetween({ from: due, to: asOf })
  const when =
    due === null
      ? `since ${dateInWords(since)}`
      : state === "overdue" && late > 0
        ? `${counted(late, "day")} late`
        : `due ${dateInWords(due)}`
  const named = /[.?!]$/.test(what) ? `${what} ${capitalised(when)}` : `${what}, ${when}`
  return `${sentence(`${label}: ${named}; ${role.replace("-", " ")}`)}${why ? ` ${sentence(why)}` : ""}`
}

const childrenInWords = (count: number): string => (count === 1 ? "1 child" : `${count} children`)
