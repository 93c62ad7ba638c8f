import type { Kysely } from "kysely"
import type { OpenDatabase } from "../driver.js"
import type { Tables } from "../tables.js"

/** Imports of whole files, each of which can be taken back. */
export async function importsTables(_queries: Kysely<Tables>, _database: OpenDatabase): Promise<void> {}
