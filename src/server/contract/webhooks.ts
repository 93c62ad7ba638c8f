import { z } from "zod"
import {
  DELIVERY_PROBLEMS,
  DELIVERY_STATES,
  WEBHOOK_EVENTS,
  WEBHOOK_STATES,
} from "../../engine/access/webhook-events.js"
import { say } from "../../engine/say.js"

const instant = z.iso.datetime()
const URL_AT_MOST = 2000
const uuid = z.uuid({ error: () => say("a UUID") })
const eventNeeded = () => say("one or more of {list}", { list: WEBHOOK_EVENTS.join(", ") })

export const DELIVERIES_PAGE = 50
/** More receivers than a practice has programs. Ours; common practice, no source. */
export const MOST_WEBHOOKS = 20

/** An address that is told of what is new. */
export const newWebhookBody = z.object({
  url: z
    .string({ error: () => say("an address such as https://program.example/news") })
    .trim()
    .max(URL_AT_MOST, { error: () => say("at most {most} characters", { most: URL_AT_MOST }) })
    .describe("https, or http on this machine itself"),
  events: z
    .array(z.enum(WEBHOOK_EVENTS, { error: eventNeeded }), { error: eventNeeded })
    .min(1, { error: eventNeeded })
    .max(WEBHOOK_EVENTS.length, { error: eventNeeded }),
})

export const webhookParams = z.object({ webhookId: uuid })
export const webhookStateBody = z.object({
  state: z.enum(["on", "off"], { error: () => say("one of {list}", { list: "on, off" }) }),
})

export const webhooksAnswer = z.object({
  webhooks: z.array(
    z.object({
      id: z.string(),
      url: z.string(),
      events: z.array(z.enum(WEBHOOK_EVENTS)),
      state: z.enum(WEBHOOK_STATES).describe("disabled: turned off by the program after failures"),
      failures: z.int().describe("Failed attempts in a row"),
      pausedUntil: instant.nullable().describe("Nothing is sent before"),
      createdAt: instant,
      createdBy: z.string(),
      changedAt: instant,
      changedBy: z.string().nullable().describe("Name of the person; null for the program"),
      waiting: z.int(),
      delivered: z.int(),
      failed: z.int().describe("Deliveries given up"),
    }),
  ),
})

export const addWebhookAnswer = webhooksAnswer.extend({
  secret: z.string().describe("Signs what is sent; told this once"),
})

export const lookAnswer = z.object({
  planned: z.int().describe("News found"),
  delivered: z.int(),
  failed: z.int().describe("Attempts that failed; what can be is sent again later"),
})

export const deliveriesQuery = z.object({
  search: z
    .string()
    .max(200, { error: () => say("at most {most} characters", { most: 200 }) })
    .default("")
    .describe("Child, address, event or the delivery's id"),
  state: z
    .enum(DELIVERY_STATES, { error: () => say("one of {list}", { list: DELIVERY_STATES.join(", ") }) })
    .optional(),
  page: z.coerce
    .number({ error: () => say("a page number from 1") })
    .pipe(z.int().min(1).max(100_000))
    .default(1),
})

export const deliveryParams = z.object({ deliveryId: uuid })

export const deliveriesAnswer = z.object({
  total: z.int(),
  page: z.int(),
  pageSize: z.int(),
  deliveries: z.array(
    z.object({
      id: z.string().describe("The same at every attempt"),
      url: z.string(),
      event: z.enum(WEBHOOK_EVENTS),
      child: z.object({ id: z.string(), name: z.string() }).nullable(),
      state: z.enum(DELIVERY_STATES),
      attempts: z.int(),
      nextAttemptAt: instant.nullable(),
      status: z.int().nullable().describe("HTTP status of the last answer"),
      problem: z.enum(DELIVERY_PROBLEMS).nullable(),
      createdAt: instant,
      changedAt: instant,
      changedBy: z.string().nullable(),
    }),
  ),
})

export type NewWebhookBody = z.input<typeof newWebhookBody>
export type WebhooksAnswer = z.infer<typeof webhooksAnswer>
export type AddWebhookAnswer = z.infer<typeof addWebhookAnswer>
export type NewsLookAnswer = z.infer<typeof lookAnswer>
export type DeliveriesQuery = z.input<typeof deliveriesQuery>
export type DeliveriesAnswer = z.infer<typeof deliveriesAnswer>
