import type { CalendarDate } from "../../engine/course.js"
import { myopiaOf } from "../../engine/growth/myopia.js"
import { noRules } from "../../engine/practice-rules.js"
import { protocolFor } from "../../engine/protocol/choose-protocol.js"
import {
  answeredThisYear,
  examinationOn,
  isOnAtropine,
  stepOfStage,
} from "../../engine/protocol/examination-on.js"
import {
  examinationPlan,
  missingFrom,
  type PlannedItem,
  type PlanReason,
} from "../../engine/protocol/examination-plan.js"
import type { Stage } from "../../engine/protocol/protocol.js"
import { sentence } from "../../engine/words.js"
import { growthParameters } from "../../evidence/index.js"
import { courseInput } from "../course-input.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { dateInWords, paragraph, section } from "../words.js"

export interface ExaminationArguments {
  readonly file: string
  readonly asOf?: CalendarDate | undefined
  readonly stage?: Stage | undefined
  /** Duties switched on, as a practice would. */
  readonly on?: readonly string[] | undefined
  readonly json?: boolean | undefined
}

/** What an examination on a day owes in measures and questions, and what a visit recorded on that day lacks of it. */
export async function run(args: ExaminationArguments, io: Io): Promise<ExitCode> {
  const { json = false, on = [] } = args
  const input = await courseInput(args, io)
  if ("problems" in input) return toldProblems(input.problems, { io, json })
  const { course, asOf, notes } = input
  const protocol = protocolFor({ course, today: asOf, rules: noRules })
  const found = examinationOn({ course, protocol, date: asOf })
  const stage = args.stage ?? found.stage
  const isFound = stage === found.stage && found.owed !== null
  const step = isFound ? found.owed.step : stage === null ? undefined : stepOfStage(protocol, stage)
  const plan = examinationPlan({
    stage,
    step,
    onAtropine: isOnAtropine({ course, date: asOf, stage }),
    isBeforeMyopia: myopiaOf(course, asOf, growthParameters.values.myopiaCutOffD.value) === "not-myopic",
    switches: Object.fromEntries(on.map((duty) => [duty, true])),
    answeredThisYear: answeredThisYear(course, asOf),
  })
  const visit = course.visits.find(({ date }) => date === asOf)
  const missing = visit ? missingFrom(plan, visit, isFound ? found.owed.visits : []) : null
  const title = isFound ? found.owed.title : (stage ?? "extra visit")
  const owed = plan.items.map((item) => ({
    kind: item.kind,
    id: item.kind === "measure" ? item.measure : item.question.id,
    name: item.name,
    place: item.place,
    why: item.why,
  }))
  if (json) return toldJson({ asOf, examination: title, stage, owed, missing, checks: notes }, io)
  io.out(paragraph(sentence(`${title} on ${dateInWords(asOf)}, in the order of the room`), 0))
  io.out(`\n${section("Owed", plan.items.map(itemText))}`)
  if (missing) {
    const names = missing.length === 0 ? ["Nothing."] : missing.map(({ name }) => sentence(name))
    io.out(section("Missing from the visit of that day", names))
  }
  return 0
}

function itemText(item: PlannedItem): string {
  const why = item.why.map(reasonText).join("; ")
  return item.kind === "measure" ? `${sentence(item.name)} (${why})` : `${item.question.words} (${why})`
}

function reasonText(reason: PlanReason): string {
  if (reason.from === "protocol") return `protocol, ${reason.step}`
  return reason.from === "duty" ? `${reason.duty}, ${reason.status}` : "common practice, no source"
}
