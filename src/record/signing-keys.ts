import { randomBytes } from "node:crypto"
import type { Kysely } from "kysely"
import type { Tables } from "./tables.js"

/** What a practice keeps a secret for. Each has one of its own, so that none gives another away. */
export type KeyPurpose = "family-links" | "research"

/** The practice's key (256 random bits, base64url), made the first time it is asked for. */
export async function signingKey(
  queries: Kysely<Tables>,
  practice: string,
  purpose: KeyPurpose,
): Promise<string> {
  const known = () =>
    queries
      .selectFrom("signing_keys")
      .select("key")
      .where("practice", "=", practice)
      .where("purpose", "=", purpose)
      .executeTakeFirst()
  const row = await known()
  if (row) return row.key
  await queries
    .insertInto("signing_keys")
    .values({ practice, purpose, key: randomBytes(32).toString("base64url") })
    // Of two at once the first one's key stays.
    .onConflict((conflict) => conflict.doNothing())
    .execute()
  return (await known())?.key ?? ""
}
