import {
  type Anchor,
  type Decides,
  type InForce,
  type ProtocolStep,
  STAGES,
  type StepKind,
} from "../../engine/protocol/protocol.js"
import { msg, say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { STAGE_WORDS } from "../visit/visit-plan.js"

/** The parts of a protocol as the settings say them. */

export const ANCHOR_WORDS: Readonly<Record<Anchor, string>> = {
  "before-start": msg("the start, before the first drop"),
  start: msg("the start of a first course"),
  restart: msg("the start of a later course"),
  stop: msg("the stop"),
  "last-visit-on-treatment": msg("the last visit on treatment, when nothing else lies ahead"),
  "last-visit-off-treatment": msg("the last visit off treatment, when nothing else lies ahead"),
}

export const KIND_WORDS: Readonly<Record<StepKind, string>> = {
  examination: msg("examination"),
  decision: msg("decision"),
}

export const DECIDES_WORDS: Readonly<Record<Decides, string>> = {
  stop: msg("whether to stop"),
  restart: msg("whether to take it up again"),
  "step-down": msg("whether to give fewer nights"),
}

export const IN_FORCE_WORDS: Readonly<Record<InForce, string>> = {
  consent: msg("consent"),
  supply: msg("a bottle in date"),
}

export const stageOptions = () => STAGES.map((stage) => [stage, say(STAGE_WORDS[stage])] as const)

/** "6 months after the start of a first course, from 30 days before to 30 days after" */
export function stepInOneLine(step: ProtocolStep): string {
  const { anchor, offsetMonths, offsetDays = 0, windowDaysBefore, windowDaysAfter } = step
  const said = {
    span: spanOf(offsetMonths, offsetDays),
    months: offsetMonths,
    days: offsetDays,
    anchor: say(ANCHOR_WORDS[anchor]),
    before: windowDaysBefore,
    after: windowDaysAfter,
  }
  return step.onlyFor
    ? say(
        "{span, select, none {at {anchor}} months {{months, plural, one {# month} other {# months}} after {anchor}} days {{days, plural, one {# day} other {# days}} after {anchor}} other {{months, plural, one {# month} other {# months}} and {days, plural, one {# day} other {# days}} after {anchor}}}, from {before, plural, one {# day} other {# days}} before to {after, plural, one {# day} other {# days}} after; for {treatments}",
        { ...said, treatments: step.onlyFor.map((kind) => treatmentName({ kind })).join(", ") },
      )
    : say(
        "{span, select, none {at {anchor}} months {{months, plural, one {# month} other {# months}} after {anchor}} days {{days, plural, one {# day} other {# days}} after {anchor}} other {{months, plural, one {# month} other {# months}} and {days, plural, one {# day} other {# days}} after {anchor}}}, from {before, plural, one {# day} other {# days}} before to {after, plural, one {# day} other {# days}} after",
        said,
      )
}

function spanOf(months: number, days: number): "none" | "months" | "days" | "both" {
  if (months > 0) return days > 0 ? "both" : "months"
  return days > 0 ? "days" : "none"
}
