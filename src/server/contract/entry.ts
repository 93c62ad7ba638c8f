import { z } from "zod"
import { say } from "../../engine/say.js"
import {
  concernFields,
  consentFields,
  decisionFields,
  explanationFields,
  missedNightsFields,
  orderFields,
  paymentFields,
  refractionFields,
  supplyFields,
  treatmentFields,
  visitFields,
} from "./course-pieces.js"
import { sha256Field } from "./files.js"

const uuid = z.uuid({ error: () => say("a UUID") }).toLowerCase()

/** An entry's id, when the client makes it: the same request sent twice is then recorded once. */
export const entryIdField = uuid.nullish().describe("Makes a repeated request harmless: one id is one entry")
export const reasonField = z
  .string({ error: () => say("why it is corrected, in words") })
  .trim()
  .min(1, { error: () => say("why it is corrected, in words") })
  .max(500, { error: () => say("at most {most} characters", { most: 500 }) })

export const visitBody = visitFields.extend({ id: entryIdField })
export const visitCorrectionBody = z.object({ visit: visitFields, reason: reasonField, id: entryIdField })

/** Earlier prescriptions, each kept as a visit with nothing but its refractions. */
export const glassesBody = z
  .array(
    z
      .object({
        date: visitFields.shape.date,
        right: refractionFields,
        left: refractionFields,
        from: visitFields.shape.from,
        id: entryIdField,
      })
      .refine(({ right, left }) => right || left, {
        error: () => say("a prescription for at least one eye"),
      }),
    { error: () => say("a list [ ... ]") },
  )
  .min(1, { error: () => say("at least one prescription") })
  .max(40, { error: () => say("at most 40 prescriptions") })

export const treatmentBody = treatmentFields.extend({ id: entryIdField })
export const treatmentEndBody = z.object({
  to: z.iso.date({ error: () => say("a day of the calendar written YYYY-MM-DD") }),
  reason: reasonField.nullish(),
})
/** Another strength or another treatment in place of the running one. `id` is the entry of what starts. */
export const treatmentChangeBody = z.object({
  to: treatmentFields.shape.from.describe("The day the new one starts: the first without the old one"),
  kind: treatmentFields.shape.kind,
  concentrationPercent: treatmentFields.shape.concentrationPercent,
  reason: reasonField.nullish(),
  id: entryIdField,
})
export const supplyBody = supplyFields.extend({ id: entryIdField })
export const signatureField = z.discriminatedUnion(
  "kind",
  [
    z.object({
      kind: z.enum(["drawn", "scan"]),
      file: sha256Field.describe("SHA-256 of the drawing or the scan, stored before by POST /api/files"),
    }),
    z.object({
      kind: z.literal("typed"),
      name: z
        .string({ error: () => say("the name as it was typed") })
        .trim()
        .min(1, { error: () => say("the name as it was typed") })
        .max(200, { error: () => say("at most {most} characters", { most: 200 }) }),
    }),
  ],
  { error: () => say("drawn, scan or typed") },
)
export const consentBody = consentFields.extend({
  id: entryIdField,
  signature: signatureField.nullish().describe("How it was signed, where it was signed here"),
})
export const missedNightsBody = missedNightsFields.extend({ id: entryIdField })
export const decisionBody = decisionFields.extend({ id: entryIdField })
export const concernBody = concernFields.extend({ id: entryIdField })
export const orderBody = orderFields.extend({ id: entryIdField })
export const explanationBody = explanationFields.extend({ id: entryIdField })
export const paymentBody = paymentFields.extend({ id: entryIdField })
/** The whole entry as it shall stand, in the fields of the course file, in place of the one named. */
export const amendmentBody = z.object({
  fields: z.record(z.string(), z.unknown(), { error: () => say("an object '{' ... '}'") }),
  reason: reasonField,
  id: entryIdField,
})
export const withdrawalBody = z.object({ reason: reasonField })

export const childParams = z.object({ id: uuid })
export const entryParams = z.object({ id: uuid, entryId: uuid })

export type VisitBody = z.input<typeof visitBody>
export type VisitCorrectionBody = z.input<typeof visitCorrectionBody>
export type GlassesBody = z.input<typeof glassesBody>
export type TreatmentBody = z.input<typeof treatmentBody>
export type TreatmentEndBody = z.input<typeof treatmentEndBody>
export type TreatmentChangeBody = z.input<typeof treatmentChangeBody>
export type SupplyBody = z.input<typeof supplyBody>
export type ConsentBody = z.input<typeof consentBody>
export type MissedNightsBody = z.input<typeof missedNightsBody>
export type ConcernBody = z.input<typeof concernBody>
export type OrderBody = z.input<typeof orderBody>
export type ExplanationBody = z.input<typeof explanationBody>
export type PaymentBody = z.input<typeof paymentBody>
export type AmendmentBody = z.input<typeof amendmentBody>
export type WithdrawalBody = z.input<typeof withdrawalBody>
