import { z } from "zod"
import { say } from "../../engine/say.js"

export const logInBody = z.object({
  name: z
    .string({ error: () => say("the log-in name") })
    .min(1, { error: () => say("the log-in name") })
    .max(200),
  password: z
    .string({ error: () => say("the password") })
    .min(1, { error: () => say("the password") })
    .max(256),
})

export const sessionAnswer = z.object({
  person: z.object({ id: z.string(), name: z.string(), role: z.enum(["clinician"]) }),
})

/** The length asked for is NIST SP 800-63B-4 for a password that is the only factor, read in a secondary summary. */
export const SHORTEST_PASSWORD = 15
export const LONGEST_PASSWORD = 256

export const passwordBody = z.object({
  current: z.string({ error: () => say("the password in use") }).max(LONGEST_PASSWORD),
  next: z.string({
    error: () => say("{least} to {most} characters", { least: SHORTEST_PASSWORD, most: LONGEST_PASSWORD }),
  }),
})

export type SessionAnswer = z.infer<typeof sessionAnswer>
