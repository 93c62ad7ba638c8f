import { z } from "zod"
import { say } from "../../engine/say.js"
import { decisionFields, treatmentFields } from "./course-pieces.js"
import { entryIdField } from "./entry.js"

const reason = z
  .string({ error: () => say("why, in words") })
  .trim()
  .min(1, { error: () => say("why, in words") })
  .max(2000, { error: () => say("text of at most {most} characters", { most: 2000 }) })

/** What a decision asks of the treatments, apart from how it is recorded. */
export const decidePlanFields = z.object({
  kind: decisionFields.shape.kind,
  treatments: z
    .array(decisionFields.shape.treatment.unwrap().unwrap(), { error: () => say("a list [ ... ]") })
    .max(2, { error: () => say("at most two treatments, and only those studied together") })
    .nullish()
    .describe("What is to be given from then on"),
  from: treatmentFields.shape.from
    .nullish()
    .describe("First day on which it holds; the day of the decision when absent"),
  ends: z
    .array(z.uuid({ error: () => say("the id of a treatment entry") }).toLowerCase(), {
      error: () => say("a list [ ... ]"),
    })
    .nullish()
    .describe("Entries of the treatments it ends, where several are in use"),
  nightsPerWeek: treatmentFields.shape.nightsPerWeek,
})

/** A decision, recorded together with every treatment entry it implies. `id` is the entry of the decision. */
export const decideBody = decidePlanFields.extend({
  date: decisionFields.shape.date,
  reason,
  offered: decisionFields.shape.offered,
  figures: decisionFields.shape.figures,
  id: entryIdField,
})

export type DecideBody = z.input<typeof decideBody>
