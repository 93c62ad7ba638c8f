import { createHash } from "node:crypto"
import type { Kysely, Selectable } from "kysely"
import { canonicalJson } from "./canonical-json.js"
import type { OpenDatabase } from "./driver.js"
import type { Tables } from "./tables.js"

export type EntryRow = Selectable<Tables["entries"]>

/** What stands before the first entry of a practice. */
export const CHAIN_START = "0".repeat(64)

export type ChainReport =
  | { readonly whole: true; readonly entries: number; readonly head: string }
  | { readonly whole: false; readonly position: number; readonly id: string; readonly why: string }

const BATCH = 1000

/** Hash of the practice's last entry. */
export async function chainHead(queries: Kysely<Tables>, practice: string): Promise<string> {
  const last = await queries
    .selectFrom("entries")
    .select("hash")
    .where("practice", "=", practice)
    .orderBy("position", "desc")
    .limit(1)
    .executeTakeFirst()
  return last?.hash ?? CHAIN_START
}

/**
 * SHA-256 (hex) over the canonical JSON of the entry's fields in a fixed order. The body is hashed as the text that
 * is stored, so that not even its spelling can change unnoticed.
 */
export function entryHash(row: Omit<EntryRow, "hash">): string {
  const fields = [
    "lengthwise-entry-1",
    row.practice,
    row.position,
    row.id,
    row.child,
    row.kind,
    row.body,
    row.author,
    row.recorded_at,
    row.supersedes,
    row.reason,
    row.previous_hash,
  ]
  return createHash("sha256").update(canonicalJson(fields)).digest("hex")
}

/**
 * Walks the practice's entries from the first and reports the first that is missing, moved or altered.
 * Entries cut off at the end leave a whole, shorter chain: keep `head` elsewhere (a backup, a log) to see that.
 */
export async function verifyChain(database: OpenDatabase, practice: string): Promise<ChainReport> {
  let position = 0
  let head = CHAIN_START
  for (;;) {
    const rows = await database.queries
      .selectFrom("entries")
      .selectAll()
      .where("practice", "=", practice)
      .where("position", ">", position)
      .orderBy("position")
      .limit(BATCH)
      .execute()
    for (const row of rows) {
      const why = brokenLink(row, { position: position + 1, previousHash: head })
      if (why) return { whole: false, position: row.position, id: row.id, why }
      position = row.position
      head = row.hash
    }
    if (rows.length < BATCH) return { whole: true, entries: position, head }
  }
}

function brokenLink(
  row: EntryRow,
  expected: { readonly position: number; readonly previousHash: string },
): string | null {
  if (row.position !== expected.position) return `entry ${expected.position} is missing`
  if (row.previous_hash !== expected.previousHash) return "its link to the entry before does not hold"
  if (row.hash !== entryHash(row)) return "its content does not match its hash"
  return null
}
