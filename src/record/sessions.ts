import { createHash, randomBytes } from "node:crypto"
import type { Kysely } from "kysely"
import { type Person, personOf } from "./people.js"
import type { Tables } from "./tables.js"

/** Common practice, no source: half an hour without use, twelve hours at most. */
const SESSION_LIMITS = { idleMs: 30 * 60_000, absoluteMs: 12 * 3_600_000 } as const

/** A use is written down at most this often, so that reading pages does not write at every click. */
const TOUCH_EVERY_MS = 60_000

/** Opens a session and returns its token: 256 random bits, of which only the hash is stored. Forgets those too old. */
export async function openSession(
  queries: Kysely<Tables>,
  practice: string,
  { person, nowMs }: { readonly person: string; readonly nowMs: number },
): Promise<string> {
  const token = randomBytes(32).toString("base64url")
  const now = instant(nowMs)
  const tooOld = instant(nowMs - SESSION_LIMITS.absoluteMs)
  await queries
    .deleteFrom("sessions")
    .where("practice", "=", practice)
    .where("created_at", "<=", tooOld)
    .execute()
  await queries
    .insertInto("sessions")
    .values({
      practice,
      token_hash: tokenHash(token),
      person,
      created_at: now,
      last_seen_at: now,
      revoked_at: null,
    })
    .execute()
  return token
}

/** Whose session the token opens, null when it is unknown, ended, idle too long or too old. */
export async function personOfSession(
  queries: Kysely<Tables>,
  practice: string,
  { token, nowMs }: { readonly token: string; readonly nowMs: number },
): Promise<Person | null> {
  const row = await queries
    .selectFrom("sessions")
    .innerJoin("people", (join) =>
      join.onRef("people.practice", "=", "sessions.practice").onRef("people.id", "=", "sessions.person"),
    )
    .select(["people.id", "people.name", "people.log_in", "people.role"])
    .select(["sessions.last_seen_at", "sessions.created_at"])
    .where("sessions.practice", "=", practice)
    .where("sessions.token_hash", "=", tokenHash(token))
    .where("sessions.revoked_at", "is", null)
    .executeTakeFirst()
  if (!row) return null
  const idleMs = nowMs - Date.parse(row.last_seen_at)
  const ageMs = nowMs - Date.parse(row.created_at)
  if (idleMs >= SESSION_LIMITS.idleMs || ageMs >= SESSION_LIMITS.absoluteMs) return null
  if (idleMs >= TOUCH_EVERY_MS)
    await queries
      .updateTable("sessions")
      .set({ last_seen_at: instant(nowMs) })
      .where("practice", "=", practice)
      .where("token_hash", "=", tokenHash(token))
      .execute()
  return personOf(row)
}

export async function endSession(
  queries: Kysely<Tables>,
  practice: string,
  { token, nowMs }: { readonly token: string; readonly nowMs: number },
): Promise<void> {
  await queries
    .updateTable("sessions")
    .set({ revoked_at: instant(nowMs) })
    .where("practice", "=", practice)
    .where("token_hash", "=", tokenHash(token))
    .where("revoked_at", "is", null)
    .execute()
}

/** Ends all of a person's sessions, but for the one of `except`. */
export async function endSessionsOf(
  queries: Kysely<Tables>,
  practice: string,
  { person, except, nowMs }: { readonly person: string; readonly except?: string; readonly nowMs: number },
): Promise<void> {
  let ending = queries
    .updateTable("sessions")
    .set({ revoked_at: instant(nowMs) })
    .where("practice", "=", practice)
    .where("person", "=", person)
    .where("revoked_at", "is", null)
  if (except !== undefined) ending = ending.where("token_hash", "<>", tokenHash(except))
  await ending.execute()
}

function tokenHash(token: string): string {
  return createHash("sha256").update(token).digest("hex")
}

function instant(ms: number): string {
  return new Date(ms).toISOString()
}
