import { TREATMENT_KINDS } from "../course.js"
import { ANCHORS, DECIDES, IN_FORCE, MEASURES, STAGES, STEP_KINDS } from "./protocol.js"

const text = (description: string) => ({ type: "string", pattern: "\\S", description })
const whole = (maximum: number, description: string, minimum = 0) => ({
  type: "integer",
  minimum,
  maximum,
  description,
})
const days = (description: string) => whole(366, description)
const oneOf = (values: readonly string[], description: string) => ({ enum: [...values], description })
const listOf = (values: readonly string[], description: string) => ({
  type: "array",
  items: { enum: [...values] },
  description,
})

const anchorIs = (pattern: string) => ({
  properties: { anchor: { type: "string", pattern } },
  required: ["anchor"],
})
const decidesIs = (value: string) => ({ properties: { decides: { const: value } }, required: ["decides"] })

const step = {
  type: "object",
  additionalProperties: false,
  required: [
    "id",
    "title",
    "kind",
    "anchor",
    "offsetMonths",
    "windowDaysBefore",
    "windowDaysAfter",
    "measures",
    "measuresOnAtropine",
    "inForce",
    "restartsOnChange",
  ],
  properties: {
    id: text("Unlike every other id of the protocol."),
    title: text('What a person reads, such as "6-month review".'),
    kind: oneOf(STEP_KINDS, "Something measured or something decided."),
    stage: oneOf(STAGES, "What an examination is for; found from anchor and measures when absent."),
    anchor: oneOf(
      ANCHORS,
      "The day the step is counted from: before-start is the start, measured before the first drop; start and restart are the first day of a first and of a later course; stop is the first day without treatment; the last visit counts when no other examination lies ahead.",
    ),
    offsetMonths: whole(
      240,
      "Calendar months from the anchor; where the month is too short its last day is taken (31 August and 6 months is 28 or 29 February).",
    ),
    offsetDays: days("Days after those months; none when absent."),
    windowDaysBefore: days("The step opens this many days before it is due."),
    windowDaysAfter: days("It closes this many days after it is due."),
    measures: listOf(MEASURES, "What is measured in both eyes; empty for a decision."),
    measuresOnAtropine: listOf(MEASURES, "Asked for as well in an eye on atropine."),
    inForce: listOf(IN_FORCE, "What must be in force at an examination of a child on treatment."),
    restartsOnChange: {
      type: "boolean",
      description:
        "Whether it is owed again, counted from the change, after a change of strength (of the treatments in onlyFor, if any).",
    },
    onlyFor: {
      ...listOf(
        TREATMENT_KINDS.filter((kind) => kind !== "none"),
        "Owed only while one of these is given; whatever is given when absent.",
      ),
      minItems: 1,
    },
    decides: oneOf(DECIDES, "For a decision: what it settles."),
    nightsPerWeek: whole(6, "For a step down: the nights of the week with a drop from then on.", 1),
  },
  allOf: [
    {
      if: { properties: { kind: { const: "decision" } } },
      // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
      then: {
        required: ["decides"],
        properties: {
          measures: { type: "array", maxItems: 0 },
          restartsOnChange: { const: false },
          anchor: { enum: ["start", "restart", "stop"] },
        },
      },
      else: {
        anyOf: [
          { properties: { measures: { type: "array", minItems: 1 } } },
          { properties: { measuresOnAtropine: { type: "array", minItems: 1 } } },
        ],
      },
    },
    {
      if: anchorIs("^before-start$"),
      // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
      then: { properties: { offsetMonths: { const: 0 }, offsetDays: { const: 0 } } },
    },
    {
      if: anchorIs("^last-visit"),
      // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
      then: { properties: { offsetMonths: { type: "integer", minimum: 1 } } },
    },
    {
      if: decidesIs("step-down"),
      // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
      then: { required: ["nightsPerWeek"], properties: { anchor: { enum: ["start", "restart"] } } },
      else: { properties: { nightsPerWeek: false } },
    },
  ],
}

/**
 * JSON Schema of a protocol, draft 2020-12. It says all that `protocolProblems` says, except that ids are unlike each
 * other, which no schema can.
 */
export const protocolJsonSchema = {
  $schema: "https://json-schema.org/draft/2020-12/schema",
  $id: "urn:lengthwise:protocol:1",
  title: "Lengthwise protocol",
  description: "What is examined and decided, when, and what must be in force.",
  type: "object",
  additionalProperties: false,
  required: [
    "id",
    "title",
    "version",
    "source",
    "longestPauseDays",
    "consentLeadDays",
    "bottleLeadDays",
    "bottleDaysAfterOpening",
    "steps",
  ],
  properties: {
    id: text(
      "Named by a child that follows it; one that ships is replaced by a practice's own of the same id.",
    ),
    title: text("What a person reads."),
    version: text("Changes with every edit."),
    source: text('Where the intervals come from, such as "common practice, no source".'),
    longestPauseDays: days("A gap in treatment of up to this many days is a pause; a longer one is a stop."),
    consentLeadDays: days("A consent is asked for this many days before the treatment begins."),
    bottleLeadDays: days("The next bottle is asked for this many days before the last one ends."),
    bottleDaysAfterOpening: days("Days of use after opening where the pharmacy gave no beyond-use date."),
    steps: { type: "array", minItems: 1, items: step },
  },
} as const
