import { beforeMyopia } from "../../engine/before-myopia/before-myopia.js"
import { beforeMyopiaInWords } from "../../engine/before-myopia/in-words.js"
import type { CalendarDate } from "../../engine/course.js"
import { noRules } from "../../engine/practice-rules.js"
import { protocolFor } from "../../engine/protocol/choose-protocol.js"
import { sentence } from "../../engine/words.js"
import { beforeMyopiaEvidence } from "../../evidence/before-myopia.js"
import { emmetropicCurve, growthParameters } from "../../evidence/index.js"
import { courseInput } from "../course-input.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { CAUTION, paragraph, section } from "../words.js"

export interface BeforeMyopiaArguments {
  readonly file: string
  readonly asOf?: CalendarDate | undefined
  readonly json?: boolean | undefined
}

/** What can be said of a child who is not myopic yet. A refusal is an answer and no fault. */
export async function run(args: BeforeMyopiaArguments, io: Io): Promise<ExitCode> {
  const { json = false } = args
  const input = await courseInput(args, io)
  if ("problems" in input) return toldProblems(input.problems, { io, json })
  const { course, asOf, notes } = input
  const answer = beforeMyopia({
    course,
    asOf,
    evidence: {
      onset: beforeMyopiaEvidence,
      emmetropic: emmetropicCurve,
      myopiaCutOffD: growthParameters.values.myopiaCutOffD.value,
    },
    protocol: protocolFor({ course, today: asOf, rules: noRules }),
  })
  if (json) return toldJson({ asOf, ...answer, checks: notes }, io)
  if ("refused" in answer) {
    io.out(paragraph(sentence(answer.refused), 0))
    return 0
  }
  const words = beforeMyopiaInWords(answer)
  io.out(`${paragraph(sentence(words.first), 0)}\n`)
  io.out(section("Length", words.length))
  io.out(section("Refraction", words.refraction))
  io.out(section("Parents", words.parents))
  io.out(section("Reviews", words.review))
  for (const { what, findings } of words.advice) io.out(section(`Advice: ${what}`, findings))
  io.out(section("Not said", words.notSaid))
  io.out(paragraph(CAUTION, 0))
  return 0
}
