import type { Kysely } from "kysely"
import type { OpenDatabase } from "../driver.js"
import type { Tables } from "../tables.js"

/** Links by which a family reads its page, and the practice's key that signs them. */
export async function familyLinksTables({ schema }: Kysely<Tables>, _database: OpenDatabase): Promise<void> {
  await schema
    .createTable("signing_keys")
    .addColumn("practice", "text", (column) => column.notNull().references("practices.id"))
    .addColumn("purpose", "text", (column) => column.notNull())
    .addColumn("key", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("signing_keys_key", ["practice", "purpose"])
    .execute()
  await schema
    .createTable("family_links")
    .addColumn("practice", "text", (column) => column.notNull())
    .addColumn("id", "text", (column) => column.notNull())
    .addColumn("child", "text", (column) => column.notNull())
    .addColumn("language", "text", (column) => column.notNull())
    .addColumn("created_at", "text", (column) => column.notNull())
    .addColumn("created_by", "text", (column) => column.notNull())
    .addColumn("expires_at", "text", (column) => column.notNull())
    .addColumn("revoked_at", "text")
    .addColumn("failures", "integer", (column) => column.notNull())
    .addColumn("opened_count", "integer", (column) => column.notNull())
    .addColumn("last_opened_at", "text")
    .addPrimaryKeyConstraint("family_links_key", ["practice", "id"])
    .addForeignKeyConstraint("family_links_author", ["practice", "created_by"], "people", ["practice", "id"])
    .execute()
  await schema
    .createIndex("family_links_of_child")
    .on("family_links")
    .columns(["practice", "child", "created_at"])
    .execute()
}
