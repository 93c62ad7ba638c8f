import { type Kysely, sql, type Transaction } from "kysely"
import type { PersonRow, PlainRow, PracticeRow } from "./archive-read.js"
import { ARCHIVE_TABLES } from "./archive-tables.js"
import type { EntryRow } from "./chain.js"
import { refreshChild } from "./children.js"
import type { OpenDatabase } from "./driver.js"
import type { Tables } from "./tables.js"

/** What a restored record is made from, in order. */
export interface RecordSource {
  readonly practice: PracticeRow
  readonly people: readonly PersonRow[]
  readonly entries: () => AsyncIterable<EntryRow>
  readonly files: () => AsyncIterable<Tables["files"]>
  readonly rows: (table: string) => AsyncIterable<PlainRow>
}

/** A row that the record does not take, with the place where it stood. */
export class RowRefused extends Error {
  override readonly name = "RowRefused"
}

// Twelve columns a row; a statement takes some thirty thousand values.
const BATCH = 500

/**
 * Puts a whole practice back exactly as it was, into a database without one: all of it in one transaction, or nothing.
 * Entries keep their positions and hashes; what is derived is made anew. Returns how many children there are.
 */
export async function putBack(database: OpenDatabase, source: RecordSource): Promise<number> {
  return database.queries.transaction().execute(async (transaction) => {
    const { id } = source.practice
    await transaction.insertInto("practices").values(source.practice).execute()
    for (const person of source.people)
      await inserted(`the person ${person.log_in}`, () =>
        transaction.insertInto("people").values(person).execute(),
      )
    for await (const batch of batches(source.entries()))
      await inserted(`entries ${batch[0]?.position} to ${batch.at(-1)?.position}`, () =>
        transaction.insertInto("entries").values(batch).execute(),
      )
    // A file can be large: each on its own.
    for await (const file of source.files())
      await inserted(`the file ${file.sha256}`, () => transaction.insertInto("files").values(file).execute())
    for (const [table, { kept }] of Object.entries(ARCHIVE_TABLES))
      if (kept === "rows") await putRowsBack(transaction, { table, practice: id, rows: source.rows(table) })
    return rebuildChildren(transaction, id)
  })
}

async function putRowsBack(
  transaction: Transaction<Tables>,
  {
    table,
    practice,
    rows,
  }: { readonly table: string; readonly practice: string; readonly rows: AsyncIterable<PlainRow> },
): Promise<void> {
  const columns = await columnsOf(transaction, table)
  for await (const batch of batches(rows)) {
    for (const row of batch) {
      const unknown = Object.keys(row).find((column) => !columns.includes(column))
      if (unknown !== undefined)
        throw new RowRefused(
          `a row of ${table} has the field ${JSON.stringify(unknown.slice(0, 60))}, which is not known here`,
        )
    }
    const values = batch.map(
      (row) => sql`(${sql.join([practice, ...columns.map((column) => row[column] ?? null)])})`,
    )
    const names = sql.join(["practice", ...columns].map((column) => sql.ref(column)))
    await inserted(`a row of ${table}`, () =>
      sql`INSERT INTO ${sql.table(table)} (${names}) VALUES ${sql.join(values)}`.execute(transaction),
    )
  }
}

/** The columns of a table but the practice, as the database has them. */
async function columnsOf(queries: Kysely<Tables>, table: string): Promise<readonly string[]> {
  const found = (await queries.introspection.getTables()).find(({ name }) => name === table)
  if (!found) throw new RangeError(`no table ${table}`)
  return found.columns.map(({ name }) => name).filter((name) => name !== "practice")
}

async function rebuildChildren(transaction: Transaction<Tables>, practice: string): Promise<number> {
  const children = await transaction
    .selectFrom("entries")
    .select("child")
    .distinct()
    .where("practice", "=", practice)
    .where("child", "<>", practice)
    .execute()
  for (const { child } of children)
    await inserted(`the child ${child}`, () => refreshChild(transaction, practice, child))
  return children.length
}

async function inserted(what: string, insert: () => Promise<unknown>): Promise<void> {
  try {
    await insert()
  } catch (cause) {
    throw new RowRefused(`${what}: ${cause instanceof Error ? cause.message : String(cause)}`, { cause })
  }
}

async function* batches<T>(rows: AsyncIterable<T>): AsyncGenerator<T[]> {
  let batch: T[] = []
  for await (const row of rows) {
    batch.push(row)
    if (batch.length < BATCH) continue
    yield batch
    batch = []
  }
  if (batch.length > 0) yield batch
}
