import { type Kysely, sql } from "kysely"
import type { OpenDatabase } from "../driver.js"
import type { Tables } from "../tables.js"

/** What instruments and other programs sent, and what became of it. */
export async function inboxTables(queries: Kysely<Tables>, database: OpenDatabase): Promise<void> {
  const { schema } = queries
  await schema
    .createTable("inbox")
    .addColumn("practice", "text", (column) => column.notNull())
    .addColumn("id", "text", (column) => column.notNull())
    .addColumn("key", "text", (column) => column.notNull())
    .addColumn("file", "text", (column) => column.notNull())
    .addColumn("sha256", "text", (column) => column.notNull())
    .addColumn("media_type", "text", (column) => column.notNull())
    .addColumn("content_hash", "text", (column) => column.notNull())
    .addColumn("sent_by", "text", (column) => column.notNull())
    .addColumn("received_at", "text", (column) => column.notNull())
    .addColumn("identity", "text", (column) => column.notNull())
    .addColumn("identity_key", "text")
    .addColumn("content", "text", (column) => column.notNull())
    .addColumn("day", "text")
    .addColumn("search", "text", (column) => column.notNull())
    .addColumn("state", "text", (column) => column.notNull())
    .addColumn("why", "text")
    .addColumn("child", "text")
    .addColumn("result", "text")
    .addColumn("reason", "text")
    .addColumn("changed_at", "text", (column) => column.notNull())
    .addColumn("changed_by", "text")
    .addPrimaryKeyConstraint("inbox_id", ["practice", "id"])
    // The last guard against taking one object twice.
    .addUniqueConstraint("inbox_one_of_each", ["practice", "key"])
    .addForeignKeyConstraint("inbox_file", ["practice", "sha256"], "files", ["practice", "sha256"])
    .execute()
  const index = (name: string, columns: ("state" | "received_at" | "identity_key" | "child")[]) =>
    schema
      .createIndex(name)
      .on("inbox")
      .columns(["practice", ...columns])
      .execute()
  await index("inbox_by_state", ["state", "received_at"])
  await index("inbox_by_identity", ["identity_key"])
  await index("inbox_by_child", ["child"])
  await schema
    .createTable("inbox_events")
    .addColumn("practice", "text", (column) => column.notNull())
    .addColumn("item", "text", (column) => column.notNull())
    .addColumn("position", "integer", (column) => column.notNull())
    .addColumn("state", "text", (column) => column.notNull())
    .addColumn("at", "text", (column) => column.notNull())
    .addColumn("by", "text")
    .addColumn("why", "text")
    .addColumn("reason", "text")
    .addColumn("child", "text")
    .addPrimaryKeyConstraint("inbox_events_key", ["practice", "item", "position"])
    .addForeignKeyConstraint("inbox_events_item", ["practice", "item"], "inbox", ["practice", "id"])
    .execute()
  const appendOnly = { name: "inbox_events", keys: [["practice", "item", "position"]] }
  for (const statement of database.appendOnlyStatements(appendOnly)) await sql.raw(statement).execute(queries)
}
