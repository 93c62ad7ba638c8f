import { z } from "zod"
import { practiceRules } from "./rules.js"

export const practiceAnswer = z.object({
  name: z.string(),
  latitude: z.number().nullable().describe("Degrees north"),
  today: z.iso.date().describe("The practice's day, for everything that is counted from today"),
  settings: z
    .object({
      alpha: z.number(),
      beta: z.number(),
      certainty: z.number(),
      cuts: z.object({ nearNormal: z.number(), slowed: z.number(), asUntreated: z.number() }),
      settingFactor: z.number(),
    })
    .describe("The settings in force: the practice's own, the defaults where it has set none"),
  rules: practiceRules,
})

export const healthAnswer = z.object({ status: z.literal("ok") })

export type PracticeAnswer = z.infer<typeof practiceAnswer>
