import type { CalendarDate, Course } from "../../engine/course.js"
import {
  answeredThisYear,
  type ExaminationOn,
  examinationOn,
  isOnAtropine,
  stepOfStage,
} from "../../engine/protocol/examination-on.js"
import { type ExaminationPlan, examinationPlan } from "../../engine/protocol/examination-plan.js"
import type { Stage } from "../../engine/protocol/protocol.js"
import { msg, say } from "../../engine/say.js"
import type { CourseReading } from "../reading.js"
import type { StageChoice } from "./visit-draft.js"

export interface VisitPlan {
  readonly found: ExaminationOn
  readonly plan: ExaminationPlan
  /** What the visit is called, in the language in force: "6-month review", or the stage chosen by hand. */
  readonly title: string
}

/** To be said. */
export const STAGE_WORDS: Readonly<Record<Stage | "extra", string>> = {
  baseline: msg("baseline"),
  "safety-check": msg("safety check"),
  review: msg("review"),
  washout: msg("check after the stop"),
  discharge: msg("discharge"),
  extra: msg("extra visit"),
}

/** What a visit on a day owes, by the examination found or chosen. `without` is the date of a visit being corrected. */
export function visitPlan(input: {
  readonly reading: CourseReading
  readonly date: CalendarDate
  readonly choice: StageChoice
  readonly isBeforeMyopia: boolean
  readonly without?: CalendarDate | undefined
}): VisitPlan {
  const { reading, date, choice, without } = input
  const { protocol, rules } = reading
  const course: Course = {
    ...reading.course,
    visits: reading.course.visits.filter((visit) => visit.date !== without),
  }
  const found = examinationOn({ course, protocol, date })
  const stage = choice === "owed" ? found.stage : choice === "extra" ? null : choice
  const isFound = found.owed !== null && stage === found.stage
  const step = isFound ? found.owed.step : stage && stepOfStage(protocol, stage)
  const plan = examinationPlan({
    stage,
    onAtropine: isOnAtropine({ course, date, stage }),
    isBeforeMyopia: input.isBeforeMyopia,
    switches: rules.examinationSwitches,
    step: step ?? undefined,
    answeredThisYear: answeredThisYear(course, date),
  })
  return { found, plan, title: isFound ? found.owed.title : say(STAGE_WORDS[stage ?? "extra"]) }
}
