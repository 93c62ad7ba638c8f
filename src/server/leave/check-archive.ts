import type { z } from "zod"
import { ArchiveFault } from "../../interop/archive/archive-fault.js"
import {
  ARCHIVE_LIMITS,
  entrySchema,
  type FileLine,
  filePart,
  fileSchema,
  type PersonLine,
  type PracticeLine,
  personSchema,
  practiceSchema,
  RECORD_PARTS,
} from "../../interop/archive/format.js"
import type { OpenArchive } from "../../interop/archive/zip-reader.js"
import {
  ARCHIVE_TABLES,
  CHAIN_START,
  dayOf,
  type EntryRow,
  entryHash,
  PAPER_KINDS,
  type PlainRow,
} from "../../record/index.js"
import { entryRow } from "./record-lines.js"

/** What was found in an archive whose every part was read and holds. */
export interface CheckedArchive {
  readonly practice: PracticeLine
  readonly people: readonly PersonLine[]
  readonly entries: number
  readonly head: string
}

/**
 * Reads an archive of a practice from its first part to its last before anything is stored: every checksum, every entry
 * and its link to the one before, every file and whoever recorded it. Throws an `ArchiveFault` that names the first fault.
 */
export async function checkArchive(
  archive: OpenArchive,
  onProgress: (done: { readonly bytes: number; readonly of: number }) => void = () => {},
): Promise<CheckedArchive> {
  const { manifest } = archive
  if (manifest.of !== "practice") throw new ArchiveFault("it holds the course of one child, not a practice")
  const [damage] = manifest.damage
  if (damage !== undefined)
    throw new ArchiveFault(
      `the record it was made from was damaged already: ${damage}. It can be read, not restored`,
    )
  const of = manifest.parts.reduce((sum, { bytes }) => sum + bytes, 0)
  let bytes = 0
  const passed = (name: string) => {
    bytes += archive.part(name)?.bytes ?? 0
    onProgress({ bytes, of })
  }
  const practice = parsed(
    practiceSchema,
    (await archive.bytes(RECORD_PARTS.practice, 1_000_000)).toString("utf8"),
    {
      where: RECORD_PARTS.practice,
    },
  )
  if (practice.id !== manifest.practice?.id)
    throw new ArchiveFault(`${RECORD_PARTS.practice} is of another practice than the manifest`)
  const people: PersonLine[] = []
  for await (const person of linesAs(archive, RECORD_PARTS.people, personSchema)) people.push(person)
  const authors = new Set(people.map(({ id }) => id))
  const chain = await checkedChain(archive, { practice: practice.id, authors })
  passed(RECORD_PARTS.entries)
  if (chain.head !== manifest.head)
    throw new ArchiveFault(`its entries end with ${chain.head}; the manifest says ${manifest.head}`)
  const files = await checkedFiles(archive, { authors, passed })
  for (const [table, decision] of Object.entries(ARCHIVE_TABLES))
    if (decision.kept === "rows")
      for await (const row of rowsOf(archive, table)) checkedRow(row, { table, madeAt: manifest.madeAt })
  const read = new Set<string>([RECORD_PARTS.entries, ...files])
  for (const { name } of manifest.parts) {
    if (read.has(name)) continue
    for await (const _ of archive.pieces(name)) {
      // Read for its checksum alone.
    }
    passed(name)
  }
  return { practice, people, ...chain }
}

/** The rows of a table that is kept as it stands; a table that came later than the archive has none. */
export async function* rowsOf(archive: OpenArchive, table: string): AsyncGenerator<PlainRow> {
  const decision = ARCHIVE_TABLES[table]
  if (decision?.kept !== "rows" || !archive.part(decision.part)) return
  for await (const { number, text } of archive.lines(decision.part)) {
    const where = `${decision.part}, line ${number}`
    const row = jsonOf(text, where)
    if (typeof row !== "object" || row === null || Array.isArray(row))
      throw new ArchiveFault(`${where}: not a row`)
    const plain = Object.values(row).every(
      (value) => value === null || ["string", "number"].includes(typeof value),
    )
    if (!plain) throw new ArchiveFault(`${where}: a field that is no text, number or null`)
    yield row as PlainRow
  }
}

export async function* entriesOf(archive: OpenArchive, practice: string): AsyncGenerator<EntryRow> {
  for await (const line of linesAs(archive, RECORD_PARTS.entries, entrySchema)) yield entryRow(line, practice)
}

