import type { Kysely } from "kysely"
import type { Tables } from "./tables.js"

/**
 * What the record needs of a database. Queries go through Kysely and are the same everywhere; a driver adds only
 * what differs between databases.
 */
export interface OpenDatabase {
  readonly queries: Kysely<Tables>
  /** The data folder. */
  readonly folder: string
  /** What a column of bytes is called here. */
  readonly bytesType: "blob" | "bytea"
  /** Statements that make the database itself refuse to change or remove a row of the table. */
  appendOnlyStatements(table: AppendOnlyTable): readonly string[]
  close(): Promise<void>
}

export interface AppendOnlyTable {
  readonly name: string
  /** Groups of columns that identify a row: a row may not be replaced under any of them. */
  readonly keys: readonly (readonly string[])[]
}
