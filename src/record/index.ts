// What is stored, and how it is opened.

// The whole record, out and in again.
export {
  everythingOf,
  type FileRow,
  inSnapshot,
  type PersonRow,
  type PlainRow,
  type PracticeRow,
} from "./archive-read.js"
export { ARCHIVE_TABLES } from "./archive-tables.js"
export { putBack, RowRefused } from "./archive-write.js"
export { CHAIN_START, type EntryRow, entryHash } from "./chain.js"
// Entries: the only way anything about a child is recorded.
export type { ListedChild } from "./children.js"
export type { OpenDatabase } from "./driver.js"
export { openEmbedded } from "./embedded.js"
export type { Saved } from "./entries.js"
export {
  type ChildBody,
  type ConsentBody,
  currentOf,
  type Draft,
  dayOf,
  type Entry,
  type EntryKind,
  PAPER_KINDS,
  type PaperKind,
} from "./entry.js"
// People.
export { type FamilyLink, LINK_FAILURES_ALLOWED } from "./family-links.js"
export { lockFolder } from "./folder-lock.js"
// Imports of whole files.
export type {
  ImportCounts,
  ImportState,
  RecordedImport,
} from "./imports.js"
// What came from outside.
export type {
  InboxItem,
  InboxStanding,
  NewInboxItem,
} from "./inbox.js"
export type { BottleOfLot } from "./lots.js"
export { migrate } from "./migrations.js"
// Messages to families.
export type { Outbox } from "./outbox.js"
export type { OutboxMessage } from "./outbox-message.js"
export type { Person } from "./people.js"
export { type PracticeRecord, practiceRecord } from "./practice-record.js"
export { addPractice, practicesIn } from "./practices.js"
export { RecordError } from "./record-error.js"
// Other programs.
export { type ApiToken, TOKEN_PREFIX } from "./tokens.js"
export type { NewDelivery, Telling, WebhookDelivery } from "./webhook-deliveries.js"
export type { Told, Webhook } from "./webhooks.js"