export const filesOf = (archive: OpenArchive): AsyncGenerator<FileLine> =>
  linesAs(archive, RECORD_PARTS.files, fileSchema)

async function checkedChain(
  archive: OpenArchive,
  { practice, authors }: { readonly practice: string; readonly authors: ReadonlySet<string> },
): Promise<{ readonly entries: number; readonly head: string }> {
  let entries = 0
  let head = CHAIN_START
  for await (const row of entriesOf(archive, practice)) {
    const fault = entryFault(row, { position: entries + 1, head, authors })
    if (fault !== null) throw new ArchiveFault(`entry ${row.position} (${row.id.slice(0, 60)}): ${fault}`)
    entries = row.position
    head = row.hash
  }
  return { entries, head }
}

function entryFault(
  row: EntryRow,
  expected: { readonly position: number; readonly head: string; readonly authors: ReadonlySet<string> },
): string | null {
  if (row.position !== expected.position) return `entry ${expected.position} is missing before it`
  if (row.previous_hash !== expected.head) return "its link to the entry before does not hold"
  if (row.hash !== entryHash(row)) return "it was altered: its content does not match its hash"
  if (!expected.authors.has(row.author)) return "its author is nobody of the practice"
  const isPaper = (PAPER_KINDS as readonly string[]).includes(row.kind)
  if (row.kind !== "withdrawal" && isPaper !== (row.child === row.practice))
    return "papers stand under the practice, everything else under a child"
  return bodyFault(row)
}

function bodyFault({ kind, body }: EntryRow): string | null {
  try {
    const value: unknown = JSON.parse(body)
    if (typeof value !== "object" || value === null || Array.isArray(value))
      return "its body is no JSON object"
    const day: unknown = dayOf({ kind, body: value } as Parameters<typeof dayOf>[0])
    return day === undefined ? "its kind is not known here, or its body lacks its day" : null
  } catch {
    return "its body is not JSON"
  }
}

/** Every file that is named is there with the content it is named by, and no other is. */
async function checkedFiles(
  archive: OpenArchive,
  { authors, passed }: { readonly authors: ReadonlySet<string>; readonly passed: (name: string) => void },
): Promise<ReadonlySet<string>> {
  const found = new Set<string>()
  for await (const { sha256, bytes, author } of filesOf(archive)) {
    const name = filePart(sha256)
    const part = archive.part(name)
    if (!part) throw new ArchiveFault(`the file ${sha256} is missing`)
    if (part.sha256 !== sha256 || part.bytes !== bytes)
      throw new ArchiveFault(`the file ${sha256} has another content than it is named by`)
    if (bytes > ARCHIVE_LIMITS.fileBytes) throw new ArchiveFault(`the file ${sha256} has ${bytes} bytes`)
    if (!authors.has(author))
      throw new ArchiveFault(`the file ${sha256}: its author is nobody of the practice`)
    for await (const _ of archive.pieces(name)) {
      // Read for its checksum alone.
    }
    found.add(name)
    passed(name)
  }
  const stray = archive.manifest.parts.find(({ name }) => name.startsWith("files/") && !found.has(name))
  if (stray) throw new ArchiveFault(`the part ${stray.name} is not named in ${RECORD_PARTS.files}`)
  return found
}

function checkedRow(
  row: PlainRow,
  { table, madeAt }: { readonly table: string; readonly madeAt: string },
): void {
  const opens = table === "family_links" && row.revoked_at === null && String(row.expires_at) > madeAt
  if (opens) throw new ArchiveFault(`the family link ${String(row.id).slice(0, 60)} is written as open`)
}

async function* linesAs<Schema extends z.ZodType>(
  archive: OpenArchive,
  name: string,
  schema: Schema,
): AsyncGenerator<z.output<Schema>> {
  for await (const { number, text } of archive.lines(name))
    yield parsed(schema, text, { where: `${name}, line ${number}` })
}

function parsed<Schema extends z.ZodType>(
  schema: Schema,
  text: string,
  { where }: { readonly where: string },
): z.output<Schema> {
  const read = schema.safeParse(jsonOf(text, where))
  if (read.success) return read.data
  const issue = read.error.issues[0]
  throw new ArchiveFault(
    `${where}: ${issue?.path.join(".") ?? ""} ${issue?.message ?? "is not as documented"}`,
  )
}

function jsonOf(text: string, where: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    throw new ArchiveFault(`${where}: it is not JSON`)
  }
}
