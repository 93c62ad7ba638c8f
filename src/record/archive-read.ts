import { type Kysely, sql } from "kysely"
import { ARCHIVE_TABLES } from "./archive-tables.js"
import type { EntryRow } from "./chain.js"
import type { OpenDatabase } from "./driver.js"
import { openEmbedded } from "./embedded.js"
import type { Tables } from "./tables.js"

export type PracticeRow = Tables["practices"]
export type PersonRow = Tables["people"]
export type FileRow = Omit<Tables["files"], "bytes"> & { readonly size: number }
/** A row of a table that is kept as it stands, without its practice. */
export type PlainRow = Readonly<Record<string, unknown>>

const BATCH = 500

/**
 * Reads a data folder as it stands at one moment, whatever is recorded meanwhile: on a connection of its own, in one
 * transaction that writes nothing.
 */
export async function inSnapshot<T>(
  folder: string,
  read: (database: OpenDatabase) => Promise<T>,
): Promise<T> {
  const database = openEmbedded(folder)
  try {
    return await database.queries
      .transaction()
      .execute((queries) => read({ ...database, queries, close: async () => {} }))
  } finally {
    await database.close()
  }
}

/** Everything one practice has recorded, in order, a batch at a time. */
export function everythingOf({ queries }: Pick<OpenDatabase, "queries">, practice: string) {
  return {
    practice: (): Promise<PracticeRow> =>
      queries.selectFrom("practices").selectAll().where("id", "=", practice).executeTakeFirstOrThrow(),
    people: (): Promise<readonly PersonRow[]> =>
      queries.selectFrom("people").selectAll().where("practice", "=", practice).orderBy("id").execute(),
    entries: () => entriesInOrder(queries, practice),
    files: () => filesInOrder(queries, practice),
    rows: (table: string) => rowsInOrder(queries, practice, table),
    count: async (table: string): Promise<number> => {
      const { rows } = await sql<{ count: number }>`
        SELECT COUNT(*) AS count FROM ${sql.table(table)} WHERE practice = ${practice}`.execute(queries)
      return Number(rows[0]?.count ?? 0)
    },
  }
}

async function* entriesInOrder(queries: Kysely<Tables>, practice: string): AsyncGenerator<EntryRow> {
  let position = 0
  for (;;) {
    const rows = await queries
      .selectFrom("entries")
      .selectAll()
      .where("practice", "=", practice)
      .where("position", ">", position)
      .orderBy("position")
      .limit(BATCH)
      .execute()
    yield* rows
    if (rows.length < BATCH) return
    position = rows.at(-1)?.position ?? position
  }
}

async function* filesInOrder(queries: Kysely<Tables>, practice: string): AsyncGenerator<FileRow> {
  let last = ""
  for (;;) {
    const rows = await queries
      .selectFrom("files")
      .select(["practice", "sha256", "media_type", "author", "recorded_at"])
      .select(sql<number>`length(bytes)`.as("size"))
      .where("practice", "=", practice)
      .where("sha256", ">", last)
      .orderBy("sha256")
      .limit(BATCH)
      .execute()
    yield* rows
    if (rows.length < BATCH) return
    last = rows.at(-1)?.sha256 ?? last
  }
}

/** All columns of a table but the practice, so that a column added one day is not forgotten. */
async function* rowsInOrder(
  queries: Kysely<Tables>,
  practice: string,
  table: string,
): AsyncGenerator<PlainRow> {
  const decision = ARCHIVE_TABLES[table]
  if (decision?.kept !== "rows") throw new RangeError(`rows of ${table} are not kept one by one`)
  const key = sql.join(decision.key.map((column) => sql.ref(column)))
  let after: readonly unknown[] | null = null
  for (;;) {
    const later = after === null ? sql`TRUE` : sql`(${key}) > (${sql.join(after)})`
    const { rows } = (await sql<Record<string, unknown>>`
      SELECT * FROM ${sql.table(table)} WHERE practice = ${practice} AND ${later}
      ORDER BY ${key} LIMIT ${sql.lit(BATCH)}`.execute(queries)) as { rows: Record<string, unknown>[] }
    for (const { practice: _, ...row } of rows) yield row
    const last = rows.at(-1)
    if (rows.length < BATCH || !last) return
    after = decision.key.map((column) => last[column])
  }
}
