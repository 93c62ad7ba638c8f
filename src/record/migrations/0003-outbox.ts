import { type Kysely, sql } from "kysely"
import type { OpenDatabase } from "../driver.js"
import type { Tables } from "../tables.js"

/** Messages to families with everything that happened to them, and a way to find the families' contacts. */
export async function outboxTables(queries: Kysely<Tables>, database: OpenDatabase): Promise<void> {
  const { schema } = queries
  await schema
    .createTable("outbox")
    .addColumn("practice", "text", (column) => column.notNull())
    .addColumn("id", "text", (column) => column.notNull())
    .addColumn("key", "text", (column) => column.notNull())
    .addColumn("child", "text", (column) => column.notNull())
    .addColumn("kind", "text", (column) => column.notNull())
    .addColumn("channel", "text", (column) => column.notNull())
    .addColumn("recipient", "text", (column) => column.notNull())
    .addColumn("name", "text", (column) => column.notNull())
    .addColumn("language", "text", (column) => column.notNull())
    .addColumn("subject", "text", (column) => column.notNull())
    .addColumn("text", "text", (column) => column.notNull())
    .addColumn("due", "text", (column) => column.notNull())
    .addColumn("planned_for", "text", (column) => column.notNull())
    .addColumn("state", "text", (column) => column.notNull())
    .addColumn("attempts", "integer", (column) => column.notNull())
    .addColumn("next_attempt_at", "text")
    .addColumn("message_id", "text", (column) => column.notNull())
    .addColumn("problem", "text")
    .addColumn("reply", "text")
    .addColumn("created_at", "text", (column) => column.notNull())
    .addColumn("changed_at", "text", (column) => column.notNull())
    .addColumn("changed_by", "text")
    .addColumn("list", "text")
    .addPrimaryKeyConstraint("outbox_key", ["practice", "id"])
    // The last guard against saying one thing twice.
    .addUniqueConstraint("outbox_one_of_each", ["practice", "key"])
    .addUniqueConstraint("outbox_message_id", ["practice", "message_id"])
    .execute()
  await schema.createIndex("outbox_by_state").on("outbox").columns(["practice", "state"]).execute()
  await schema.createIndex("outbox_by_child").on("outbox").columns(["practice", "child"]).execute()
  await schema
    .createTable("outbox_events")
    .addColumn("practice", "text", (column) => column.notNull())
    .addColumn("message", "text", (column) => column.notNull())
    .addColumn("position", "integer", (column) => column.notNull())
    .addColumn("state", "text", (column) => column.notNull())
    .addColumn("at", "text", (column) => column.notNull())
    .addColumn("by", "text")
    .addColumn("problem", "text")
    .addColumn("reply", "text")
    .addPrimaryKeyConstraint("outbox_events_key", ["practice", "message", "position"])
    .addForeignKeyConstraint("outbox_events_message", ["practice", "message"], "outbox", ["practice", "id"])
    .execute()
  const appendOnly = { name: "outbox_events", keys: [["practice", "message", "position"]] }
  for (const statement of database.appendOnlyStatements(appendOnly)) await sql.raw(statement).execute(queries)
  await sql`CREATE INDEX family_contacts ON entries (practice, child) WHERE kind = 'family'`.execute(queries)
}
