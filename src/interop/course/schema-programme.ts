import { z } from "zod"
import {
  ANSWERS,
  ASSENTS,
  CONSENT_FORMS,
  DECISION_KINDS,
  RELATEDNESS,
  SERIOUSNESS,
  TREATMENT_KINDS,
} from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { limits } from "./limits.js"
import {
  date,
  flag,
  list,
  longText,
  object,
  oneOf,
  optional,
  optionalQuantity,
  quantity,
  required,
  text,
} from "./schema-parts.js"

/** What the course file holds of the programme around the measurements: questions, decisions, safety, orders, cost. */

export const strength = (description: string) =>
  optionalQuantity(limits.concentrationPercent, { title: "Concentration, % w/v", description })

export const visitAnswers = optional(
  list(
    object({
      question: required(text(), { title: "Question", description: "Which question, by its id." }),
      answer: required(oneOf(ANSWERS), {
        title: "Answer",
        description: "Yes or present, no or absent, or owed and left out on purpose.",
      }),
      value: optionalQuantity(limits.answerValue, {
        title: "Value",
        description: "In the question's own unit, such as hours a day.",
      }),
      note: optional(longText(), { title: "Note", description: "In words." }),
    }),
  ),
  { title: "Answers", description: "What was asked about or looked at, besides figures." },
)

export const treatmentDetails = {
  eye: optional(oneOf(["right", "left"]), {
    title: "Eye",
    description: "Set where only one eye is treated; both are when absent.",
  }),
  nightsPerWeek: optionalQuantity(limits.nightsPerWeek, {
    title: "Nights per week",
    description: "For a taper: nights of the week with a drop; every night when absent.",
  }),
}

export const supplyDetails = {
  pharmacy: optional(text(), { title: "Pharmacy", description: "Who made it." }),
  preserved: optional(flag(), { title: "Preserved", description: "Whether it holds a preservative." }),
}

export const consentDetails = {
  by: optional(
    object({
      name: optional(text(), { title: "Name", description: "Who gave it." }),
      relation: optional(text(), { title: "Relation", description: "Relation to the child." }),
    }),
    { title: "By", description: "Who gave the consent." },
  ),
  form: optional(oneOf(CONSENT_FORMS), { title: "Form", description: "Signed on screen or on paper." }),
  wording: optional(
    object({
      id: required(text(), { title: "Identifier", description: "Which wording of the practice." }),
      version: required(text(), { title: "Version", description: "Its version." }),
      language: optional(text(), { title: "Language", description: "That it was read in, by BCP 47." }),
      sha256: optional(
        z
          .string({ error: () => say("64 hexadecimal digits") })
          .regex(/^[0-9a-f]{64}$/, { error: () => say("64 hexadecimal digits") }),
        { title: "SHA-256", description: "Of the text that was shown." },
      ),
    }),
    { title: "Wording", description: "What was read." },
  ),
  assent: optional(oneOf(ASSENTS), { title: "Assent", description: "What the child said." }),
  until: optional(date(), {
    title: "Until",
    description: "First day it no longer holds, when it was withdrawn.",
  }),
}

const treatmentChoice = object({
  kind: required(oneOf(TREATMENT_KINDS), { title: "Kind", description: "Kind of treatment." }),
  concentrationPercent: strength("Strength of the drops."),
})

const missedNights = object({
  from: required(date(), { title: "From", description: "First day of the span told of." }),
  to: required(date(), { title: "To", description: "Last day of the span, included." }),
  nights: quantity(limits.nights, { title: "Nights", description: "Nights without a drop." }),
})

