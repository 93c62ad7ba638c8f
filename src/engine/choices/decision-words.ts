import type { DecisionKind } from "../course.js"

/** Kinds of decision as a person says them. */
export const DECISION_WORDS: Readonly<Record<DecisionKind, string>> = {
  start: "start a treatment",
  continue: "go on as now",
  "change-strength": "change the strength",
  add: "add a treatment",
  switch: "switch to another treatment",
  stop: "stop a treatment",
  taper: "taper: fewer nights of the week",
  restart: "start again after a stop",
  refer: "refer",
  discharge: "discharge: end everything in use",
  decline: "the family declines",
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
