import type { Kysely } from "kysely"
import { sql } from "kysely"
import type { CalendarDate, Sex, Visit } from "../engine/course.js"
import { inGroups, insertRows } from "./bulk-insert.js"
import type { ChildBody, Entry } from "./entry.js"
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

/** What the table of children holds of one child, from the entries of it that still hold; null when none names it. */
export function childRow({
  practice,
  child,
  current,
  lastHash,
}: {
  readonly practice: string
  readonly child: string
  readonly current: readonly Pick<Entry, "kind" | "body">[]
  /** Of the last entry of the child. */
  readonly lastHash: string
}): Tables["children"] | null {
  const person = current.find(({ kind }) => kind === "child")?.body as ChildBody | undefined
  if (!person) return null
  let lastVisit: string | null = null
  for (const { kind, body } of current) {
    if (kind !== "visit") continue
    const { date } = body as Visit
    if (lastVisit === null || date > lastVisit) lastVisit = date
  }
  return {
    practice,
    child,
    name: person.name,
    sort_name: plainText(person.name),
    number: person.number ?? null,
    born: person.born,
    sex: person.sex,
    search: plainText(`${person.name} ${person.number ?? ""} ${person.born}`),
    last_visit: lastVisit,
    last_hash: lastHash,
  }
}

/** Puts rows in the place of those of the same children. With `rebuildChildren` the only code that writes the table. */
export async function setChildRows(
  queries: Kysely<Tables>,
  practice: string,
  rows: ReadonlyMap<string, Tables["children"] | null>,
): Promise<void> {
  // All old ones first: two children may have exchanged their numbers.
  for (const children of inGroups(rows.keys()))
    await queries
      .deleteFrom("children")
      .where("practice", "=", practice)
      .where("child", "in", children)
      .execute()
  await insertRows(
    queries,
    "children",
    [...rows.values()].filter((row) => row !== null),
  )
}

/** Derives the child's row anew from the entries. */
export async function refreshChild(queries: Kysely<Tables>, practice: string, child: string): Promise<void> {
  const [row = null] = await rowsOf(queries, practice, [child])
  await setChildRows(queries, practice, new Map([[child, row]]))
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
    let count = 0
    for (const some of inGroups(children.map(({ child }) => child))) {
      const rows = await rowsOf(transaction, practice, some)
      await insertRows(transaction, "children", rows)
      count += rows.length
    }
    return count
  })
}

async function rowsOf(
  queries: Kysely<Tables>,
  practice: string,
  children: readonly string[],
): Promise<readonly Tables["children"][]> {
  const current = await queries
    .selectFrom("current_entries")
    .select(["child", "kind", "body"])
    .where("practice", "=", practice)
    .where("child", "in", children)
    .where("kind", "in", ["child", "visit"])
    .execute()
  const byChild = new Map<string, Pick<Entry, "kind" | "body">[]>(children.map((child) => [child, []]))
  for (const { child, kind, body } of current)
    byChild.get(child)?.push({ kind, body: JSON.parse(body) } as Pick<Entry, "kind" | "body">)
  const rows: Tables["children"][] = []
  for (const child of children) {
    const { hash } = await queries
      .selectFrom("entries")
      .select("hash")
      .where("practice", "=", practice)
      .where("child", "=", child)
      .orderBy("position", "desc")
      .limit(1)
      .executeTakeFirstOrThrow()
    const row = childRow({ practice, child, current: byChild.get(child) ?? [], lastHash: hash })
    if (row) rows.push(row)
  }
  return rows
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
export function plainText(text: string): string {
  return text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase()
}

function escapeLike(text: string): string {
  return text.replace(/[\\%_]/g, (character) => `\\${character}`)
}
