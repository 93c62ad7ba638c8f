import { measureName } from "../../engine/protocol/measured.js"
import type { Anchor, Protocol, ProtocolStep } from "../../engine/protocol/protocol.js"
import { protocolJsonSchema } from "../../engine/protocol/protocol-schema.js"
import { shippedProtocols } from "../../engine/protocol/shipped.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { counted, sentence } from "../../engine/words.js"
import { problem } from "../../interop/course/problem.js"
import type { ExitCode, Io } from "../io.js"
import { protocolInput } from "../protocol-input.js"
import { toldJson, toldProblems } from "../told.js"
import { paragraph, section } from "../words.js"

export interface ProtocolArguments {
  readonly action: "list" | "show" | "check" | "schema"
  /** The id of a protocol that ships, or a file to check. */
  readonly what?: string | undefined
  readonly json?: boolean | undefined
}

/** The protocols that ship, whether one of a practice is sound, and the JSON Schema of the format. */
export async function run(args: ProtocolArguments, io: Io): Promise<ExitCode> {
  const { action, what, json = false } = args
  if (action === "schema") return toldJson(protocolJsonSchema, io)
  if (action === "list") return list(io, json)
  if (what === undefined) {
    const allowed = action === "show" ? `one of ${ids()}` : "a protocol file"
    return toldProblems([problem({ path: "what", value: undefined, allowed })], { io, json })
  }
  return action === "show" ? show(what, io, json) : check(what, io, json)
}

const ids = () => shippedProtocols.map(({ id }) => id).join(", ")

function list(io: Io, json: boolean): ExitCode {
  const protocols = shippedProtocols.map(({ id, title, version, source, steps }) => ({
    id,
    title,
    version,
    source,
    steps: steps.length,
  }))
  if (json) return toldJson({ protocols }, io)
  for (const { id, title, source, steps } of protocols) {
    io.out(paragraph(`${id}: ${title}, ${counted(steps, "step")}. ${sentence(source)}`, 0))
  }
  return 0
}

function show(id: string, io: Io, json: boolean): ExitCode {
  const protocol = shippedProtocols.find((one) => one.id === id)
  if (!protocol) {
    return toldProblems([problem({ path: "what", value: id, allowed: `one of ${ids()}` })], { io, json })
  }
  // As a file: what a practice starts its own copy from.
  if (json) return toldJson(protocol, io)
  io.out(protocolText(protocol))
  return 0
}

async function check(file: string, io: Io, json: boolean): Promise<ExitCode> {
  const read = await protocolInput(file, io)
  if ("problems" in read) return toldProblems(read.problems, { io, json })
  const { id, version, steps } = read.protocol
  if (json) return toldJson({ id, version, steps: steps.length, problems: [] }, io)
  io.out(paragraph(`${id}, version ${version}, ${counted(steps.length, "step")}: no fault found.`, 0))
  return 0
}

const FROM: Readonly<Record<Anchor, string>> = {
  "before-start": "the start, before the first drop",
  start: "the start",
  restart: "the restart",
  stop: "the stop",
  "last-visit-on-treatment": "the last visit on treatment, when no other examination lies ahead",
  "last-visit-off-treatment": "the last visit off treatment, when no other examination lies ahead",
}

function protocolText(protocol: Protocol): string {
  const { title, id, version, source, steps } = protocol
  const days = [
    `A gap in treatment of up to ${counted(protocol.longestPauseDays, "day")} is a pause.`,
    `Consent is asked for ${counted(protocol.consentLeadDays, "day")} before the start, the next bottle ${counted(protocol.bottleLeadDays, "day")} before the last one ends.`,
    `A bottle without a beyond-use date is good for ${counted(protocol.bottleDaysAfterOpening, "day")} after opening.`,
  ]
  return [
    paragraph(`${title} (${id}), version ${version}. ${sentence(source)}`, 0),
    section("Steps", steps.map(stepText)),
    section("Spans", days),
  ].join("\n")
}

function stepText(step: ProtocolStep): string {
  const { title, anchor, offsetMonths, offsetDays = 0, windowDaysBefore, windowDaysAfter } = step
  const spans = [
    ...(offsetMonths > 0 ? [counted(offsetMonths, "month")] : []),
    ...(offsetDays > 0 ? [counted(offsetDays, "day")] : []),
  ]
  const when = spans.length === 0 ? `at ${FROM[anchor]}` : `${spans.join(" and ")} after ${FROM[anchor]}`
  const window = `from ${counted(windowDaysBefore, "day")} before to ${counted(windowDaysAfter, "day")} after`
  const measured = step.measures.length > 0 ? ` Measures ${step.measures.map(measureName).join(", ")}.` : ""
  const onAtropine =
    step.measuresOnAtropine.length > 0
      ? ` On atropine also ${step.measuresOnAtropine.map(measureName).join(", ")}.`
      : ""
  const only = step.onlyFor
    ? ` Only for ${step.onlyFor.map((kind) => treatmentName({ kind })).join(", ")}.`
    : ""
  const again = step.restartsOnChange
    ? ` Again after a change of ${step.onlyFor ? "treatment" : "strength"}.`
    : ""
  return `${sentence(`${title}: ${when}, ${window}`)}${measured}${onAtropine}${only}${again}`
}
