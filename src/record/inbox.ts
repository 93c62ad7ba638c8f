import { type Kysely, sql, type Transaction } from "kysely"
import type { CalendarDate } from "../engine/course.js"
import { plainText } from "./children.js"
import { appendEntries, type Saved } from "./entries.js"
import type { Draft } from "./entry.js"
import type { InboxTable } from "./inbox-tables.js"
import { RecordError } from "./record-error.js"
import type { Tables } from "./tables.js"

export const INBOX_STATES = ["waiting", "taken", "set-aside"] as const
export type InboxState = (typeof INBOX_STATES)[number]

/** Where an object stands: it waits for a person, was put under a child, or was set aside. */
export interface InboxStanding {
  readonly state: InboxState
  /** Why it waits. */
  readonly why: string | null
  readonly child: string | null
  /** What was recorded of it, so that it can be undone. */
  readonly result: unknown
  readonly reason: string | null
  /** ISO instant, UTC. */
  readonly changedAt: string
  /** Id of the person; null for the program. */
  readonly changedBy: string | null
}

/** One received object. `identity`, `content` and `result` are JSON, of which the record knows nothing more. */
export interface InboxItem extends InboxStanding {
  readonly id: string
  /** What tells the object from all others. */
  readonly key: string
  readonly file: string
  /** SHA-256 of the received bytes, which are stored. */
  readonly sha256: string
  readonly mediaType: string
  readonly contentHash: string
  readonly sentBy: string
  readonly receivedAt: string
  readonly identity: unknown
  readonly identityKey: string | null
  readonly content: unknown
  readonly day: CalendarDate | null
}

/** `search` is what it is found by, beside the name and number of the child it is under. */
export type NewInboxItem = InboxItem & { readonly search: string }

export interface InboxQuery {
  readonly state?: InboxState | undefined
  readonly search?: string | undefined
  readonly page: number
  readonly pageSize: number
}

export interface InboxEvent {
  readonly state: InboxState
  readonly at: string
  readonly by: string | null
  readonly why: string | null
  readonly reason: string | null
  readonly child: string | null
}

/** What one practice received. Whatever is recorded of an object is recorded with its row, or neither is. */
export function inbox(queries: Kysely<Tables>, practice: string) {
  const rows = () => queries.selectFrom("inbox").selectAll("inbox").where("inbox.practice", "=", practice)
  const one = async (column: "id" | "key", value: string): Promise<InboxItem | null> => {
    const row = await rows().where(column, "=", value).executeTakeFirst()
    return row ? itemOf(row) : null
  }

  return {
    /** Puts an object in, with what is recorded of it. */
    add: (item: NewInboxItem, drafts: readonly Draft[] = []): Promise<Saved> =>
      appendEntries(queries, practice, drafts, async (transaction) => {
        await transaction.insertInto("inbox").values(rowOf(practice, item)).execute()
        await addEvent(transaction, { practice, id: item.id, standing: item })
      }),

    /** Brings an object into another state, with what is recorded for it. */
    change: (
      {
        id,
        from,
        ...standing
      }: InboxStanding & { readonly id: string; readonly from: readonly InboxState[] },
      drafts: readonly Draft[] = [],
    ): Promise<Saved> =>
      appendEntries(queries, practice, drafts, async (transaction) => {
        const { numUpdatedRows } = await transaction
          .updateTable("inbox")
          .set(standingRow(standing))
          .where("practice", "=", practice)
          .where("id", "=", id)
          .where("state", "in", from)
          .executeTakeFirst()
        if (Number(numUpdatedRows) !== 1) throw new RecordError(`the object ${id} is in no state to change`)
        await addEvent(transaction, { practice, id, standing })
      }),

    item: (id: string): Promise<InboxItem | null> => one("id", id),
    byKey: (key: string): Promise<InboxItem | null> => one("key", key),

    /** Children under which a person put an object that names exactly this identity, and left it. */
    matchedByPerson: async (identityKey: string): Promise<readonly string[]> => {
      const found = await queries
        .selectFrom("inbox")
        .select("child")
        .distinct()
        .where("practice", "=", practice)
        .where("identity_key", "=", identityKey)
        .where("state", "=", "taken")
        .where("changed_by", "is not", null)
        .execute()
      return found.flatMap(({ child }) => (child === null ? [] : [child]))
    },

    /** What waits and names exactly this identity, in the order in which it came. */
    waitingOf: async (identityKey: string): Promise<readonly InboxItem[]> => {
      const found = await rows()
        .where("identity_key", "=", identityKey)
        .where("state", "=", "waiting")
        .orderBy("received_at")
        .orderBy("id")
        .execute()
      return found.map(itemOf)
    },

    /** Every state the object was in, oldest first. */
    events: async (id: string): Promise<readonly InboxEvent[]> => {
      const found = await queries
        .selectFrom("inbox_events")
        .selectAll()
        .where("practice", "=", practice)
        .where("item", "=", id)
        .orderBy("position")
        .execute()
      return found.map(({ state, at, by, why, reason, child }) => ({
        state: state as InboxState,
        at,
        by,
        why,
        reason,
        child,
      }))
    },

    counts: async (): Promise<Readonly<Record<InboxState, number>>> => {
      const found = await queries
        .selectFrom("inbox")
        .select(["state", (select) => select.fn.countAll<number>().as("count")])
        .where("practice", "=", practice)
        .groupBy("state")
        .execute()
      const of = (state: InboxState) => Number(found.find((row) => row.state === state)?.count ?? 0)
      return { waiting: of("waiting"), taken: of("taken"), "set-aside": of("set-aside") }
    },

    /** The latest first; a search looks at what the file says and at the child it is under. */
    list: async ({ state, search = "", page, pageSize }: InboxQuery) => {
      let found = queries
        .selectFrom("inbox")
        .leftJoin("children", (join) =>
          join.onRef("children.practice", "=", "inbox.practice").onRef("children.child", "=", "inbox.child"),
        )
        .where("inbox.practice", "=", practice)
      if (state) found = found.where("inbox.state", "=", state)
      for (const word of plainText(search).split(/\s+/).filter(Boolean)) {
        const like = `%${word.replace(/[\\%_]/g, (character) => `\\${character}`)}%`
        found = found.where(
          sql<boolean>`(inbox.search LIKE ${like} ESCAPE '\\' OR coalesce(children.search, '') LIKE ${like} ESCAPE '\\')`,
        )
      }
      const { total } = await found
        .select(({ fn }) => fn.countAll<number | string>().as("total"))
        .executeTakeFirstOrThrow()
      const shown = await found
        .selectAll("inbox")
        .select("children.name as child_name")
        .orderBy("inbox.received_at", "desc")
        .orderBy("inbox.id")
        .limit(pageSize)
        .offset((page - 1) * pageSize)
        .execute()
      return {
        total: Number(total),
        items: shown.map(({ child_name, ...row }) => ({ ...itemOf(row), childName: child_name })),
      }
    },
  }
}

