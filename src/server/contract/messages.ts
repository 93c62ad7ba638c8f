import { z } from "zod"
import { CHANNELS } from "../../engine/messages/family-contact.js"
import { MESSAGE_PROBLEMS, MESSAGE_STATES } from "../../engine/messages/message-states.js"
import { MESSAGE_KINDS } from "../../engine/messages/planned-messages.js"
import { LANGUAGES, say } from "../../engine/say.js"

const day = z.iso.date()
const instant = z.iso.datetime()

export const SERVER_PROBLEMS = ["unreachable", "no-tls", "log-in-refused", "sender-refused"] as const

export const MESSAGES_PAGE = 50

export const messagesQuery = z.object({
  search: z
    .string()
    .max(200, { error: () => say("at most {most} characters", { most: 200 }) })
    .default(""),
  state: z
    .enum(MESSAGE_STATES, { error: () => say("one of {list}", { list: MESSAGE_STATES.join(", ") }) })
    .optional(),
  page: z.coerce
    .number({ error: () => say("a page number from 1") })
    .pipe(z.int().min(1).max(100_000))
    .default(1),
})

const child = z.object({ id: z.string(), name: z.string(), number: z.string().nullable() })

const messageRow = z.object({
  id: z.string(),
  child,
  kind: z.enum(MESSAGE_KINDS),
  channel: z.enum(CHANNELS),
  to: z.string(),
  name: z.string().describe("Of the family's contact"),
  language: z.enum(LANGUAGES),
  due: day.describe("The day it is about"),
  state: z.enum(MESSAGE_STATES),
  problem: z.enum(MESSAGE_PROBLEMS).nullable(),
  reply: z.string().nullable().describe("What the mail server said"),
  attempts: z.int(),
  nextAttemptAt: instant.nullable(),
  changedAt: instant,
  changedBy: z.string().nullable().describe("Name of the person; null for the program"),
  list: z.string().nullable().describe("The exported list it was handed over in"),
})

const health = z.object({
  isOn: z.boolean().describe("Whether the practice has turned messages on"),
  server: z.string().nullable().describe("Host and port; null where no mail server was named at the start"),
  isQuiet: z.boolean(),
  quietTo: z.string().nullable(),
  lastLookAt: instant.nullable(),
  lastAcceptedAt: instant.nullable(),
  failure: z.object({ at: instant, problem: z.enum(SERVER_PROBLEMS), reply: z.string() }).nullable(),
  nextAttemptAt: instant.nullable(),
})

export const messagesAnswer = z.object({
  total: z.int(),
  page: z.int(),
  pageSize: z.int(),
  counts: z.record(z.enum(MESSAGE_STATES), z.int()),
  toHandOver: z.object({ sms: z.int(), post: z.int() }),
  messages: z.array(messageRow),
  health,
})

export const messageParams = z.object({ messageId: z.uuid({ error: () => say("a UUID") }) })

/** One message with all it says and every state it was in. */
export const messageAnswer = messageRow.extend({
  subject: z.string(),
  text: z.string(),
  messageId: z.string(),
  createdAt: instant,
  events: z.array(
    z.object({
      state: z.enum(MESSAGE_STATES),
      at: instant,
      by: z.string().nullable(),
      problem: z.enum(MESSAGE_PROBLEMS).nullable(),
      reply: z.string().nullable(),
    }),
  ),
})

/** What a person decides about a message of which nobody can know whether it arrived. */
export const resolveBody = z.object({
  was: z.enum(["sent", "not-sent"], { error: () => say("sent or not-sent") }),
})

export const planAnswer = z.object({
  today: day,
  until: day,
  total: z.int().describe("Messages planned until then; at most 200 of them are listed"),
  messages: z.array(
    z.object({
      key: z.string(),
      child,
      kind: z.enum(MESSAGE_KINDS),
      channel: z.enum(CHANNELS),
      name: z.string(),
      language: z.enum(LANGUAGES),
      on: day,
      due: day,
    }),
  ),
})

export const lookAnswer = z.object({
  added: z.int(),
  cancelled: z.int(),
  sent: z.int(),
  putOff: z.int(),
  refused: z.int(),
  unknown: z.int(),
  held: z.enum(["off", "quiet", "no-server", "server-down"]).nullable(),
})

export const testMailBody = z.object({
  to: z
    .email({ error: () => say("an e-mail address") })
    .max(254, { error: () => say("at most {most} characters", { most: 254 }) }),
})
export const testMailAnswer = z.object({
  outcome: z.enum(["accepted", "put-off", "refused", "not-now", "no-answer"]),
  problem: z.enum(SERVER_PROBLEMS).nullable(),
  reply: z.string(),
})

export const newListBody = z.object({ channel: z.enum(["sms", "post"], { error: () => say("sms or post") }) })
export const newListAnswer = z.object({ list: z.string().nullable(), count: z.int() })
export const listParams = z.object({ list: z.uuid({ error: () => say("a UUID") }) })
export const listText = z.string().describe("RFC 4180, UTF-8")
export const takenBackAnswer = z.object({ count: z.int() })

export type MessagesAnswer = z.infer<typeof messagesAnswer>
export type MessageRow = z.infer<typeof messageRow>
export type MessageAnswer = z.infer<typeof messageAnswer>
export type PlanAnswer = z.infer<typeof planAnswer>
export type LookAnswer = z.infer<typeof lookAnswer>
export type TestMailAnswer = z.infer<typeof testMailAnswer>
export type NewListAnswer = z.infer<typeof newListAnswer>
