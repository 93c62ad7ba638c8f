import { createHash, randomBytes, timingSafeEqual } from "node:crypto"
import type { Kysely } from "kysely"
import { SCOPES, type Scope } from "../engine/access/scopes.js"
import { type Person, personOf } from "./people.js"
import type { Tables } from "./tables.js"
import type { ApiTokensTable } from "./token-tables.js"

/** What every token begins with, so that one that strayed into a file or a log is known for what it is. */
export const TOKEN_PREFIX = "lw_"

export interface ApiToken {
  readonly id: string
  readonly name: string
  /** Its last characters, by which a person tells two of them apart. */
  readonly ending: string
  readonly scopes: readonly Scope[]
  readonly createdAt: string
  /** Id of the person who made it and whose name stands beside what it records. */
  readonly createdBy: string
  /** ISO instant from which it opens nothing. */
  readonly expiresAt: string
  /** To the hour. */
  readonly lastUsedAt: string | null
  readonly revokedAt: string | null
  readonly revokedBy: string | null
}

export interface NewToken {
  readonly name: string
  readonly scopes: readonly Scope[]
  readonly createdBy: string
  readonly nowMs: number
  readonly expiresMs: number
}

/** Whoever asks by a token: the person who made it, within its scopes. */
export interface TokenUse {
  readonly person: Person
  readonly token: Pick<ApiToken, "id" | "scopes">
}

/** A use is written down to the hour: enough to see a token that nobody needs, and no trace of anyone's day. */
const TOUCH_EVERY_MS = 3_600_000

/** Keys of other programs to one practice's record. */
export function tokens(queries: Kysely<Tables>, practice: string) {
  const rows = () => queries.selectFrom("api_tokens").selectAll().where("practice", "=", practice)

  return {
    /** Makes a token: 256 random bits, of which only the hash is stored. This answer alone holds the token itself. */
    async add({ name, scopes, createdBy, nowMs, expiresMs }: NewToken) {
      const secret = TOKEN_PREFIX + randomBytes(32).toString("base64url")
      const row: ApiTokensTable = {
        practice,
        id: crypto.randomUUID(),
        name,
        token_hash: hashOf(secret),
        ending: secret.slice(-4),
        scopes: JSON.stringify(SCOPES.filter((scope) => scopes.includes(scope))),
        created_at: instant(nowMs),
        created_by: createdBy,
        expires_at: instant(expiresMs),
        last_used_at: null,
        revoked_at: null,
        revoked_by: null,
      }
      await queries.insertInto("api_tokens").values(row).execute()
      return { secret, token: tokenOf(row) }
    },

    /** Every token there was, the newest first. */
    list: async (): Promise<readonly ApiToken[]> =>
      (await rows().orderBy("created_at", "desc").orderBy("id").execute()).map(tokenOf),

    /** False when there is no such token, or it was revoked before. */
    async revoke({ id, by, nowMs }: { readonly id: string; readonly by: string; readonly nowMs: number }) {
      const { numUpdatedRows } = await queries
        .updateTable("api_tokens")
        .set({ revoked_at: instant(nowMs), revoked_by: by })
        .where("practice", "=", practice)
        .where("id", "=", id)
        .where("revoked_at", "is", null)
        .executeTakeFirst()
      return numUpdatedRows > 0n
    },

    /** What a token opens; null when it is unknown, revoked or expired, or its person can log in no more. */
    async use({ secret, nowMs }: { readonly secret: string; readonly nowMs: number }) {
      const hash = hashOf(secret)
      // Found by its hash: how long the search takes tells of the hash, and nothing of a token.
      const row = await queries
        .selectFrom("api_tokens")
        .innerJoin("people", (join) =>
          join
            .onRef("people.practice", "=", "api_tokens.practice")
            .onRef("people.id", "=", "api_tokens.created_by"),
        )
        .selectAll("api_tokens")
        .select(["people.id as person", "people.name as person_name", "people.log_in", "people.role"])
        .where("api_tokens.practice", "=", practice)
        .where("api_tokens.token_hash", "=", hash)
        .where("people.password_hash", "is not", null)
        .executeTakeFirst()
      if (!row || !timingSafeEqual(Buffer.from(row.token_hash), Buffer.from(hash))) return null
      if (row.revoked_at !== null || Date.parse(row.expires_at) <= nowMs) return null
      if (row.last_used_at === null || nowMs - Date.parse(row.last_used_at) >= TOUCH_EVERY_MS)
        await queries
          .updateTable("api_tokens")
          .set({ last_used_at: instant(nowMs - (nowMs % TOUCH_EVERY_MS)) })
          .where("practice", "=", practice)
          .where("id", "=", row.id)
          .execute()
      const { person, person_name, log_in, role } = row
      const use: TokenUse = {
        person: personOf({ id: person, name: person_name, log_in, role }),
        token: { id: row.id, scopes: tokenOf(row).scopes },
      }
      return use
    },
  }
}

function tokenOf(row: ApiTokensTable): ApiToken {
  return {
    id: row.id,
    name: row.name,
    ending: row.ending,
    scopes: JSON.parse(row.scopes) as readonly Scope[],
    createdAt: row.created_at,
    createdBy: row.created_by,
    expiresAt: row.expires_at,
    lastUsedAt: row.last_used_at,
    revokedAt: row.revoked_at,
    revokedBy: row.revoked_by,
  }
}

const hashOf = (secret: string): string => createHash("sha256").update(secret).digest("hex")

const instant = (ms: number): string => new Date(ms).toISOString()
