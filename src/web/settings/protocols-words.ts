import {
  type Anchor,
  type Decides,
  type InForce,
  type ProtocolStep,
  STAGES,
  type StepKind,
} from "../../engine/protocol/protocol.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { counted } from "../../engine/words.js"
import { STAGE_WORDS } from "../visit/visit-plan.js"

/** The parts of a protocol as the settings say them. */

export const ANCHOR_WORDS: Readonly<Record<Anchor, string>> = {
  "before-start": "the start, before the first drop",
  start: "the start of a first course",
  restart: "the start of a later course",
  stop: "the stop",
  "last-visit-on-treatment": "the last visit on treatment, when nothing else lies ahead",
  "last-visit-off-treatment": "the last visit off treatment, when nothing else lies ahead",
}

export const KIND_WORDS: Readonly<Record<StepKind, string>> = {
  examination: "examination",
  decision: "decision",
}

export const DECIDES_WORDS: Readonly<Record<Decides, string>> = {
  stop: "whether to stop",
  restart: "whether to take it up again",
  "step-down": "whether to give fewer nights",
}

export const IN_FORCE_WORDS: Readonly<Record<InForce, string>> = {
  consent: "consent",
  supply: "a bottle in date",
}

export const STAGE_OPTIONS = STAGES.map((stage) => [stage, STAGE_WORDS[stage]] as const)

/** "6 months after the start of a first course, from 30 days before to 30 days after" */
export function stepInOneLine(step: ProtocolStep): string {
  const { anchor, offsetMonths, offsetDays = 0, windowDaysBefore, windowDaysAfter } = step
  const spans = [
    ...(offsetMonths > 0 ? [counted(offsetMonths, "month")] : []),
    ...(offsetDays > 0 ? [counted(offsetDays, "day")] : []),
  ]
  const when = spans.length === 0 ? "at" : `${spans.join(" and ")} after`
  const window = `from ${counted(windowDaysBefore, "day")} before to ${counted(windowDaysAfter, "day")} after`
  const only = step.onlyFor ? `; for ${step.onlyFor.map((kind) => treatmentName({ kind })).join(", ")}` : ""
  return `${when} ${ANCHOR_WORDS[anchor]}, ${window}${only}`
}
