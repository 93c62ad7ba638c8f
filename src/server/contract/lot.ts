import { z } from "zod"
import { say } from "../../engine/say.js"

export const lotParams = z.object({
  lot: z
    .string({ error: () => say("a lot") })
    .trim()
    .min(1, { error: () => say("a lot") })
    .max(200, { error: () => say("at most {most} characters", { most: 200 }) }),
})

const day = z.iso.date().nullable()

export const lotAnswer = z
  .object({
    lot: z.string(),
    children: z.array(
      z.object({
        id: z.string(),
        name: z.string(),
        number: z.string().nullable(),
        bottles: z.array(
          z.object({
            dispensed: day,
            opened: day,
            beyondUse: day,
            concentrationPercent: z.number().nullable(),
            pharmacy: z.string().nullable(),
          }),
        ),
      }),
    ),
  })
  .describe("The children who had a bottle of this lot, by name")

export type LotAnswer = z.infer<typeof lotAnswer>
