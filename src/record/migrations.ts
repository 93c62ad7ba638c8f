import { type Migration, Migrator } from "kysely"
import type { OpenDatabase } from "./driver.js"
import { recordTables } from "./migrations/0001-record.js"
import { RecordError } from "./record-error.js"

/** The steps in their order; a step that was ever released is never edited, a change is a new step. */
const steps = (database: OpenDatabase): Readonly<Record<string, Migration>> => ({
  "0001-record": { up: (queries) => recordTables(queries, database) },
})

/** Brings the database to the shape this program expects. Safe to call on every start. */
export async function migrate(database: OpenDatabase): Promise<void> {
  const migrator = new Migrator({
    db: database.queries,
    provider: { getMigrations: async () => steps(database) },
  })
  const { error } = await migrator.migrateToLatest()
  if (error)
    throw new RecordError("the record can't be brought up to date; was it written by a newer version?", {
      cause: error,
    })
}
