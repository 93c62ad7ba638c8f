import type { ImportTables } from "./import-tables.js"
import type { InboxTables } from "./inbox-tables.js"
import type { TokenTables } from "./token-tables.js"

/**
 * The tables as the database holds them. Every key is led by `practice`, so that one practice's rows stay
 * together and the record can be divided by practice. Times are ISO instants in UTC, bodies are JSON text.
 */
export interface Tables extends InboxTables, ImportTables, TokenTables {
  practices: PracticesTable
  people: PeopleTable
  entries: EntriesTable
  files: FilesTable
  current_entries: EntriesTable
  children: ChildrenTable
  sessions: SessionsTable
  log_in_attempts: LogInAttemptsTable
  outbox: OutboxTable
  outbox_events: OutboxEventsTable
  signing_keys: SigningKeysTable
  family_links: FamilyLinksTable
}

interface PracticesTable {
  id: string
  name: string
  /** Degrees north, null when the practice has not said. */
  latitude: number | null
  /** JSON of the practice's own settings; what it does not set keeps the default. */
  settings: string
  created_at: string
}

interface PeopleTable {
  practice: string
  id: string
  /** As shown beside what this person recorded. */
  name: string
  /** As typed at log-in, in the form of `nameKey`. */
  log_in: string
  role: string
  /** Null for a person who can't log in. */
  password_hash: string | null
  created_at: string
}

/** Append-only: triggers refuse UPDATE and DELETE. */
interface EntriesTable {
  practice: string
  /** 1, 2, 3 ... within the practice, without gaps. */
  position: number
  id: string
  child: string
  kind: string
  body: string
  author: string
  recorded_at: string
  supersedes: string | null
  reason: string | null
  previous_hash: string
  hash: string
}

/** Append-only as the entries are; a file is known by the hash of its bytes. */
interface FilesTable {
  practice: string
  sha256: string
  media_type: string
  bytes: Uint8Array
  author: string
  recorded_at: string
}

/** Derived from the entries, never the only place of anything: `rebuild` makes it anew. */
interface ChildrenTable {
  practice: string
  child: string
  name: string
  sort_name: string
  number: string | null
  born: string
  sex: string
  search: string
  last_visit: string | null
  /** Hash of the child's latest entry: changes when anything about the child changes. */
  last_hash: string
}

interface SessionsTable {
  practice: string
  token_hash: string
  person: string
  created_at: string
  last_seen_at: string
  revoked_at: string | null
}

/** Kept by the name as typed, whether or not such a person exists, so that an answer gives nothing away. */
interface LogInAttemptsTable {
  practice: string
  log_in: string
  failures: number
  last_failed_at: string
  locked_until: string | null
}

interface SigningKeysTable {
  practice: string
  purpose: string
  /** 256 random bits, base64url. */
  key: string
}

/** No entry: a link is a key to a door, not a fact about a child. */
export interface FamilyLinksTable {
  practice: string
  id: string
  child: string
  language: string
  created_at: string
  created_by: string
  expires_at: string
  revoked_at: string | null
  failures: number
  opened_count: number
  last_opened_at: string | null
}

/** Messages to families, what is to be sent and what was; how each came to its state is in `outbox_events`. */
export interface OutboxTable {
  practice: string
  id: string
  /** What the message is about: of one thing there is never a second message. */
  key: string
  child: string
  kind: string
  channel: string
  /** E-mail address, telephone number or postal address. */
  recipient: string
  name: string
  language: string
  subject: string
  text: string
  /** The day the message is about, and the day it was to be said. */
  due: string
  planned_for: string
  state: string
  /** How often a mail server has answered. */
  attempts: number
  /** Not before this instant; null for at once. */
  next_attempt_at: string | null
  /** The same in every attempt, so that whoever gets it twice can see that it is one. */
  message_id: string
  /** Why it is in its state, as a word of `MESSAGE_PROBLEMS`. */
  problem: string | null
  /** What the mail server said, in its own words. */
  reply: string | null
  created_at: string
  changed_at: string
  /** Who brought it into its state; null for the program. */
  changed_by: string | null
  /** The exported list it was handed over in. */
  list: string | null
}

/** Append-only: every state a message was in. */
interface OutboxEventsTable {
  practice: string
  message: string
  /** 1, 2, 3 ... within the message. */
  position: number
  state: string
  at: string
  by: string | null
  problem: string | null
  reply: string | null
}
