import { createHash } from "node:crypto"
import type { Kysely } from "kysely"
import { RecordError } from "./record-error.js"
import type { Tables } from "./tables.js"

/** A file is known by the hash of its content, so that an entry that names it names exactly these bytes. */
export interface StoredFile {
  /** SHA-256 of the bytes, hexadecimal. */
  readonly sha256: string
  readonly mediaType: string
  readonly bytes: Buffer
  /** Id of the person who first stored it. */
  readonly author: string
  /** ISO instant, UTC. */
  readonly recordedAt: string
}

export type NewFile = Omit<StoredFile, "sha256">

/** Stores the bytes and answers with their hash. The same bytes again are the file that is there. */
export async function addFile(
  queries: Kysely<Tables>,
  practice: string,
  { mediaType, bytes, author, recordedAt }: NewFile,
): Promise<string> {
  const sha256 = sha256Of(bytes)
  await queries.transaction().execute(async (transaction) => {
    if ((await mediaTypeOf(transaction, practice, sha256)) !== null) return
    const row = { practice, sha256, media_type: mediaType, bytes, author, recorded_at: recordedAt }
    await transaction.insertInto("files").values(row).execute()
  })
  return sha256
}

/** The file, null when there is none. Bytes that no longer match their hash are refused, never handed out. */
export async function fileOf(
  queries: Kysely<Tables>,
  practice: string,
  sha256: string,
): Promise<StoredFile | null> {
  const row = await queries
    .selectFrom("files")
    .selectAll()
    .where("practice", "=", practice)
    .where("sha256", "=", sha256)
    .executeTakeFirst()
  if (!row) return null
  const bytes = Buffer.from(row.bytes)
  if (sha256Of(bytes) !== sha256)
    throw new RecordError(`the content of the stored file ${sha256} was altered`)
  return { sha256, mediaType: row.media_type, bytes, author: row.author, recordedAt: row.recorded_at }
}

/** The media type of a stored file without reading its bytes, null when there is no such file. */
export async function mediaTypeOf(
  queries: Kysely<Tables>,
  practice: string,
  sha256: string,
): Promise<string | null> {
  const row = await queries
    .selectFrom("files")
    .select("media_type")
    .where("practice", "=", practice)
    .where("sha256", "=", sha256)
    .executeTakeFirst()
  return row?.media_type ?? null
}

const sha256Of = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex")
