import type { Kysely } from "kysely"
import type { Channel } from "../engine/messages/family-contact.js"
import { MESSAGE_STATES, type MessageProblem, type MessageState } from "../engine/messages/message-states.js"
import type {
  NewOutboxMessage,
  OutboxChange,
  OutboxEvent,
  OutboxMessage,
  OutboxQuery,
  OutboxWording,
} from "./outbox-message.js"
import { addEvent, changeIn, matching, messageOf } from "./outbox-rows.js"
import type { Tables } from "./tables.js"

export type Outbox = ReturnType<typeof outbox>

/** The messages of one practice to its families. */
export function outbox(queries: Kysely<Tables>, practice: string) {
  const rows = () => queries.selectFrom("outbox").selectAll().where("outbox.practice", "=", practice)

  return {
    /** Puts a message in; false when there is one of its key already. */
    add: (message: NewOutboxMessage, at: string): Promise<boolean> =>
      queries.transaction().execute(async (transaction) => {
        const known = await transaction
          .selectFrom("outbox")
          .select("id")
          .where("practice", "=", practice)
          .where("key", "=", message.key)
          .executeTakeFirst()
        if (known) return false
        const id = crypto.randomUUID()
        const { plannedFor, messageId, ...fields } = message
        await transaction
          .insertInto("outbox")
          .values({
            practice,
            id,
            ...fields,
            planned_for: plannedFor,
            message_id: messageId,
            state: "waiting",
            attempts: 0,
            next_attempt_at: null,
            problem: null,
            reply: null,
            created_at: at,
            changed_at: at,
            changed_by: null,
            list: null,
          })
          .execute()
        await addEvent(transaction, { practice, id, state: "waiting", at })
        return true
      }),

    /** Gives a waiting message other words or another address; nothing else may be rewritten. */
    rewrite: async ({ id, wording }: { readonly id: string; readonly wording: OutboxWording }) => {
      const { channel, recipient, name, language, subject, text } = wording
      await queries
        .updateTable("outbox")
        .set({ channel, recipient, name, language, subject, text })
        .where("practice", "=", practice)
        .where("id", "=", id)
        .where("state", "=", "waiting")
        .execute()
    },

    /** Brings a message into a state, on the disk when this returns; false when it was in none of the states named. */
    change: (change: OutboxChange): Promise<boolean> =>
      queries.transaction().execute((transaction) => changeIn(transaction, practice, change)),

    /** Whatever was being sent when a process ended. Only for whoever holds the folder and is sending nothing itself. */
    interrupted: async (at: string): Promise<number> => {
      const found = await rows().where("state", "=", "sending").execute()
      for (const { id } of found)
        await queries.transaction().execute((transaction) =>
          changeIn(transaction, practice, {
            id,
            from: ["sending"],
            state: "unknown",
            problem: "interrupted",
            at,
          }),
        )
      return found.length
    },

    /** The first e-mail that may be sent at this instant: whatever waits longest. */
    nextEmail: async (now: string): Promise<OutboxMessage | null> => {
      const row = await rows()
        .where("state", "=", "waiting")
        .where("channel", "=", "email")
        .where((where) =>
          where.or([where("next_attempt_at", "is", null), where("next_attempt_at", "<=", now)]),
        )
        .orderBy("created_at")
        .orderBy("id")
        .limit(1)
        .executeTakeFirst()
      return row ? messageOf(row) : null
    },

    waiting: async (): Promise<readonly OutboxMessage[]> =>
      (await rows().where("state", "=", "waiting").orderBy("created_at").orderBy("id").execute()).map(
        messageOf,
      ),

    ofChild: async (child: string): Promise<readonly OutboxMessage[]> =>
      (await rows().where("child", "=", child).execute()).map(messageOf),

    message: async (id: string): Promise<OutboxMessage | null> => {
      const row = await rows().where("id", "=", id).executeTakeFirst()
      return row ? messageOf(row) : null
    },

    /** Every state the message was in, oldest first. */
    events: async (id: string): Promise<readonly OutboxEvent[]> => {
      const found = await queries
        .selectFrom("outbox_events")
        .selectAll()
        .where("practice", "=", practice)
        .where("message", "=", id)
        .orderBy("position")
        .execute()
      return found.map(({ state, at, by, problem, reply }) => ({
        state: state as MessageState,
        at,
        by,
        problem: problem as MessageProblem | null,
        reply,
      }))
    },

    counts: async (): Promise<Readonly<Record<MessageState, number>>> => {
      const found = await queries
        .selectFrom("outbox")
        .select(["state", (select) => select.fn.countAll<number>().as("count")])
        .where("practice", "=", practice)
        .groupBy("state")
        .execute()
      const of = (state: MessageState) => Number(found.find((row) => row.state === state)?.count ?? 0)
      return Object.fromEntries(MESSAGE_STATES.map((state) => [state, of(state)])) as Record<
        MessageState,
        number
      >
    },

    /** The latest first; a search looks at the child's name and number, the family's name and the address. */
    list: async ({ search = "", state, page, pageSize }: OutboxQuery) => {
      const found = matching(queries, { practice, search, state })
      const [{ total }, shown] = await Promise.all([
        found.select((select) => select.fn.countAll<number>().as("total")).executeTakeFirstOrThrow(),
        found
          .selectAll("outbox")
          .orderBy("outbox.created_at", "desc")
          .orderBy("outbox.id")
          .limit(pageSize)
          .offset((page - 1) * pageSize)
          .execute(),
      ])
      return { total: Number(total), messages: shown.map(messageOf) }
    },

    /** Hands over everything that waits for a channel, under one list; all of it or none. Returns how much it was. */
    handOver: (given: {
      readonly channel: Channel
      readonly list: string
      readonly at: string
      readonly by: string
    }): Promise<number> =>
      queries.transaction().execute(async (transaction) => {
        const { channel, list, at, by } = given
        const found = await transaction
          .selectFrom("outbox")
          .select("id")
          .where("practice", "=", practice)
          .where("state", "=", "waiting")
          .where("channel", "=", channel)
          .execute()
        for (const { id } of found)
          await changeIn(transaction, practice, { id, from: ["waiting"], state: "sent", list, at, by })
        return found.length
      }),

    ofList: async (list: string): Promise<readonly OutboxMessage[]> =>
      (await rows().where("list", "=", list).orderBy("name").orderBy("id").execute()).map(messageOf),

    /** Takes a list back: what was handed over in it waits again. */
    takeBack: ({ list, at, by }: { readonly list: string; readonly at: string; readonly by: string }) =>
      queries.transaction().execute(async (transaction) => {
        const found = await transaction
          .selectFrom("outbox")
          .select("id")
          .where("practice", "=", practice)
          .where("list", "=", list)
          .execute()
        let count = 0
        for (const { id } of found) {
          const back = {
            id,
            from: ["sent"],
            state: "waiting",
            problem: "taken-back",
            list: null,
            at,
            by,
          } as const
          if (await changeIn(transaction, practice, back)) count++
        }
        return count
      }),
  }
}
