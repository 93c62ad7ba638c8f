import { chmodSync, mkdirSync } from "node:fs"
import { join } from "node:path"
import Database from "better-sqlite3"
import { Kysely, SqliteDialect } from "kysely"
import type { AppendOnlyTable, OpenDatabase } from "./driver.js"
import { RecordError } from "./record-error.js"
import { RECORD_FILE } from "./record-file.js"
import type { Tables } from "./tables.js"

/**
 * Opens the embedded database of a data folder, making both when absent. Readable by the owner only.
 *
 * WAL with `synchronous=FULL`: every commit is flushed to the disk before it is acknowledged.
 */
export function openEmbedded(folder: string): OpenDatabase {
  const file = join(folder, RECORD_FILE)
  const connection = connect(folder, file)
  const queries = new Kysely<Tables>({ dialect: new SqliteDialect({ database: connection }) })
  return { queries, folder, bytesType: "blob", appendOnlyStatements, close: () => queries.destroy() }
}

function connect(folder: string, file: string): Database.Database {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 })
    const connection = new Database(file)
    connection.pragma("journal_mode = WAL")
    connection.pragma("synchronous = FULL")
    connection.pragma("foreign_keys = ON")
    connection.pragma("busy_timeout = 5000")
    connection.pragma("trusted_schema = OFF")
    chmodSync(file, 0o600)
    return connection
  } catch (cause) {
    throw new RecordError(`the record ${file} can't be opened`, { cause })
  }
}

function appendOnlyStatements({ name, keys }: AppendOnlyTable): readonly string[] {
  const refuse = `BEGIN SELECT RAISE(ABORT, '${name} are append-only'); END`
  const sameRow = keys
    .map((columns) => `(${columns.map((column) => `${column} = NEW.${column}`).join(" AND ")})`)
    .join(" OR ")
  return [
    `CREATE TRIGGER ${name}_no_update BEFORE UPDATE ON ${name} ${refuse}`,
    `CREATE TRIGGER ${name}_no_delete BEFORE DELETE ON ${name} ${refuse}`,
    // INSERT OR REPLACE removes the old row without asking the delete trigger.
    `CREATE TRIGGER ${name}_no_replace BEFORE INSERT ON ${name}
       WHEN EXISTS (SELECT 1 FROM ${name} WHERE ${sameRow}) ${refuse}`,
  ]
}
