import { CompiledQuery, type Insertable, type Kysely } from "kysely"
import type { Tables } from "./tables.js"

/** Rows of one statement: few enough for every database's limit of parameters, enough that a statement's own cost is spread. */
const ROWS_AT_ONCE = 50

/**
 * Inserts rows that all have the same columns, many to a statement. The statement is worked out once and sent again with
 * other values: working it out costs more than the insert itself.
 */
export async function insertRows<Table extends keyof Tables & string>(
  queries: Kysely<Tables>,
  table: Table,
  rows: readonly Insertable<Tables[Table]>[],
): Promise<void> {
  const whole = rows.length - (rows.length % ROWS_AT_ONCE)
  let sql: string | undefined
  for (let start = 0; start < whole; start += ROWS_AT_ONCE) {
    const some = rows.slice(start, start + ROWS_AT_ONCE)
    sql ??= queries.insertInto(table).values(some).compile().sql
    await queries.executeQuery(
      CompiledQuery.raw(
        sql,
        some.flatMap((row) => Object.values(row as object)),
      ),
    )
  }
  if (whole < rows.length) await queries.insertInto(table).values(rows.slice(whole)).execute()
}

/** What one question may name at once: well below every database's limit of parameters. */
const NAMES_AT_ONCE = 500

/** The names in groups that one question may hold. */
export function inGroups<T>(names: Iterable<T>, size = NAMES_AT_ONCE): readonly (readonly T[])[] {
  const all = [...new Set(names)]
  const groups: T[][] = []
  for (let start = 0; start < all.length; start += size) groups.push(all.slice(start, start + size))
  return groups
}
