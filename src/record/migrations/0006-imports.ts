import type { Kysely } from "kysely"
import type { OpenDatabase } from "../driver.js"
import type { Tables } from "../tables.js"

/** Imports of whole files, each of which can be taken back. */
export async function importsTables(queries: Kysely<Tables>, _database: OpenDatabase): Promise<void> {
  const { schema } = queries
  await schema
    .createTable("imports")
    .addColumn("practice", "text", (column) => column.notNull())
    .addColumn("id", "text", (column) => column.notNull())
    .addColumn("file", "text", (column) => column.notNull())
    .addColumn("sha256", "text", (column) => column.notNull())
    .addColumn("mapping", "text", (column) => column.notNull())
    .addColumn("author", "text", (column) => column.notNull())
    .addColumn("started_at", "text", (column) => column.notNull())
    .addColumn("changed_at", "text", (column) => column.notNull())
    .addColumn("state", "text", (column) => column.notNull())
    .addColumn("counts", "text", (column) => column.notNull())
    .addColumn("left_children", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("imports_key", ["practice", "id"])
    .addForeignKeyConstraint("imports_author", ["practice", "author"], "people", ["practice", "id"])
    .execute()
  await schema
    .createTable("import_spans")
    .addColumn("practice", "text", (column) => column.notNull())
    .addColumn("import", "text", (column) => column.notNull())
    .addColumn("first_position", "integer", (column) => column.notNull())
    .addColumn("last_position", "integer", (column) => column.notNull())
    .addColumn("takes_back", "integer", (column) => column.notNull())
    .addPrimaryKeyConstraint("import_spans_key", ["practice", "first_position"])
    .addForeignKeyConstraint("import_spans_import", ["practice", "import"], "imports", ["practice", "id"])
    .execute()
  await schema
    .createIndex("import_spans_of_import")
    .on("import_spans")
    .columns(["practice", "import", "first_position"])
    .execute()
}
