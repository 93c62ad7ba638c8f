import { type Kysely, sql } from "kysely"
import type { OpenDatabase } from "../driver.js"
import type { Tables } from "../tables.js"

/** Files that entries speak of by their hash: signatures, scans and the texts that were signed. */
export async function filesTable(queries: Kysely<Tables>, database: OpenDatabase): Promise<void> {
  await queries.schema
    .createTable("files")
    .addColumn("practice", "text", (column) => column.notNull())
    .addColumn("sha256", "text", (column) => column.notNull())
    .addColumn("media_type", "text", (column) => column.notNull())
    .addColumn("bytes", sql.raw(database.bytesType), (column) => column.notNull())
    .addColumn("author", "text", (column) => column.notNull())
    .addColumn("recorded_at", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("files_key", ["practice", "sha256"])
    .addForeignKeyConstraint("files_author", ["practice", "author"], "people", ["practice", "id"])
    .execute()
  const appendOnly = { name: "files", keys: [["practice", "sha256"]] }
  for (const statement of database.appendOnlyStatements(appendOnly)) await sql.raw(statement).execute(queries)
}
