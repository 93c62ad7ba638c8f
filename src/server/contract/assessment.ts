import { z } from "zod"
import type { Assessment } from "../../engine/assessment.js"
import { say } from "../../engine/say.js"

const probability = z.number().min(0).max(1)

/** The parts of an assessment that do not change (design, section 7); it may say more. */
const fixedParts = z.looseObject({
  asOf: z.iso.date(),
  ageYears: z.number(),
  eyes: z.object({ right: z.looseObject({}), left: z.looseObject({}) }),
  finding: z.looseObject({
    state: z.enum(["slowed", "not-slowed", "cannot-tell-yet", "no-treatment"]),
    treatment: z.string().nullable(),
    likelihoodRatio: z.number().nullable(),
    lean: z.enum(["slowed", "not-slowed"]).nullable(),
    upper: z.number(),
    lower: z.number(),
    earliestAnswer: z.iso.date().nullable(),
  }),
  growth: z.looseObject({
    state: z.enum(["near-normal", "slowed-growth", "as-untreated", "faster", "unclear"]),
    mmPerYear: z.number().nullable(),
  }),
  chances: z.array(z.looseObject({ review: z.iso.date(), ifItWorks: probability, ifNot: probability })),
  concerns: z.array(z.looseObject({ kind: z.string(), why: z.string() })),
  checks: z.array(z.looseObject({ kind: z.string(), path: z.string(), why: z.string() })),
  method: z.looseObject({ version: z.string(), parameters: z.string() }),
})

export const assessmentAnswer = fixedParts as unknown as z.ZodType<Assessment>
export const assessmentQuery = z.object({
  asOf: z.iso.date({ error: () => say("a day of the calendar written YYYY-MM-DD") }).optional(),
})
