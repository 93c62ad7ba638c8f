import { type Kysely, sql } from "kysely"
import type { DeliveryProblem, DeliveryState, WebhookEvent } from "../engine/access/webhook-events.js"
import type { Tables } from "./tables.js"
import type { WebhookDeliveriesTable } from "./token-tables.js"

export interface WebhookDelivery {
  /** What the receiver knows it by, the same at every attempt. */
  readonly id: string
  readonly webhook: string
  readonly event: WebhookEvent
  /** Null for what is about no child. */
  readonly child: string | null
  /** JSON as it is sent. */
  readonly body: string
  readonly state: DeliveryState
  readonly attempts: number
  readonly nextAttemptAt: string | null
  /** HTTP status of the last answer. */
  readonly status: number | null
  readonly problem: DeliveryProblem | null
  readonly createdAt: string
  readonly changedAt: string
  readonly changedBy: string | null
}

export type NewDelivery = Pick<WebhookDelivery, "id" | "webhook" | "event" | "child" | "body"> & {
  readonly key: string
}

export interface DeliveryChange {
  readonly id: string
  /** The change is made only from one of these states. */
  readonly from: readonly DeliveryState[]
  readonly state: DeliveryState
  readonly at: string
  readonly by?: string | undefined
  readonly attempts?: number | undefined
  readonly status?: number | undefined
  readonly problem?: DeliveryProblem | undefined
  readonly nextAttemptAt?: string | undefined
}

export interface DeliveryQuery {
  /** Looks at the child's name and number, the address and the delivery's id. */
  readonly search?: string | undefined
  readonly state?: DeliveryState | undefined
  readonly page: number
  readonly pageSize: number
}

/** What was read of one child and what is to be told of it; together or not at all. */
export interface Telling {
  readonly child: string
  readonly readFrom: string
  readonly told: unknown
  readonly deliveries: readonly NewDelivery[]
}

const UNDER_WAY = ["waiting", "sending"] as const

