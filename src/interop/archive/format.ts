import { z } from "zod"

/** What every archive of ours says it is (docs/archive.md). */
export const ARCHIVE_FORMAT = "lengthwise-archive"

/** Changes when a reader of the former version could no longer read the archive rightly. */
export const ARCHIVE_VERSION = 1

export const MANIFEST = "manifest.json"
export const README = "README.txt"

/** Parts that a restored record is made from; everything else in an archive is there to be read by people and programs. */
export const RECORD_PARTS = {
  practice: "practice.json",
  people: "people.ndjson",
  entries: "entries.ndjson",
  files: "files.ndjson",
} as const

export const filePart = (sha256: string): string => `files/${sha256}`

/**
 * How much an archive may hold before it is refused unread. Far above what a practice has in a lifetime, far below what
 * would fill a disk or the memory.
 */
export interface ArchiveLimits {
  readonly parts: number
  readonly totalBytes: number
  /** Unpacked over packed, of parts above `ratioFromBytes`. */
  readonly ratio: number
  readonly ratioFromBytes: number
  /** Of a stored file, which is held in memory while it is put back. */
  readonly fileBytes: number
  readonly lineBytes: number
  readonly manifestBytes: number
}

export const ARCHIVE_LIMITS: ArchiveLimits = {
  parts: 1_000_000,
  totalBytes: 256_000_000_000,
  // Tables of a long course shrink to a thirtieth; what shrinks to a two-hundredth is no record.
  ratio: 200,
  ratioFromBytes: 1_000_000,
  fileBytes: 256_000_000,
  lineBytes: 64_000_000,
  manifestBytes: 300_000_000,
}

const sha256 = z.string().regex(/^[0-9a-f]{64}$/)
const instant = z.iso.datetime()
const id = z.string().min(1).max(200)

const partSchema = z.object({ name: z.string().min(1).max(300), sha256, bytes: z.int().min(0) })

export const manifestSchema = z.object({
  format: z.literal(ARCHIVE_FORMAT),
  version: z.int(),
  /** A whole practice with its record, or the course of one child. */
  of: z.enum(["practice", "course"]),
  madeAt: instant,
  madeBy: z.string().max(200),
  practice: z.object({ id, name: z.string().max(500) }).nullable(),
  /** Hash of the last entry: what tells this record from every other. */
  head: sha256.nullable(),
  counts: z.record(z.string(), z.int().min(0)),
  papers: z.object({ language: z.string(), paper: z.string() }).nullable(),
  /** Papers that could not be made, and why. */
  papersNotMade: z.array(z.object({ child: id, why: z.string() })),
  /** What was found broken in the record it was made from; an archive with damage is read by people only. */
  damage: z.array(z.string()),
  parts: z.array(partSchema),
})

export type Manifest = z.infer<typeof manifestSchema>
export type ArchivePart = z.infer<typeof partSchema>

export const practiceSchema = z.strictObject({
  id,
  name: z.string().max(500),
  latitude: z.number().min(-90).max(90).nullable(),
  settings: z.record(z.string(), z.unknown()),
  createdAt: instant,
})

export const personSchema = z.strictObject({
  id,
  name: z.string().max(500),
  logIn: z.string().min(1).max(500),
  role: z.string().min(1).max(40),
  canLogIn: z.boolean(),
  createdAt: instant,
})

/** An entry as it is stored; `body` is the text that its hash was taken of. */
export const entrySchema = z.strictObject({
  position: z.int().min(1),
  id,
  child: id,
  kind: z.string().min(1).max(40),
  body: z.string(),
  author: id,
  recordedAt: z.string().max(40),
  supersedes: id.nullable(),
  reason: z.string().nullable(),
  previousHash: sha256,
  hash: sha256,
})

export const fileSchema = z.strictObject({
  sha256,
  mediaType: z.string().regex(/^[a-z]+\/[a-z0-9.+-]{1,100}$/),
  bytes: z.int().min(0),
  author: id,
  recordedAt: z.string().max(40),
})

export type PracticeLine = z.infer<typeof practiceSchema>
export type PersonLine = z.infer<typeof personSchema>
export type EntryLine = z.infer<typeof entrySchema>
export type FileLine = z.infer<typeof fileSchema>