const json = (text: string | null): unknown => (text === null ? null : JSON.parse(text))

function itemOf(row: InboxTable): InboxItem {
  return {
    id: row.id,
    key: row.key,
    file: row.file,
    sha256: row.sha256,
    mediaType: row.media_type,
    contentHash: row.content_hash,
    sentBy: row.sent_by,
    receivedAt: row.received_at,
    identity: json(row.identity),
    identityKey: row.identity_key,
    content: json(row.content),
    day: row.day,
    state: row.state as InboxState,
    why: row.why,
    child: row.child,
    result: json(row.result),
    reason: row.reason,
    changedAt: row.changed_at,
    changedBy: row.changed_by,
  }
}

function standingRow({ state, why, child, result, reason, changedAt, changedBy }: InboxStanding) {
  return {
    state,
    why,
    child,
    result: result === null || result === undefined ? null : JSON.stringify(result),
    reason,
    changed_at: changedAt,
    changed_by: changedBy,
  }
}

function rowOf(practice: string, item: NewInboxItem): InboxTable {
  return {
    practice,
    id: item.id,
    key: item.key,
    file: item.file,
    sha256: item.sha256,
    media_type: item.mediaType,
    content_hash: item.contentHash,
    sent_by: item.sentBy,
    received_at: item.receivedAt,
    identity: JSON.stringify(item.identity),
    identity_key: item.identityKey,
    content: JSON.stringify(item.content),
    day: item.day,
    search: plainText(item.search),
    ...standingRow(item),
  }
}

async function addEvent(
  transaction: Transaction<Tables>,
  {
    practice,
    id,
    standing,
  }: { readonly practice: string; readonly id: string; readonly standing: InboxStanding },
): Promise<void> {
  const last = await transaction
    .selectFrom("inbox_events")
    .select(({ fn }) => fn.max("position").as("position"))
    .where("practice", "=", practice)
    .where("item", "=", id)
    .executeTakeFirst()
  const { state, changedAt, changedBy, why, reason, child } = standing
  await transaction
    .insertInto("inbox_events")
    .values({
      practice,
      item: id,
      position: Number(last?.position ?? 0) + 1,
      state,
      at: changedAt,
      by: changedBy,
      why,
      reason,
      child,
    })
    .execute()
}
