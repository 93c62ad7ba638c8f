import { assess } from "../../engine/assess.js"
import type { Assessment, Duty } from "../../engine/assessment.js"
import type { CalendarDate, Course } from "../../engine/course.js"
import { noRules } from "../../engine/practice-rules.js"
import { protocolFor } from "../../engine/protocol/choose-protocol.js"
import { duties, nextDuty } from "../../engine/protocol/duties.js"
import type { Protocol } from "../../engine/protocol/protocol.js"
import { defaultSettings } from "../../engine/settings.js"
import { dutiesWhy } from "../../engine/why/duties.js"
import { findingWhy } from "../../engine/why/finding.js"
import { growthWhy } from "../../engine/why/growth.js"
import { eyesPositionWhy } from "../../engine/why/position.js"
import type { Why } from "../../engine/why/why.js"
import { evidence } from "../../evidence/index.js"
import { assessmentText } from "../assessment-text.js"
import { courseInput } from "../course-input.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { sourceRegister, whyText } from "../why-text.js"

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
  const protocol = protocolFor({ course, today: asOf, rules: noRules })
  const found = assess({ course, asOf, evidence, protocol })
  const assessment = { ...found, checks: [...notes, ...found.checks.map(inFile)] }
  const owed = duties({ course, protocol, today: asOf })
  const next = nextDuty(owed)
  const why = args.why ? await whys({ course, assessment, owed, protocol }) : undefined
  if (json) return toldJson({ ...assessment, nextDuty: next, ...(why && { why }) }, io)
  io.out(assessmentText({ child: course.child, assessment, next }))
  if (why) io.out(why.map(whyText).join(""))
  return 0
}

/** One explanation for each question: the growth, apart from it the treatment, the position among peers, what is owed. */
async function whys({
  course,
  assessment,
  owed,
  protocol,
}: {
  readonly course: Course
  readonly assessment: Assessment
  readonly owed: readonly Duty[]
  readonly protocol: Protocol
}): Promise<readonly Why[]> {
  const sourceOf = await sourceRegister()
  const assessed = { course, assessment, evidence, settings: defaultSettings, sourceOf }
  return [
    growthWhy(assessed),
    findingWhy(assessed),
    eyesPositionWhy(assessed),
    dutiesWhy({ duties: owed, protocol, asOf: assessment.asOf }),
  ]
}
