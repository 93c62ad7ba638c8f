import { type Kysely, sql, type Transaction, type Updateable } from "kysely"
import type { Channel } from "../engine/messages/family-contact.js"
import type { MessageProblem, MessageState } from "../engine/messages/message-states.js"
import type { MessageKind } from "../engine/messages/planned-messages.js"
import type { Language } from "../engine/say.js"
import type { OutboxChange, OutboxMessage } from "./outbox-message.js"
import type { OutboxTable, Tables } from "./tables.js"

/** The messages a search finds, with the child each is about. */
export function matching(
  queries: Kysely<Tables>,
  asked: { readonly practice: string; readonly search: string; readonly state: MessageState | undefined },
) {
  let found = queries
    .selectFrom("outbox")
    .innerJoin("children", (join) =>
      join.onRef("children.practice", "=", "outbox.practice").onRef("children.child", "=", "outbox.child"),
    )
    .where("outbox.practice", "=", asked.practice)
  if (asked.state) found = found.where("outbox.state", "=", asked.state)
  for (const word of asked.search.toLowerCase().split(/\s+/).filter(Boolean)) {
    const like = `%${word.replace(/[\\%_]/g, (character) => `\\${character}`)}%`
    found = found.where(
      sql<boolean>`(children.search LIKE ${like} ESCAPE '\\' OR lower(outbox.name) LIKE ${like} ESCAPE '\\' OR lower(outbox.recipient) LIKE ${like} ESCAPE '\\')`,
    )
  }
  return found
}

/** Changes the state and writes down that it did, together or not at all. */
export async function changeIn(
  transaction: Transaction<Tables>,
  practice: string,
  change: OutboxChange,
): Promise<boolean> {
  const { id, from, state, at, by, problem, reply, attempts, nextAttemptAt, list } = change
  const set: Updateable<OutboxTable> = {
    state,
    changed_at: at,
    changed_by: by ?? null,
    problem: problem ?? null,
    reply: reply ?? null,
    next_attempt_at: nextAttemptAt ?? null,
    ...(attempts === undefined ? {} : { attempts }),
    ...(list === undefined ? {} : { list }),
  }
  const { numUpdatedRows } = await transaction
    .updateTable("outbox")
    .set(set)
    .where("practice", "=", practice)
    .where("id", "=", id)
    .where("state", "in", from)
    .executeTakeFirst()
  if (numUpdatedRows === 0n) return false
  await addEvent(transaction, { practice, id, state, at, by, problem, reply })
  return true
}

export async function addEvent(
  transaction: Transaction<Tables>,
  event: Pick<OutboxChange, "id" | "state" | "at" | "by" | "problem" | "reply"> & {
    readonly practice: string
  },
): Promise<void> {
  const { practice, id, state, at, by, problem, reply } = event
  const last = await transaction
    .selectFrom("outbox_events")
    .select((select) => select.fn.max("position").as("position"))
    .where("practice", "=", practice)
    .where("message", "=", id)
    .executeTakeFirst()
  await transaction
    .insertInto("outbox_events")
    .values({
      practice,
      message: id,
      position: (last?.position ?? 0) + 1,
      state,
      at,
      by: by ?? null,
      problem: problem ?? null,
      reply: reply ?? null,
    })
    .execute()
}

export function messageOf(row: OutboxTable): OutboxMessage {
  return {
    id: row.id,
    key: row.key,
    child: row.child,
    kind: row.kind as MessageKind,
    channel: row.channel as Channel,
    recipient: row.recipient,
    name: row.name,
    language: row.language as Language,
    subject: row.subject,
    text: row.text,
    due: row.due,
    plannedFor: row.planned_for,
    state: row.state as MessageState,
    attempts: row.attempts,
    nextAttemptAt: row.next_attempt_at,
    messageId: row.message_id,
    problem: row.problem as MessageProblem | null,
    reply: row.reply,
    createdAt: row.created_at,
    changedAt: row.changed_at,
    changedBy: row.changed_by,
    list: row.list,
  }
}
