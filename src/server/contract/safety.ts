import { z } from "zod"
import { RELATEDNESS, SERIOUSNESS } from "../../engine/course.js"
import { say } from "../../engine/say.js"

const day = z.iso.date()
const asked = z.iso.date({ error: () => say("a day of the calendar written YYYY-MM-DD") })

export const adverseEventsQuery = z.object({
  from: asked.optional().describe("First day on which an event may have been opened"),
  to: asked.optional().describe("Last day"),
  format: z.enum(["json", "csv"], { error: () => say("json or csv") }).default("json"),
  names: z
    .enum(["yes", "no"], { error: () => say("yes or no") })
    .default("no")
    .describe("Whether the children's names are told beside their numbers"),
})

const adverseEvent = z.object({
  child: z.string().nullable().describe("The practice's number for the child"),
  name: z.string().optional(),
  opened: day,
  closed: day.nullable(),
  kind: z.string(),
  what: z.string(),
  seriousness: z.enum(SERIOUSNESS).nullable(),
  relatedness: z.enum(RELATEDNESS).nullable(),
  outcome: z.string().nullable(),
  owner: z.string().nullable(),
  treatment: z.string().nullable().describe("In use on the day it was opened, in words"),
  treatmentSince: day.nullable(),
  concentrationPercent: z.number().nullable(),
  lot: z.string().nullable().describe("Of the bottle in use that day"),
  pharmacy: z.string().nullable(),
  bottleOpened: day.nullable(),
  bottleBeyondUse: day.nullable(),
})

/** As JSON, or the same as text of a table. */
export const adverseEventsAnswer = z.union([
  z.object({
    from: day.nullable(),
    to: day.nullable(),
    children: z.int().describe("Children looked through"),
    events: z.array(adverseEvent),
  }),
  z.string().describe("With format=csv: RFC 4180, UTF-8"),
])
