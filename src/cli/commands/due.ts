import type { Check, Duty } from "../../engine/assessment.js"
import type { CalendarDate, Course } from "../../engine/course.js"
import { noRules } from "../../engine/practice-rules.js"
import { protocolFor } from "../../engine/protocol/choose-protocol.js"
import { duties } from "../../engine/protocol/duties.js"
import type { Protocol } from "../../engine/protocol/protocol.js"
import { dutiesWhy } from "../../engine/why/duties.js"
import { sentence } from "../../engine/words.js"
import { courseInput } from "../course-input.js"
import { dutyText } from "../duty-text.js"
import type { ExitCode, Io } from "../io.js"
import { protocolInput } from "../protocol-input.js"
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

/** What is owed to the child as of a day, by the protocol that fits it or by a practice's own. */
export async function run(args: DueArguments, io: Io): Promise<ExitCode> {
  const { json = false } = args
  const input = await courseInput(args, io)
  const own = args.protocol === undefined ? null : await protocolInput(args.protocol, io)
  const problems = [
    ...("problems" in input ? input.problems : []),
    ...(own && "problems" in own ? own.problems : []),
  ]
  if ("problems" in input || (own && "problems" in own)) return toldProblems(problems, { io, json })
  const { course, asOf } = input
  const followed = protocolFor({ course, today: asOf, rules: noRules })
  const protocol = own?.protocol ?? followed
  const notes = [...input.notes, ...(own ? [] : unknownProtocol(course, followed))]
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

/** A name that no protocol has is said, since the duties then follow another one. */
function unknownProtocol({ child }: Course, followed: Protocol): readonly Check[] {
  if (child.protocol === undefined || child.protocol === followed.id) return []
  const why = `no protocol that ships is called ${child.protocol}, so the one that fits the treatment is followed`
  return [{ kind: "unknown-protocol", path: "child.protocol", why }]
}

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
