import type { DecisionKind } from "../course.js"
import { msg } from "../say.js"

/** Kinds of decision as a person says them; to be said where they stand. */
export const DECISION_WORDS: Readonly<Record<DecisionKind, string>> = {
  start: msg("start a treatment"),
  continue: msg("go on as now"),
  "change-strength": msg("change the strength"),
  add: msg("add a treatment"),
  switch: msg("switch to another treatment"),
  stop: msg("stop a treatment"),
  taper: msg("taper: fewer nights of the week"),
  restart: msg("start again after a stop"),
  refer: msg("refer"),
  discharge: msg("discharge: end everything in use"),
  decline: msg("the family declines"),
}

/** Decisions for which a treatment is named that begins. */
export const namesTreatment = (kind: DecisionKind): boolean =>
  kind === "start" || kind === "restart" || kind === "add" || kind === "switch" || kind === "change-strength"

/** Decisions that end something of what is in use. */
export const endsTreatment = (kind: DecisionKind): boolean =>
  kind === "stop" || kind === "switch" || kind === "change-strength" || kind === "taper"

/** Decisions that leave the treatments as they are. */
export const changesNothing = (kind: DecisionKind): boolean =>
  kind === "continue" || kind === "refer" || kind === "decline"
