import { type Kysely, sql } from "kysely"
import type { OpenDatabase } from "./driver.js"
import { recordTables } from "./migrations/0001-record.js"
import { filesTable } from "./migrations/0002-files.js"
import { outboxTables } from "./migrations/0003-outbox.js"
import { familyLinksTables } from "./migrations/0004-family-links.js"
import { inboxTables } from "./migrations/0005-inbox.js"
import { importsTables } from "./migrations/0006-imports.js"
import { tokensTables } from "./migrations/0007-tokens.js"
import { RecordError } from "./record-error.js"
import type { Tables } from "./tables.js"

type Step = (queries: Kysely<Tables>, database: OpenDatabase) => Promise<void>

/** The steps in their order. A step that was ever released is never edited: a change is a new step. */
const STEPS: readonly (readonly [name: string, step: Step])[] = [
  ["0001-record", recordTables],
  ["0002-files", filesTable],
  ["0003-outbox", outboxTables],
  ["0004-family-links", familyLinksTables],
  ["0005-inbox", inboxTables],
  ["0006-imports", importsTables],
  ["0007-tokens", tokensTables],
]

/**
 * Brings the database to the shape this program expects; safe to call on every start. Each step is one transaction
 * together with the note that it was done, so a step is never found half done.
 */
export async function migrate(database: OpenDatabase): Promise<void> {
  const { queries } = database
  await sql`CREATE TABLE IF NOT EXISTS migrations (name text PRIMARY KEY)`.execute(queries)
  const { rows } = await sql<{ name: string }>`SELECT name FROM migrations`.execute(queries)
  const done = new Set(rows.map(({ name }) => name))
  const unknown = [...done].filter((name) => !STEPS.some(([known]) => known === name))
  if (unknown.length > 0)
    throw new RecordError(
      `the record was written by a newer version of Lengthwise, which knows ${unknown.join(", ")}; use that version`,
    )
  for (const [name, step] of STEPS) {
    if (done.has(name)) continue
    await queries.transaction().execute(async (transaction) => {
      await step(transaction, database)
      await sql`INSERT INTO migrations (name) VALUES (${name})`.execute(transaction)
    })
  }
}
