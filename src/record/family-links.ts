import { createHmac, randomBytes, timingSafeEqual } from "node:crypto"
import { type Kysely, sql } from "kysely"
import { signingKey } from "./signing-keys.js"
import type { FamilyLinksTable, Tables } from "./tables.js"

export interface FamilyLink {
  readonly id: string
  readonly child: string
  readonly language: string
  readonly createdAt: string
  readonly createdBy: string
  /** ISO instant from which it no longer opens. */
  readonly expiresAt: string
  readonly revokedAt: string | null
  /** Wrong birth dates in a row. */
  readonly failures: number
  readonly openedCount: number
  readonly lastOpenedAt: string | null
}

/**
 * Wrong birth dates after which a link no longer opens: a birth date has a few thousand likely values, so a handful of
 * tries gives nothing away. Common practice, no source.
 */
export const LINK_FAILURES_ALLOWED = 5

export interface NewFamilyLink {
  readonly child: string
  readonly language: string
  readonly createdBy: string
  readonly nowMs: number
  readonly expiresMs: number
}

export async function addFamilyLink(
  queries: Kysely<Tables>,
  practice: string,
  { child, language, createdBy, nowMs, expiresMs }: NewFamilyLink,
): Promise<FamilyLink> {
  const row: FamilyLinksTable = {
    practice,
    id: randomBytes(16).toString("base64url"),
    child,
    language,
    created_at: instant(nowMs),
    created_by: createdBy,
    expires_at: instant(expiresMs),
    revoked_at: null,
    failures: 0,
    opened_count: 0,
    last_opened_at: null,
  }
  await queries.insertInto("family_links").values(row).execute()
  return linkOf(row)
}

/** A child's links, the newest first. */
export async function familyLinksOf(
  queries: Kysely<Tables>,
  practice: string,
  child: string,
): Promise<readonly FamilyLink[]> {
  const rows = await queries
    .selectFrom("family_links")
    .selectAll()
    .where("practice", "=", practice)
    .where("child", "=", child)
    .orderBy("created_at", "desc")
    .execute()
  return rows.map(linkOf)
}

export async function revokeFamilyLink(
  queries: Kysely<Tables>,
  practice: string,
  { id, child, nowMs }: { readonly id: string; readonly child: string; readonly nowMs: number },
): Promise<void> {
  await queries
    .updateTable("family_links")
    .set({ revoked_at: instant(nowMs) })
    .where("practice", "=", practice)
    .where("id", "=", id)
    .where("child", "=", child)
    .where("revoked_at", "is", null)
    .execute()
}

/** What a link is known by to the world: its id and a signature. Nothing of it speaks of a child. */
export async function familyLinkToken(
  queries: Kysely<Tables>,
  practice: string,
  id: string,
): Promise<string> {
  return `${id}.${signature(await signingKey(queries, practice, "family-links"), id)}`
}

/** The link of a token while it may be opened; null for one that is unknown, forged, expired, revoked or locked. */
export async function openableFamilyLink(
  queries: Kysely<Tables>,
  practice: string,
  { token, nowMs }: { readonly token: string; readonly nowMs: number },
): Promise<FamilyLink | null> {
  const [id = "", signed = ""] = token.split(".")
  const expected = Buffer.from(signature(await signingKey(queries, practice, "family-links"), id))
  const given = Buffer.from(signed)
  if (given.length !== expected.length || !timingSafeEqual(given, expected)) return null
  const row = await queries
    .selectFrom("family_links")
    .selectAll()
    .where("practice", "=", practice)
    .where("id", "=", id)
    .executeTakeFirst()
  if (!row || row.revoked_at !== null || row.failures >= LINK_FAILURES_ALLOWED) return null
  return Date.parse(row.expires_at) > nowMs ? linkOf(row) : null
}

/** Writes down a try at opening: a right one clears the wrong ones before it. */
export async function noteFamilyLinkTry(
  queries: Kysely<Tables>,
  practice: string,
  { id, isRight, nowMs }: { readonly id: string; readonly isRight: boolean; readonly nowMs: number },
): Promise<void> {
  const change = isRight
    ? { failures: 0, opened_count: sql<number>`opened_count + 1`, last_opened_at: instant(nowMs) }
    : { failures: sql<number>`failures + 1` }
  await queries
    .updateTable("family_links")
    .set(change)
    .where("practice", "=", practice)
    .where("id", "=", id)
    .execute()
}

const signature = (key: string, id: string): string =>
  createHmac("sha256", Buffer.from(key, "base64url")).update(id).digest("base64url").slice(0, 22)

const linkOf = (row: FamilyLinksTable): FamilyLink => ({
  id: row.id,
  child: row.child,
  language: row.language,
  createdAt: row.created_at,
  createdBy: row.created_by,
  expiresAt: row.expires_at,
  revokedAt: row.revoked_at,
  failures: row.failures,
  openedCount: row.opened_count,
  lastOpenedAt: row.last_opened_at,
})

const instant = (ms: number): string => new Date(ms).toISOString()
