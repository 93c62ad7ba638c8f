import { randomBytes } from "node:crypto"
import type { Kysely, Updateable } from "kysely"
import { WEBHOOK_EVENTS, type WebhookEvent, type WebhookState } from "../engine/access/webhook-events.js"
import type { Tables } from "./tables.js"
import type { WebhooksTable } from "./token-tables.js"
import { deliveries } from "./webhook-deliveries.js"

export interface Webhook {
  readonly id: string
  readonly url: string
  readonly events: readonly WebhookEvent[]
  readonly state: WebhookState
  /** Failed attempts in a row. */
  readonly failures: number
  /** ISO instant before which nothing is sent; null for at once. */
  readonly pausedUntil: string | null
  readonly createdAt: string
  readonly createdBy: string
  readonly changedAt: string
  /** Id of the person who brought it into its state; null for the program. */
  readonly changedBy: string | null
}

export interface NewWebhook {
  readonly url: string
  readonly events: readonly WebhookEvent[]
  readonly by: string
  readonly at: string
}

/** What was last told of a child, and from what it was read. */
export interface Told {
  readonly child: string
  readonly readFrom: string
  readonly told: unknown
}

/** The addresses one practice has told of what is new, and everything they are told. */
export function webhooks(queries: Kysely<Tables>, practice: string) {
  const rows = () =>
    queries
      .selectFrom("webhooks")
      .selectAll()
      .where("practice", "=", practice)
      .where("state", "<>", "removed")
      .orderBy("created_at")
      .orderBy("id")
  const set = (id: string, change: Updateable<WebhooksTable>) =>
    queries.updateTable("webhooks").set(change).where("practice", "=", practice).where("id", "=", id)

  return {
    deliveries: deliveries(queries, practice),

    /** Adds an address. This answer alone holds the secret by which it knows what comes from here. */
    async add({ url, events, by, at }: NewWebhook) {
      const row: WebhooksTable = {
        practice,
        id: crypto.randomUUID(),
        url,
        events: JSON.stringify(WEBHOOK_EVENTS.filter((event) => events.includes(event))),
        secret: randomBytes(32).toString("base64url"),
        state: "on",
        failures: 0,
        paused_until: null,
        created_at: at,
        created_by: by,
        changed_at: at,
        changed_by: by,
      }
      await queries.insertInto("webhooks").values(row).execute()
      return { secret: row.secret, webhook: webhookOf(row) }
    },

    list: async (): Promise<readonly Webhook[]> => (await rows().execute()).map(webhookOf),

    /** An address with the secret that signs what it is sent. */
    async withSecret(id: string) {
      const row = await rows().where("id", "=", id).executeTakeFirst()
      return row ? { webhook: webhookOf(row), secret: row.secret } : null
    },

    /** Turns an address on or off, or takes it away for good; what was told stays on record. */
    async setState(change: {
      readonly id: string
      readonly from: readonly WebhookState[]
      readonly state: WebhookState
      readonly at: string
      readonly by: string | null
    }): Promise<boolean> {
      const { id, from, state, at, by } = change
      const { numUpdatedRows } = await set(id, {
        state,
        changed_at: at,
        changed_by: by,
        // What happened before is no reason to wait once a person turns it on.
        ...(state === "on" ? { failures: 0, paused_until: null } : {}),
      })
        .where("state", "in", from)
        .executeTakeFirst()
      return numUpdatedRows > 0n
    },

    /** An answer that was fit to be had ends the row of failures. */
    succeeded: async (id: string): Promise<void> => {
      await set(id, { failures: 0, paused_until: null }).where("failures", ">", 0).execute()
    },

    failed: async (failure: {
      readonly id: string
      readonly failures: number
      readonly pausedUntil: string
    }) => {
      const { id, failures, pausedUntil } = failure
      await set(id, { failures, paused_until: pausedUntil }).execute()
    },

    async toldOf(child: string): Promise<Told | null> {
      const row = await queries
        .selectFrom("webhook_told")
        .selectAll()
        .where("practice", "=", practice)
        .where("child", "=", child)
        .executeTakeFirst()
      return row ? { child, readFrom: row.read_from, told: JSON.parse(row.told) as unknown } : null
    },

    /** What was last told, by child; of the practice itself under its own id. */
    async told(): Promise<ReadonlyMap<string, Told>> {
      const found = await queries
        .selectFrom("webhook_told")
        .selectAll()
        .where("practice", "=", practice)
        .execute()
      return new Map(
        found.map(({ child, read_from, told }) => [
          child,
          { child, readFrom: read_from, told: JSON.parse(told) as unknown },
        ]),
      )
    },

    /** Ids of what waits in the Inbox for a person. */
    async waitingInInbox(): Promise<readonly string[]> {
      const found = await queries
        .selectFrom("inbox")
        .select("id")
        .where("practice", "=", practice)
        .where("state", "=", "waiting")
        .orderBy("id")
        .execute()
      return found.map(({ id }) => id)
    },

    /** Nothing is compared while nobody is told: whoever comes next begins with what is then. */
    forgetTold: async (): Promise<void> => {
      await queries.deleteFrom("webhook_told").where("practice", "=", practice).execute()
    },
  }
}

function webhookOf(row: WebhooksTable): Webhook {
  return {
    id: row.id,
    url: row.url,
    events: JSON.parse(row.events) as readonly WebhookEvent[],
    state: row.state as WebhookState,
    failures: row.failures,
    pausedUntil: row.paused_until,
    createdAt: row.created_at,
    createdBy: row.created_by,
    changedAt: row.changed_at,
    changedBy: row.changed_by,
  }
}
