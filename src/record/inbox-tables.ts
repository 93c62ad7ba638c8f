/** What came from outside, and what became of it. */
export interface InboxTables {
  inbox: InboxTable
  inbox_events: InboxEventsTable
}

export interface InboxTable {
  practice: string
  id: string
  /** What tells the received object from all others: of one there is never a second row. */
  key: string
  /** Name of the received file, and the stored bytes. */
  file: string
  sha256: string
  media_type: string
  /** Hash of what was read in it: the same object in another encoding is the same. */
  content_hash: string
  /** Name of the instrument or the person it came from. */
  sent_by: string
  received_at: string
  /** JSON: who the file says that it is about. */
  identity: string
  /** The same in one writing, null where it names nobody. */
  identity_key: string | null
  /** JSON: what the file holds. */
  content: string
  /** Latest day it speaks of. */
  day: string | null
  search: string
  state: string
  /** Why it waits, as a word of the server's. */
  why: string | null
  child: string | null
  /** JSON: what was recorded, so that it can be undone. */
  result: string | null
  reason: string | null
  changed_at: string
  /** The person who brought it into its state; null for the program. */
  changed_by: string | null
}

/** Append-only: every state it was in. */
interface InboxEventsTable {
  practice: string
  item: string
  /** 1, 2, 3 ... within the item. */
  position: number
  state: string
  at: string
  by: string | null
  why: string | null
  reason: string | null
  child: string | null
}
