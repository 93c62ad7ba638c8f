import { mkdirSync, readFileSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import Database from "better-sqlite3"
import { RecordError } from "./record-error.js"

export interface FolderLock {
  /** Leaves a line for whoever finds the folder locked, such as the address served. */
  note(text: string): void
  release(): void
}

/**
 * Holds a data folder for this process. The lock is a write lock on a small database of its own: the operating
 * system drops it when the process dies, however it dies, so there is never a stale lock to clear by hand.
 */
export function lockFolder(folder: string): FolderLock {
  const noteFile = join(folder, "in-use.txt")
  const connection = lockFile(folder)
  try {
    connection.exec("BEGIN IMMEDIATE")
  } catch (cause) {
    connection.close()
    throw new RecordError(
      `the data folder ${folder} is in use by another Lengthwise${noteOf(noteFile)}; stop that one or choose another folder`,
      { cause },
    )
  }
  return {
    note: (text) => writeFileSync(noteFile, `${text}\n`, { mode: 0o600 }),
    release: () => connection.close(),
  }
}

function lockFile(folder: string): Database.Database {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 })
    return new Database(join(folder, "lock.sqlite"), { timeout: 0 })
  } catch (cause) {
    throw new RecordError(`the data folder ${folder} can't be used: ${(cause as Error).message}`, { cause })
  }
}

function noteOf(file: string): string {
  try {
    return ` (${readFileSync(file, "utf8").trim()})`
  } catch {
    return ""
  }
}
