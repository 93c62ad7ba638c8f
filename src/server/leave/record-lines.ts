import type { EntryLine, FileLine, PersonLine, PracticeLine } from "../../interop/archive/format.js"
import type { EntryRow, FileRow, PersonRow, PracticeRow } from "../../record/index.js"

// How rows of the record stand in an archive, and how they are read back. A pair each, side by side.

export const practiceLine = (row: PracticeRow): PracticeLine => ({
  id: row.id,
  name: row.name,
  latitude: row.latitude,
  settings: JSON.parse(row.settings),
  createdAt: row.created_at,
})
export const practiceRow = (line: PracticeLine): PracticeRow => ({
  id: line.id,
  name: line.name,
  latitude: line.latitude,
  settings: JSON.stringify(line.settings),
  created_at: line.createdAt,
})

/** Without the hash of the password: it is of use to thieves only. */
export const personLine = (row: PersonRow): PersonLine => ({
  id: row.id,
  name: row.name,
  logIn: row.log_in,
  role: row.role,
  canLogIn: row.password_hash !== null,
  createdAt: row.created_at,
})
export const personRow = (
  line: PersonLine,
  { practice, passwordHash }: { readonly practice: string; readonly passwordHash: string | null },
): PersonRow => ({
  practice,
  id: line.id,
  name: line.name,
  log_in: line.logIn,
  role: line.role,
  password_hash: passwordHash,
  created_at: line.createdAt,
})

export const entryLine = (row: EntryRow): EntryLine => ({
  position: row.position,
  id: row.id,
  child: row.child,
  kind: row.kind,
  body: row.body,
  author: row.author,
  recordedAt: row.recorded_at,
  supersedes: row.supersedes,
  reason: row.reason,
  previousHash: row.previous_hash,
  hash: row.hash,
})
export const entryRow = (line: EntryLine, practice: string): EntryRow => ({
  practice,
  position: line.position,
  id: line.id,
  child: line.child,
  kind: line.kind,
  body: line.body,
  author: line.author,
  recorded_at: line.recordedAt,
  supersedes: line.supersedes,
  reason: line.reason,
  previous_hash: line.previousHash,
  hash: line.hash,
})

export const fileLine = (row: FileRow): FileLine => ({
  sha256: row.sha256,
  mediaType: row.media_type,
  bytes: Number(row.size),
  author: row.author,
  recordedAt: row.recorded_at,
})
