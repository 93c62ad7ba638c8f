import { assess } from "../../engine/assess.js"
import type { CalendarDate } from "../../engine/course.js"
import { duties, nextDuty } from "../../engine/protocol/duties.js"
import { standardProtocol } from "../../engine/protocol/standard.js"
import { evidence } from "../../evidence/index.js"
import { assessmentText } from "../assessment-text.js"
import { assessmentWhys } from "../assessment-why.js"
import { courseInput } from "../course-input.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { whyText } from "../why.js"

export interface AssessArguments {
  readonly file: string
  readonly asOf?: CalendarDate | undefined
  readonly json?: boolean | undefined
  readonly why?: boolean | undefined
}

/** What a child's figures support on a day: the growth, apart from it the treatment, and what comes next. */
export async function run(args: AssessArguments, io: Io): Promise<ExitCode> {
  const { json = false } = args
  const input = await courseInput(args, io)
  if ("problems" in input) return toldProblems(input.problems, { io, json })
  const { course, asOf, notes, inFile } = input
  const found = assess({ course, asOf, evidence })
  const assessment = { ...found, checks: [...notes, ...found.checks.map(inFile)] }
  const next = nextDuty(duties({ course, protocol: standardProtocol, today: asOf }))
  const why = args.why ? await assessmentWhys({ course, assessment, evidence }) : undefined
  if (json) return toldJson({ ...assessment, nextDuty: next, ...(why && { why }) }, io)
  io.out(assessmentText({ child: course.child, assessment, next }))
  if (why) io.out(why.map(whyText).join(""))
  return 0
}
