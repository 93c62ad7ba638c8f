import { z } from "zod"
import { SCOPES } from "../../engine/access/scopes.js"
import { say } from "../../engine/say.js"
import {
  addWebhookAnswer,
  deliveriesAnswer,
  deliveriesQuery,
  deliveryParams,
  lookAnswer,
  newWebhookBody,
  webhookParams,
  webhookStateBody,
  webhooksAnswer,
} from "./webhooks.js"

const instant = z.iso.datetime()

/** Two years; whoever still needs the token then makes a new one. Common practice, no source. */
export const MOST_TOKEN_DAYS = 731
export const USUAL_TOKEN_DAYS = 365
const NAME_AT_MOST = 80

const wholeDays = () => say("a whole number of days from 1 to {most}", { most: MOST_TOKEN_DAYS })
const scopeNeeded = () => say("one or more of {list}", { list: SCOPES.join(", ") })

/** A key of another program. */
export const newTokenBody = z.object({
  name: z
    .string({ error: () => say("a name") })
    .trim()
    .min(1, { error: () => say("a name") })
    .max(NAME_AT_MOST, { error: () => say("at most {most} characters", { most: NAME_AT_MOST }) })
    .describe("Which program it is for"),
  scopes: z
    .array(z.enum(SCOPES, { error: scopeNeeded }), { error: scopeNeeded })
    .min(1, { error: scopeNeeded })
    .max(SCOPES.length, { error: scopeNeeded }),
  days: z
    .int({ error: wholeDays })
    .min(1, { error: wholeDays })
    .max(MOST_TOKEN_DAYS, { error: wholeDays })
    .default(USUAL_TOKEN_DAYS)
    .describe("How long it opens"),
})

export const tokenParams = z.object({ tokenId: z.uuid({ error: () => say("a UUID") }) })

export const tokensAnswer = z.object({
  tokens: z.array(
    z.object({
      id: z.string(),
      name: z.string(),
      ending: z.string().describe("Its last four characters"),
      scopes: z.array(z.enum(SCOPES)),
      createdAt: instant,
      createdBy: z.string().describe("Name of the person whose name stands beside what it records"),
      expiresAt: instant,
      lastUsedAt: instant.nullable().describe("To the hour"),
      state: z.enum(["open", "expired", "revoked"]),
      revokedAt: instant.nullable(),
      revokedBy: z.string().nullable(),
    }),
  ),
})

export const addTokenAnswer = tokensAnswer.extend({
  secret: z.string().describe("The token itself, told this once; only its hash is kept"),
})

/** Keys of other programs, and where they are told of what is new. */
export const tokensApi = {
  tokens: { method: "GET", url: "/api/tokens", answer: tokensAnswer },
  addToken: { method: "POST", url: "/api/tokens", body: newTokenBody, answer: addTokenAnswer },
  revokeToken: {
    method: "DELETE",
    url: "/api/tokens/:tokenId",
    params: tokenParams,
    answer: tokensAnswer,
  },

  webhooks: { method: "GET", url: "/api/webhooks", answer: webhooksAnswer },
  addWebhook: { method: "POST", url: "/api/webhooks", body: newWebhookBody, answer: addWebhookAnswer },
  /** Turns an address on or off. */
  setWebhook: {
    method: "POST",
    url: "/api/webhooks/:webhookId/state",
    params: webhookParams,
    body: webhookStateBody,
    answer: webhooksAnswer,
  },
  removeWebhook: {
    method: "DELETE",
    url: "/api/webhooks/:webhookId",
    params: webhookParams,
    answer: webhooksAnswer,
  },
  lookForNews: { method: "POST", url: "/api/webhooks/look", answer: lookAnswer },
  deliveries: {
    method: "GET",
    url: "/api/webhooks/deliveries",
    query: deliveriesQuery,
    answer: deliveriesAnswer,
  },
  /** Sends what was delivered or given up once more, under the same id. */
  deliverAgain: {
    method: "POST",
    url: "/api/webhooks/deliveries/:deliveryId/again",
    params: deliveryParams,
    answer: deliveriesAnswer,
  },
} as const

export type NewTokenBody = z.input<typeof newTokenBody>
export type TokensAnswer = z.infer<typeof tokensAnswer>
export type AddTokenAnswer = z.infer<typeof addTokenAnswer>
