import { type Kysely, sql } from "kysely"
import type { OpenDatabase } from "../driver.js"
import type { Tables } from "../tables.js"

/** The record as first released: practices, people, entries and what is derived from them, sessions. */
export async function recordTables(queries: Kysely<Tables>, database: OpenDatabase): Promise<void> {
  const { schema } = queries
  await schema
    .createTable("practices")
    .addColumn("id", "text", (column) => column.primaryKey())
    .addColumn("name", "text", (column) => column.notNull())
    .addColumn("latitude", "double precision")
    .addColumn("settings", "text", (column) => column.notNull())
    .addColumn("created_at", "text", (column) => column.notNull())
    .execute()
  await schema
    .createTable("people")
    .addColumn("practice", "text", (column) => column.notNull().references("practices.id"))
    .addColumn("id", "text", (column) => column.notNull())
    .addColumn("name", "text", (column) => column.notNull())
    .addColumn("log_in", "text", (column) => column.notNull())
    .addColumn("role", "text", (column) => column.notNull())
    .addColumn("password_hash", "text")
    .addColumn("created_at", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("people_key", ["practice", "id"])
    .addUniqueConstraint("people_log_in", ["practice", "log_in"])
    .execute()
  await schema
    .createTable("entries")
    .addColumn("practice", "text", (column) => column.notNull())
    .addColumn("position", "integer", (column) => column.notNull())
    .addColumn("id", "text", (column) => column.notNull())
    .addColumn("child", "text", (column) => column.notNull())
    .addColumn("kind", "text", (column) => column.notNull())
    .addColumn("body", "text", (column) => column.notNull())
    .addColumn("author", "text", (column) => column.notNull())
    .addColumn("recorded_at", "text", (column) => column.notNull())
    .addColumn("supersedes", "text")
    .addColumn("reason", "text")
    .addColumn("previous_hash", "text", (column) => column.notNull())
    .addColumn("hash", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("entries_key", ["practice", "position"])
    .addUniqueConstraint("entries_id", ["practice", "id"])
    .addUniqueConstraint("entries_superseded_once", ["practice", "supersedes"])
    .addForeignKeyConstraint("entries_author", ["practice", "author"], "people", ["practice", "id"])
    .addForeignKeyConstraint("entries_supersedes", ["practice", "supersedes"], "entries", ["practice", "id"])
    .execute()
  await schema
    .createIndex("entries_of_child")
    .on("entries")
    .columns(["practice", "child", "position"])
    .execute()
  const appendOnly = {
    name: "entries",
    keys: [
      ["practice", "position"],
      ["practice", "id"],
      ["practice", "supersedes"],
    ],
  }
  for (const statement of database.appendOnlyStatements(appendOnly)) await sql.raw(statement).execute(queries)
  await sql`
    CREATE VIEW current_entries AS
    SELECT * FROM entries
    WHERE kind <> 'withdrawal' AND NOT EXISTS (
      SELECT 1 FROM entries AS later
      WHERE later.practice = entries.practice AND later.supersedes = entries.id)`.execute(queries)
  await schema
    .createTable("children")
    .addColumn("practice", "text", (column) => column.notNull())
    .addColumn("child", "text", (column) => column.notNull())
    .addColumn("name", "text", (column) => column.notNull())
    .addColumn("sort_name", "text", (column) => column.notNull())
    .addColumn("number", "text")
    .addColumn("born", "text", (column) => column.notNull())
    .addColumn("sex", "text", (column) => column.notNull())
    .addColumn("search", "text", (column) => column.notNull())
    .addColumn("last_visit", "text")
    .addColumn("last_hash", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("children_key", ["practice", "child"])
    .addUniqueConstraint("children_number", ["practice", "number"])
    .execute()
  await schema
    .createIndex("children_by_name")
    .on("children")
    .columns(["practice", "sort_name", "child"])
    .execute()
  await schema
    .createTable("sessions")
    .addColumn("practice", "text", (column) => column.notNull())
    .addColumn("token_hash", "text", (column) => column.notNull())
    .addColumn("person", "text", (column) => column.notNull())
    .addColumn("created_at", "text", (column) => column.notNull())
    .addColumn("last_seen_at", "text", (column) => column.notNull())
    .addColumn("revoked_at", "text")
    .addPrimaryKeyConstraint("sessions_key", ["practice", "token_hash"])
    .addForeignKeyConstraint("sessions_person", ["practice", "person"], "people", ["practice", "id"])
    .execute()
  await schema
    .createTable("log_in_attempts")
    .addColumn("practice", "text", (column) => column.notNull())
    .addColumn("log_in", "text", (column) => column.notNull())
    .addColumn("failures", "integer", (column) => column.notNull())
    .addColumn("last_failed_at", "text", (column) => column.notNull())
    .addColumn("locked_until", "text")
    .addPrimaryKeyConstraint("log_in_attempts_key", ["practice", "log_in"])
    .execute()
}
