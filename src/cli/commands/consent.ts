import { consentInForce } from "../../engine/consent/consent-in-force.js"
import { consentPlainText, consentText } from "../../engine/consent/consent-text.js"
import { wordingIn, wordingsFor } from "../../engine/consent/default-wording.js"
import type { CalendarDate, TreatmentChoice, TreatmentKind } from "../../engine/course.js"
import type { Problem } from "../../engine/problem.js"
import type { Language } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { courseInput } from "../course-input.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { dateInWords, paragraph } from "../words.js"

export interface ConsentArguments {
  readonly file: string
  readonly for: TreatmentKind
  readonly concentration?: number | undefined
  readonly asOf?: CalendarDate | undefined
  readonly text?: boolean | undefined
  /** What the text is read in. */
  readonly language?: Language | undefined
  readonly json?: boolean | undefined
}

/** Whether a consent in force covers a treatment on a day, and why not; with `--text` what there is to read for it. */
export async function run(args: ConsentArguments, io: Io): Promise<ExitCode> {
  const { json = false } = args
  const input = await courseInput(args, io)
  const problems = [...("problems" in input ? input.problems : []), ...strengthProblems(args)]
  if ("problems" in input || problems.length > 0) return toldProblems(problems, { io, json })
  const { course, asOf } = input
  const treatment: TreatmentChoice = {
    kind: args.for,
    ...(args.concentration === undefined ? {} : { concentrationPercent: args.concentration }),
  }
  const state = consentInForce({ course, treatment, on: asOf })
  const text = args.text ? await textFor(treatment, { on: asOf, language: args.language ?? "en" }) : undefined
  if (json) {
    const found = state.kind === "in-force" ? { consent: state.consent } : { why: state.why }
    return toldJson({ asOf, treatment, state: state.kind, ...found, ...(text !== undefined && { text }) }, io)
  }
  const said =
    state.kind === "in-force"
      ? `On ${dateInWords(asOf)} the consent of ${dateInWords(state.consent.date)} covers ${treatmentName(treatment)}.`
      : `On ${dateInWords(asOf)} no consent in force covers ${treatmentName(treatment)}: ${state.why}.`
  io.out(paragraph(said, 0))
  if (text !== undefined) io.out(`\n${text}`)
  return 0
}

function strengthProblems({ for: kind, concentration }: ConsentArguments): readonly Problem[] {
  const isDrops = kind === "atropine"
  const allowed = isDrops
    ? "the strength asked about, % w/v, above 0 and at most 1.5"
    : `absent: ${treatmentName({ kind })} has no strength`
  const isRight = isDrops
    ? concentration !== undefined && concentration > 0 && concentration <= 1.5
    : concentration === undefined
  if (isRight) return []
  const value = concentration ?? null
  return [
    {
      path: "--concentration",
      value,
      allowed,
      message: `--concentration must be ${allowed}; it is ${value ?? "missing"}`,
    },
  ]
}

/** The wording that ships: a course file holds no practice's own. */
async function textFor(
  treatment: TreatmentChoice,
  { on, language }: { readonly on: CalendarDate; readonly language: Language },
): Promise<string> {
  const [{ consentEvidence }, { learnEveryLanguage }] = await Promise.all([
    import("../../evidence/consent.js"),
    import("../../words/index.js"),
  ])
  learnEveryLanguage()
  const wording = wordingIn(language, wordingsFor({ kind: treatment.kind, on, wordings: [] }))
  return consentPlainText(consentText({ wording, treatment, evidence: consentEvidence }))
}
