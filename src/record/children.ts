import type { Kysely } from "kysely"
import { sql } from "kysely"
import type { CalendarDate, Sex } from "../engine/course.js"
import type { ChildBody } from "./entry.js"
import type { Tables } from "./tables.js"

export interface ListedChild {
  readonly id: string
  readonly name: string
  readonly number: string | null
  readonly born: CalendarDate
  readonly sex: Sex
  readonly lastVisit: CalendarDate | null
  /** Changes when anything recorded about the child changes. */
  readonly lastHash: string
}

export interface ListQuery {
  readonly search?: string | undefined
  /** From 1. */
  readonly page: number
  readonly pageSize: number
}

/** One page of the practice's children by name; `search` takes words of a name, a birth date or a number. */
export async function listChildren(
  queries: Kysely<Tables>,
  practice: string,
  { search, page, pageSize }: ListQuery,
): Promise<{ readonly total: number; readonly children: readonly ListedChild[] }> {
  let matching = queries.selectFrom("children").where("practice", "=", practice)
  for (const spellings of searchTerms(search ?? "")) {
    matching = matching.where(({ or }) =>
      or(spellings.map((spelling) => sql<boolean>`search LIKE ${`%${escapeLike(spelling)}%`} ESCAPE '\\'`)),
    )
  }
  const { total } = await matching
    .select(({ fn }) => fn.countAll<number | string>().as("total"))
    .executeTakeFirstOrThrow()
  const rows = await matching
    .selectAll()
    .orderBy("sort_name")
    .orderBy("child")
    .limit(pageSize)
    .offset((page - 1) * pageSize)
    .execute()
  return { total: Number(total), children: rows.map(listed) }
}

export async function everyChild(queries: Kysely<Tables>, practice: string): Promise<readonly ListedChild[]> {
  const rows = await queries
    .selectFrom("children")
    .selectAll()
    .where("practice", "=", practice)
    .orderBy("sort_name")
    .orderBy("child")
    .execute()
  return rows.map(listed)
}

export async function findChild(
  queries: Kysely<Tables>,
  practice: string,
  child: string,
): Promise<ListedChild | null> {
  const row = await queries
    .selectFrom("children")
    .selectAll()
    .where("practice", "=", practice)
    .where("child", "=", child)
    .executeTakeFirst()
  return row ? listed(row) : null
}

/** Derives the child's row anew from the entries; the only code that writes the table. */
export async function refreshChild(queries: Kysely<Tables>, practice: string, child: string): Promise<void> {
  const current = await queries
    .selectFrom("current_entries")
    .select(["kind", "body"])
    .where("practice", "=", practice)
    .where("child", "=", child)
    .where("kind", "in", ["child", "visit"])
    .execute()
  const last = await queries
    .selectFrom("entries")
    .select("hash")
    .where("practice", "=", practice)
    .where("child", "=", child)
    .orderBy("position", "desc")
    .limit(1)
    .executeTakeFirstOrThrow()
  const bodies = (kind: string) =>
    current.filter((row) => row.kind === kind).map((row) => JSON.parse(row.body))
  const person: ChildBody = bodies("child")[0]
  const visitDates: string[] = bodies("visit").map((visit) => visit.date)
  await queries.deleteFrom("children").where("practice", "=", practice).where("child", "=", child).execute()
  await queries
    .insertInto("children")
    .values({
      practice,
      child,
      name: person.name,
      sort_name: plainText(person.name),
      number: person.number ?? null,
      born: person.born,
      sex: person.sex,
      search: plainText(`${person.name} ${person.number ?? ""} ${person.born}`),
      last_visit: visitDates.sort().at(-1) ?? null,
      last_hash: last.hash,
    })
    .execute()
}

/** Throws the derived table away and makes it anew from the entries. */
export async function rebuildChildren(queries: Kysely<Tables>, practice: string): Promise<number> {
  return queries.transaction().execute(async (transaction) => {
    await transaction.deleteFrom("children").where("practice", "=", practice).execute()
    const children = await transaction
      .selectFrom("entries")
      .select("child")
      .distinct()
      .where("practice", "=", practice)
      // The practice's own papers stand under its own id.
      .where("child", "<>", practice)
      .execute()
    for (const { child } of children) await refreshChild(transaction, practice, child)
    return children.length
  })
}

function listed(row: Tables["children"]): ListedChild {
  return {
    id: row.child,
    name: row.name,
    number: row.number,
    born: row.born,
    sex: row.sex as Sex,
    lastVisit: row.last_visit,
    lastHash: row.last_hash,
  }
}

/**
 * The words of a search, each with the spellings that may stand for it. A date written with the year last is tried
 * both ways round, day first and month first: whose habit it follows can't be told.
 *
 * @example
 * searchTerms("Åsa 3.4.2017") // => [["asa"], ["2017-04-03", "2017-03-04"]]
 */
function searchTerms(search: string): readonly (readonly string[])[] {
  return plainText(search)
    .split(/\s+/)
    .filter((word) => word !== "")
    .map((word) => {
      const date = /^(\d{1,2})[./-](\d{1,2})[./-](\d{4})$/.exec(word)
      if (!date) return [word]
      const [first, second] = [date[1]?.padStart(2, "0"), date[2]?.padStart(2, "0")]
      return [`${date[3]}-${second}-${first}`, `${date[3]}-${first}-${second}`]
    })
}

/** Small letters without accents, so that "José" is found by "jose". */
function plainText(text: string): string {
  return text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase()
}

function escapeLike(text: string): string {
  return text.replace(/[\\%_]/g, (character) => `\\${character}`)
}
