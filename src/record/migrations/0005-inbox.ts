import type { Kysely } from "kysely"
import type { OpenDatabase } from "../driver.js"
import type { Tables } from "../tables.js"

/** What instruments and other programs sent, and what became of it. */
export async function inboxTables(_queries: Kysely<Tables>, _database: OpenDatabase): Promise<void> {}