/** Everything that addresses are told: planned once, on the disk before it is sent, in order for each child. */
export function deliveries(queries: Kysely<Tables>, practice: string) {
  const rows = () => queries.selectFrom("webhook_deliveries").selectAll().where("practice", "=", practice)

  const change = async (wanted: DeliveryChange): Promise<boolean> => {
    const { id, from, state, at, by, attempts, status, problem, nextAttemptAt } = wanted
    const { numUpdatedRows } = await queries
      .updateTable("webhook_deliveries")
      .set({
        state,
        changed_at: at,
        changed_by: by ?? null,
        problem: problem ?? null,
        next_attempt_at: nextAttemptAt ?? null,
        ...(attempts === undefined ? {} : { attempts }),
        ...(status === undefined ? {} : { status }),
      })
      .where("practice", "=", practice)
      .where("id", "=", id)
      .where("state", "in", from)
      .executeTakeFirst()
    return numUpdatedRows > 0n
  }

  return {
    /** Keeps what children were read as, with what is told of it. Returns how many deliveries were new. */
    tell: (tellings: readonly Telling[], at: string): Promise<number> =>
      queries.transaction().execute(async (transaction) => {
        const last = await transaction
          .selectFrom("webhook_deliveries")
          .select((select) => select.fn.max("position").as("position"))
          .where("practice", "=", practice)
          .executeTakeFirst()
        let position = last?.position ?? 0
        let added = 0
        for (const { child, readFrom, told, deliveries: planned } of tellings) {
          const kept = { read_from: readFrom, told: JSON.stringify(told) }
          await transaction
            .insertInto("webhook_told")
            .values({ practice, child, ...kept })
            .onConflict((conflict) => conflict.columns(["practice", "child"]).doUpdateSet(kept))
            .execute()
          for (const delivery of planned) {
            const { numInsertedOrUpdatedRows } = await transaction
              .insertInto("webhook_deliveries")
              .values({
                practice,
                position: position + 1,
                ...delivery,
                state: "waiting",
                attempts: 0,
                next_attempt_at: null,
                status: null,
                problem: null,
                created_at: at,
                changed_at: at,
                changed_by: null,
              })
              .onConflict((conflict) => conflict.columns(["practice", "webhook", "key"]).doNothing())
              .executeTakeFirstOrThrow()
            if (!numInsertedOrUpdatedRows) continue
            position++
            added++
          }
        }
        return added
      }),

    /** Brings a delivery into a state, on the disk when this returns; false when it was in none of the states named. */
    change,

    /** Whatever was being sent when a process ended is sent again, under the same id. Only for whoever sends nothing now. */
    interrupted: async (at: string): Promise<number> => {
      const found = await rows().where("state", "=", "sending").execute()
      for (const { id, attempts } of found)
        await change({
          id,
          from: ["sending"],
          state: "waiting",
          problem: "interrupted",
          attempts: attempts + 1,
          at,
        })
      return found.length
    },

    /**
     * What an address is sent next: the first in order that may be sent now. While something about a child waits, nothing
     * later about that child overtakes it.
     */
    next: async (webhook: string, now: string): Promise<WebhookDelivery | null> => {
      const row = await rows()
        .where("webhook", "=", webhook)
        .where("state", "=", "waiting")
        .where((where) =>
          where.or([where("next_attempt_at", "is", null), where("next_attempt_at", "<=", now)]),
        )
        .where(({ not, exists, selectFrom, ref }) =>
          not(
            exists(
              selectFrom("webhook_deliveries as earlier")
                .select("earlier.id")
                .where("earlier.practice", "=", practice)
                .where("earlier.webhook", "=", webhook)
                .where("earlier.state", "in", UNDER_WAY)
                .whereRef("earlier.position", "<", ref("webhook_deliveries.position"))
                .where(sql<boolean>`coalesce(earlier.child, '') = coalesce(webhook_deliveries.child, '')`),
            ),
          ),
        )
        .orderBy("position")
        .limit(1)
        .executeTakeFirst()
      return row ? deliveryOf(row) : null
    },

    delivery: async (id: string): Promise<WebhookDelivery | null> => {
      const row = await rows().where("id", "=", id).executeTakeFirst()
      return row ? deliveryOf(row) : null
    },

    /** What waits for an address that is taken away is sent no more. */
    cancelWaiting: async (gone: { readonly webhook: string; readonly at: string; readonly by: string }) => {
      await queries
        .updateTable("webhook_deliveries")
        .set({ state: "cancelled", problem: "removed", changed_at: gone.at, changed_by: gone.by })
        .where("practice", "=", practice)
        .where("webhook", "=", gone.webhook)
        .where("state", "=", "waiting")
        .execute()
    },

    /** How many deliveries of each address are in each state. */
    counts: async () => {
      const found = await queries
        .selectFrom("webhook_deliveries")
        .select(["webhook", "state", (select) => select.fn.countAll<number>().as("count")])
        .where("practice", "=", practice)
        .groupBy(["webhook", "state"])
        .execute()
      return found.map(({ webhook, state, count }) => ({
        webhook,
        state: state as DeliveryState,
        count: Number(count),
      }))
    },

    /** The latest first. */
    list: async ({ search = "", state, page, pageSize }: DeliveryQuery) => {
      let found = queries
        .selectFrom("webhook_deliveries as delivery")
        .innerJoin("webhooks", (join) =>
          join
            .onRef("webhooks.practice", "=", "delivery.practice")
            .onRef("webhooks.id", "=", "delivery.webhook"),
        )
        .leftJoin("children", (join) =>
          join
            .onRef("children.practice", "=", "delivery.practice")
            .onRef("children.child", "=", "delivery.child"),
        )
        .where("delivery.practice", "=", practice)
      if (state) found = found.where("delivery.state", "=", state)
      for (const word of search.toLowerCase().split(/\s+/).filter(Boolean)) {
        const like = `%${word.replace(/[\\%_]/g, (character) => `\\${character}`)}%`
        found = found.where(
          sql<boolean>`(children.search LIKE ${like} ESCAPE '\\' OR lower(webhooks.url) LIKE ${like} ESCAPE '\\' OR delivery.id LIKE ${like} ESCAPE '\\' OR delivery.event LIKE ${like} ESCAPE '\\')`,
        )
      }
      const [{ total }, shown] = await Promise.all([
        found.select((select) => select.fn.countAll<number>().as("total")).executeTakeFirstOrThrow(),
        found
          .selectAll("delivery")
          .select(["webhooks.url", "children.name as child_name"])
          .orderBy("delivery.position", "desc")
          .limit(pageSize)
          .offset((page - 1) * pageSize)
          .execute(),
      ])
      return {
        total: Number(total),
        deliveries: shown.map((row) => ({ ...deliveryOf(row), url: row.url, childName: row.child_name })),
      }
    },
  }
}

function deliveryOf(row: WebhookDeliveriesTable): WebhookDelivery {
  return {
    id: row.id,
    webhook: row.webhook,
    event: row.event as WebhookEvent,
    child: row.child,
    body: row.body,
    state: row.state as DeliveryState,
    attempts: row.attempts,
    nextAttemptAt: row.next_attempt_at,
    status: row.status,
    problem: row.problem as DeliveryProblem | null,
    createdAt: row.created_at,
    changedAt: row.changed_at,
    changedBy: row.changed_by,
  }
}