const decision = object({
  date: required(date(), { title: "Date", description: "Day of the decision." }),
  kind: required(oneOf(DECISION_KINDS), { title: "Kind", description: "What was decided." }),
  reason: required(longText(), { title: "Reason", description: "Why, in words." }),
  treatment: optional(treatmentChoice, { title: "Treatment", description: "What it is about." }),
  offered: optional(list(text()), {
    title: "Offered",
    description: "The options that were put side by side.",
  }),
  figures: optional(
    list(
      object({
        label: required(text(), { title: "Label", description: "What the figure is." }),
        value: required(text(), { title: "Value", description: "As it was shown." }),
      }),
    ),
    { title: "Figures", description: "What was shown at that moment." },
  ),
})

const safetyConcern = object({
  opened: required(date(), { title: "Opened", description: "Day it was raised." }),
  kind: required(text(), { title: "Kind", description: "Short name of what it is about." }),
  what: required(longText(), { title: "What", description: "In words." }),
  owner: optional(text(), { title: "Owner", description: "Who looks after it." }),
  seriousness: optional(oneOf(SERIOUSNESS), { title: "Seriousness", description: "How serious it is." }),
  relatedness: optional(oneOf(RELATEDNESS), {
    title: "Relatedness",
    description: "Whether the treatment is thought to be the cause.",
  }),
  adverseEvent: optional(flag(), {
    title: "Adverse event",
    description: "Whether it is kept as an unwanted effect of a treatment.",
  }),
  closed: optional(date(), { title: "Closed", description: "Day it was closed." }),
  outcome: optional(longText(), { title: "Outcome", description: "How it ended; needed to close it." }),
})

const bottleOrder = object({
  date: required(date(), { title: "Date", description: "Day of the order." }),
  concentrationPercent: quantity(limits.concentrationPercent, {
    title: "Concentration, % w/v",
    description: "Strength ordered.",
  }),
  bottles: quantity(limits.bottles, { title: "Bottles", description: "How many." }),
  volumeMl: quantity(limits.volumeMl, { title: "Volume, mL", description: "Of one bottle." }),
  stockPercent: optionalQuantity(limits.stockPercent, {
    title: "Stock, % w/v",
    description: "Stock the strength is to be made from.",
  }),
  pharmacy: optional(text(), { title: "Pharmacy", description: "Who makes it." }),
  preserved: optional(flag(), { title: "Preserved", description: "Whether a preservative is wanted." }),
  confirmed: optional(date(), {
    title: "Confirmed",
    description: "Day the pharmacy said that it would make it.",
  }),
  received: optional(date(), { title: "Received", description: "Day the bottles came." }),
  cancelled: optional(date(), { title: "Cancelled", description: "Day it was called off." }),
  override: optional(longText(), {
    title: "Override",
    description: "Why it was ordered although no consent in force covers it.",
  }),
})

const explanation = object({
  date: required(date(), { title: "Date", description: "Day the family was told." }),
  to: optional(text(), { title: "To", description: "Who was told." }),
})

const payment = object({
  date: required(date(), { title: "Date", description: "Day it was paid." }),
  cents: quantity(limits.cents, { title: "Cents", description: "In the smallest unit of the currency." }),
  currency: required(
    z
      .string({ error: () => say("an ISO 4217 code such as EUR") })
      .regex(/^[A-Z]{3}$/, { error: () => say("an ISO 4217 code such as EUR") }),
    { title: "Currency", description: "ISO 4217." },
  ),
  what: optional(text(), { title: "What", description: "What was paid for." }),
})

export const programmeLists = {
  missedNights: optional(list(missedNights), {
    title: "Missed nights",
    description: "Nights without a drop that the family told of.",
  }),
  decisions: optional(list(decision), { title: "Decisions", description: "What was decided and why." }),
  concerns: optional(list(safetyConcern), {
    title: "Concerns",
    description: "What somebody has to look after until it is closed.",
  }),
  orders: optional(list(bottleOrder), { title: "Orders", description: "Bottles asked of a pharmacy." }),
  explanations: optional(list(explanation), {
    title: "Explanations",
    description: "When the family was told what was found.",
  }),
  payments: optional(list(payment), { title: "Payments", description: "What the family paid." }),
}
