// What is stored, and how it is opened.

// Entries: the only way anything about a child is recorded.
export type { ChainReport } from "./chain.js"
export type { ListedChild } from "./children.js"
export type { OpenDatabase } from "./driver.js"
export { openEmbedded } from "./embedded.js"
export type { Saved } from "./entries.js"
export { type ChildBody, type Draft, dayOf, type Entry, type EntryKind } from "./entry.js"
export { type FolderLock, lockFolder } from "./folder-lock.js"
// People and their sessions.
export type { LogInAttempts } from "./log-in-attempts.js"
export { migrate } from "./migrations.js"
export type { NewPerson, Person, Role } from "./people.js"
export { type PracticeRecord, practiceRecord } from "./practice-record.js"
export { addPractice, type Practice, practicesIn } from "./practices.js"
export type { Problem } from "./problem.js"
export { RecordError } from "./record-error.js"
export { SESSION_LIMITS } from "./sessions.js"
