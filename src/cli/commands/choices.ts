import { assess } from "../../engine/assess.js"
import { type Choices, choices } from "../../engine/choices/choices.js"
import { choicesTable, isSameForAll, NONE, notAskedAbout } from "../../engine/choices/choices-table.js"
import type { CalendarDate } from "../../engine/course.js"
import { noRules } from "../../engine/practice-rules.js"
import { defaultSettings } from "../../engine/settings.js"
import { choicesWhy } from "../../engine/why/choices.js"
import { capitalised, sentence } from "../../engine/words.js"
import { evidence } from "../../evidence/index.js"
import * as treatmentEvidence from "../../evidence/treatments.js"
import { courseInput } from "../course-input.js"
import { feeFile } from "../fee-file.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { sourceRegister, whyText } from "../why-text.js"
import { CAUTION, dateInWords, paragraph, section } from "../words.js"

export interface ChoicesArguments {
  readonly file: string
  readonly asOf?: CalendarDate | undefined
  readonly fees?: string | undefined
  /** Drops of 0.5 % and more as well. */
  readonly strong?: boolean | undefined
  readonly json?: boolean | undefined
  readonly why?: boolean | undefined
}

/** The options side by side for this child, in a fixed order; none is recommended. */
export async function run(args: ChoicesArguments, io: Io): Promise<ExitCode> {
  const { json = false } = args
  const input = await courseInput(args, io)
  const fees = args.fees === undefined ? { schedules: [] } : await feeFile(args.fees, io)
  if ("problems" in input || "problems" in fees) {
    const problems = [
      ...("problems" in input ? input.problems : []),
      ...("problems" in fees ? fees.problems : []),
    ]
    return toldProblems(problems, { io, json })
  }
  const { course, asOf, notes } = input
  const rules = { ...noRules, feeSchedules: fees.schedules }
  const told = choices({
    course,
    asOf,
    evidence,
    treatmentEvidence,
    settings: defaultSettings,
    rules,
    withStrong: args.strong ?? false,
  })
  const why = args.why
    ? choicesWhy({
        course,
        choices: told,
        beliefs: assess({ course, asOf, evidence }).beliefs,
        evidence,
        sourceOf: await sourceRegister(),
      })
    : undefined
  if (json) return toldJson({ ...told, checks: notes, ...(why && { why }) }, io)
  io.out(choicesText(told))
  io.out(
    section(
      "Checks",
      notes.map(({ path, why: words }) => `${path}: ${sentence(words)}`),
    ),
  )
  io.out(paragraph(CAUTION, 0))
  if (why) io.out(whyText(why))
  return 0
}

/** A table read aloud: one option after the other, each figure with its name. */
function choicesText(told: Choices): string {
  const { asOf, refused, options, assumptions } = told
  if (refused !== undefined) {
    return paragraph(`No options are compared on ${dateInWords(asOf)}: ${sentence(refused)}`, 0)
  }
  const rows = choicesTable(told)
  const said = (label: string, lines: readonly string[]) => `${label}: ${ended(lines.join("; "))}`
  const notAsked = notAskedAbout(told)
  return [
    paragraph(
      `Options as of ${dateInWords(asOf)}, in a fixed order. None is recommended; the clinician and the family decide.`,
      0,
    ),
    "\n",
    ...options.map(({ name }, index) =>
      section(
        capitalised(name),
        rows
          .filter((row) => !isSameForAll(row))
          .map(({ label, cells }) => ({ label, lines: cells[index] ?? [] }))
          .filter(({ lines }) => lines[0] !== NONE)
          .map(({ label, lines }) => said(label, lines)),
      ),
    ),
    section(
      "For every option",
      rows.filter(isSameForAll).map(({ label, cells }) => said(label, cells[0] ?? [])),
    ),
    section(
      "Cautions not asked about yet before drops",
      notAsked.length === 0 ? [] : [sentence(notAsked.join(", "))],
    ),
    section("Intervals", [
      "In brackets 95 %: of a length, where such children fall; of a chance, between the ends of pace and effect.",
    ]),
    section("Taken for granted", assumptions.map(sentence)),
  ].join("")
}

/** With a full stop, and no capital: it follows a colon. */
const ended = (words: string): string => (/[.?!]$/.test(words) ? words : `${words}.`)
