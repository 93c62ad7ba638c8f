import type { Kysely } from "kysely"
import type { OpenDatabase } from "../driver.js"
import type { Tables } from "../tables.js"

/** Keys of other programs, and where they are told of what is new. */
export async function tokensTables({ schema }: Kysely<Tables>, _database: OpenDatabase): Promise<void> {
  await schema
    .createTable("api_tokens")
    .addColumn("practice", "text", (column) => column.notNull())
    .addColumn("id", "text", (column) => column.notNull())
    .addColumn("name", "text", (column) => column.notNull())
    .addColumn("token_hash", "text", (column) => column.notNull())
    .addColumn("ending", "text", (column) => column.notNull())
    .addColumn("scopes", "text", (column) => column.notNull())
    .addColumn("created_at", "text", (column) => column.notNull())
    .addColumn("created_by", "text", (column) => column.notNull())
    .addColumn("expires_at", "text", (column) => column.notNull())
    .addColumn("last_used_at", "text")
    .addColumn("revoked_at", "text")
    .addColumn("revoked_by", "text")
    .addPrimaryKeyConstraint("api_tokens_key", ["practice", "id"])
    .addUniqueConstraint("api_tokens_hash", ["practice", "token_hash"])
    .addForeignKeyConstraint("api_tokens_author", ["practice", "created_by"], "people", ["practice", "id"])
    .execute()
  await schema
    .createTable("webhooks")
    .addColumn("practice", "text", (column) => column.notNull())
    .addColumn("id", "text", (column) => column.notNull())
    .addColumn("url", "text", (column) => column.notNull())
    .addColumn("events", "text", (column) => column.notNull())
    .addColumn("secret", "text", (column) => column.notNull())
    .addColumn("state", "text", (column) => column.notNull())
    .addColumn("failures", "integer", (column) => column.notNull())
    .addColumn("paused_until", "text")
    .addColumn("created_at", "text", (column) => column.notNull())
    .addColumn("created_by", "text", (column) => column.notNull())
    .addColumn("changed_at", "text", (column) => column.notNull())
    .addColumn("changed_by", "text")
    .addPrimaryKeyConstraint("webhooks_key", ["practice", "id"])
    .addForeignKeyConstraint("webhooks_author", ["practice", "created_by"], "people", ["practice", "id"])
    .execute()
  await schema
    .createTable("webhook_deliveries")
    .addColumn("practice", "text", (column) => column.notNull())
    .addColumn("id", "text", (column) => column.notNull())
    .addColumn("position", "integer", (column) => column.notNull())
    .addColumn("webhook", "text", (column) => column.notNull())
    .addColumn("key", "text", (column) => column.notNull())
    .addColumn("event", "text", (column) => column.notNull())
    .addColumn("child", "text")
    .addColumn("body", "text", (column) => column.notNull())
    .addColumn("state", "text", (column) => column.notNull())
    .addColumn("attempts", "integer", (column) => column.notNull())
    .addColumn("next_attempt_at", "text")
    .addColumn("status", "integer")
    .addColumn("problem", "text")
    .addColumn("created_at", "text", (column) => column.notNull())
    .addColumn("changed_at", "text", (column) => column.notNull())
    .addColumn("changed_by", "text")
    .addPrimaryKeyConstraint("webhook_deliveries_key", ["practice", "id"])
    .addUniqueConstraint("webhook_deliveries_order", ["practice", "position"])
    // The last guard against telling one thing twice.
    .addUniqueConstraint("webhook_deliveries_one_of_each", ["practice", "webhook", "key"])
    .addForeignKeyConstraint("webhook_deliveries_webhook", ["practice", "webhook"], "webhooks", [
      "practice",
      "id",
    ])
    .execute()
  await schema
    .createIndex("webhook_deliveries_by_state")
    .on("webhook_deliveries")
    .columns(["practice", "webhook", "state", "position"])
    .execute()
  await schema
    .createTable("webhook_told")
    .addColumn("practice", "text", (column) => column.notNull())
    .addColumn("child", "text", (column) => column.notNull())
    .addColumn("read_from", "text", (column) => column.notNull())
    .addColumn("told", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("webhook_told_key", ["practice", "child"])
    .execute()
}
