import type { Kysely } from "kysely"
import type { OpenDatabase } from "../driver.js"
import type { Tables } from "../tables.js"

/** Keys of other programs, and where they are told of what is new. */
export async function tokensTables(_queries: Kysely<Tables>, _database: OpenDatabase): Promise<void> {}
