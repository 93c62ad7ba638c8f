// What is stored, and how it is opened.

// Entries: the only way anything about a child is recorded.
export type { ListedChild } from "./children.js"
export type { OpenDatabase } from "./driver.js"
export { openEmbedded } from "./embedded.js"
export type { Saved } from "./entries.js"
export {
  type ChildBody,
  type ConsentBody,
  type Draft,
  dayOf,
  type Entry,
  type EntryKind,
  type PaperKind,
} from "./entry.js"
// People.
export { type FamilyLink, LINK_FAILURES_ALLOWED } from "./family-links.js"
export { lockFolder } from "./folder-lock.js"
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
