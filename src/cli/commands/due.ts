import type { Duty } from "../../engine/assessment.js"
import type { CalendarDate } from "../../engine/course.js"
import type { Problem } from "../../engine/problem.js"
import { duties } from "../../engine/protocol/duties.js"
import type { Protocol } from "../../engine/protocol/protocol.js"
import { protocolProblems } from "../../engine/protocol/protocol-problems.js"
import { standardProtocol } from "../../engine/protocol/standard.js"
import { dutiesWhy } from "../../engine/why/duties.js"
import { sentence } from "../../engine/words.js"
import { WHOLE_FILE } from "../../interop/course/problem.js"
import { courseInput } from "../course-input.js"
import { dutyText } from "../duty-text.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { whyText } from "../why-text.js"
import { dateInWords, paragraph, section } from "../words.js"

export interface DueArguments {
  readonly file: string
  readonly asOf?: CalendarDate | undefined
  readonly protocol?: string | undefined
  readonly json?: boolean | undefined
  readonly why?: boolean | undefined
}

/** What is owed to the child as of a day, by the standard protocol or by a practice's own. */
export async function run(args: DueArguments, io: Io): Promise<ExitCode> {
  const { json = false } = args
  const input = await courseInput(args, io)
  const chosen = await protocolOf(args.protocol, io)
  const problems = [
    ...("problems" in input ? input.problems : []),
    ...("problems" in chosen ? chosen.problems : []),
  ]
  if ("problems" in input || "problems" in chosen) return toldProblems(problems, { io, json })
  const { course, asOf, notes } = input
  const { protocol } = chosen
  const owed = duties({ course, protocol, today: asOf })
  const why = args.why ? dutiesWhy({ duties: owed, protocol, asOf }) : undefined
  if (json) {
    const named = { id: protocol.id, version: protocol.version, source: protocol.source }
    return toldJson({ asOf, protocol: named, duties: owed, checks: notes, ...(why && { why }) }, io)
  }
  io.out(dutiesText(owed, asOf))
  io.out(
    section(
      "Checks",
      notes.map(({ path, why: words }) => `${path}: ${sentence(words)}`),
    ),
  )
  io.out(
    paragraph(`By the protocol "${protocol.title}", version ${protocol.version}: ${protocol.source}.`, 0),
  )
  if (why) io.out(whyText(why))
  return 0
}

async function protocolOf(
  file: string | undefined,
  io: Io,
): Promise<{ readonly protocol: Protocol } | { readonly problems: readonly Problem[] }> {
  if (file === undefined) return { protocol: standardProtocol }
  const source = await io.read(file)
  if ("problem" in source) return { problems: [inProtocol(source.problem)] }
  let value: unknown
  try {
    value = JSON.parse(source.text)
  } catch (cause) {
    const words = cause instanceof Error ? cause.message : String(cause)
    const message = `The protocol ${file} is not JSON: ${words}.`
    return {
      problems: [inProtocol({ path: WHOLE_FILE, value: null, allowed: "a protocol in JSON", message })],
    }
  }
  const problems = protocolProblems(value)
  if (problems.length > 0) return { problems: problems.map(inProtocol) }
  return { protocol: value as Protocol }
}

// Two files are read, so the sentence of each fault says which of them it is in.
const inProtocol = (fault: Problem): Problem => ({
  ...fault,
  path: fault.path === "" ? WHOLE_FILE : fault.path,
  message: `Protocol: ${fault.message}`,
})

const STATES: readonly (readonly [state: Duty["state"], heading: string])[] = [
  ["overdue", "Overdue"],
  ["open", "Open now"],
  ["upcoming", "Coming"],
  ["missed", "Missed"],
  ["done", "Done"],
]

function dutiesText(owed: readonly Duty[], asOf: CalendarDate): string {
  if (owed.length === 0) return `${paragraph(`Nothing is owed on ${dateInWords(asOf)}.`, 0)}\n`
  return STATES.map(([state, heading]) =>
    section(
      heading,
      owed.filter((duty) => duty.state === state).map((duty) => dutyText(duty, asOf)),
    ),
  ).join("")
}
