import { createHash } from "node:crypto"
import { stat } from "node:fs/promises"
import { type Entry, openPromise, type ZipFile } from "yauzl"
import { ArchiveFault } from "./archive-fault.js"
import {
  ARCHIVE_FORMAT,
  ARCHIVE_LIMITS,
  ARCHIVE_VERSION,
  type ArchiveLimits,
  type ArchivePart,
  MANIFEST,
  type Manifest,
  manifestSchema,
} from "./format.js"
import { linesOf, type NumberedLine } from "./lines.js"

/** An archive whose directory and manifest were checked; each part is checked against the manifest while it is read. */
export interface OpenArchive {
  readonly manifest: Manifest
  readonly part: (name: string) => ArchivePart | undefined
  readonly pieces: (name: string) => AsyncIterable<Buffer>
  readonly bytes: (name: string, most: number) => Promise<Buffer>
  readonly lines: (name: string) => AsyncIterable<NumberedLine>
  readonly close: () => void
}

/** Opens an archive. Throws an `ArchiveFault` at the first thing that no archive of ours has. */
export async function openArchive(
  file: string,
  limits: ArchiveLimits = ARCHIVE_LIMITS,
): Promise<OpenArchive> {
  const zip = await opened(file)
  try {
    const { size } = await stat(file)
    const entries = await directoryOf(zip, { limits, size })
    const manifest = await manifestOf(zip, { entries, limits })
    const parts = partsOf(manifest, entries)
    const pieces = (name: string) => {
      const entry = entries.get(name)
      const part = parts.get(name)
      if (!entry || !part) throw new ArchiveFault(`the part ${name} is missing`)
      return checkedPieces(zip, { entry, part })
    }
    return {
      manifest,
      part: (name) => parts.get(name),
      pieces,
      bytes: (name, most) => wholeOf(pieces(name), { name, most }),
      lines: (name) => linesOf(pieces(name), { name, most: limits.lineBytes }),
      close: () => zip.close(),
    }
  } catch (cause) {
    zip.close()
    throw asFault(cause)
  }
}

/** Whether a file is a zip with a manifest of ours, whatever else is wrong with it. */
export async function isArchive(file: string): Promise<boolean> {
  const zip = await openPromise(file, OPTIONS).catch(() => null)
  if (!zip) return false
  try {
    for await (const entry of zip.eachEntry()) {
      if (entry.fileName !== MANIFEST || entry.uncompressedSize > ARCHIVE_LIMITS.manifestBytes) continue
      const pieces = piecesOf(zip, entry)
      for await (const piece of pieces) return piece.subarray(0, 200).includes(`"${ARCHIVE_FORMAT}"`)
    }
    return false
  } catch {
    return false
  } finally {
    zip.close()
  }
}

const OPTIONS = { autoClose: false, strictFileNames: true, validateEntrySizes: true } as const

async function opened(file: string): Promise<ZipFile> {
  try {
    return await openPromise(file, OPTIONS)
  } catch (cause) {
    const { code } = cause as NodeJS.ErrnoException
    if (code === "ENOENT") throw new ArchiveFault("there is no such file")
    if (code === "EISDIR") throw new ArchiveFault("it is a folder")
    throw new ArchiveFault(`it is no archive, or it was cut short: ${(cause as Error).message}`)
  }
}

/** Names in plain letters below the archive itself: nothing that a disk could take for a place of its own. */
const PART_NAME = /^[A-Za-z0-9][A-Za-z0-9._-]{0,150}(\/[A-Za-z0-9][A-Za-z0-9._-]{0,150}){0,3}$/

const FILE_KIND = 0o170000
const REGULAR_FILE = 0o100000

async function directoryOf(
  zip: ZipFile,
  { limits, size }: { readonly limits: ArchiveLimits; readonly size: number },
): Promise<ReadonlyMap<string, Entry>> {
  if (zip.entryCount > limits.parts)
    throw new ArchiveFault(`it says it has ${zip.entryCount} parts; at most ${limits.parts} are read`)
  const entries = new Map<string, Entry>()
  const seen = new Set<string>()
  let unpacked = 0
  let packed = 0
  for await (const entry of zip.eachEntry()) {
    const { fileName: name, uncompressedSize, compressedSize } = entry
    if (!PART_NAME.test(name) || name.includes(".."))
      throw new ArchiveFault(`the name ${shown(name)} is not one of a part`)
    const kind = (entry.externalFileAttributes >>> 16) & FILE_KIND
    if (kind !== 0 && kind !== REGULAR_FILE)
      throw new ArchiveFault(`the part ${name} is a link or a device, not a file`)
    if (entry.isEncrypted() || !entry.canDecodeFileData())
      throw new ArchiveFault(`the part ${name} is encrypted or packed in a way that is not read here`)
    // On some disks names that differ in capitals only are one file.
    if (seen.has(name.toLowerCase())) throw new ArchiveFault(`the part ${name} is there twice`)
    seen.add(name.toLowerCase())
    unpacked += uncompressedSize
    packed += compressedSize
    if (unpacked > limits.totalBytes)
      throw new ArchiveFault(`unpacked it has more than ${limits.totalBytes / 1e9} GB`)
    if (packed > size) throw new ArchiveFault("its parts lie over each other")
    if (uncompressedSize > limits.ratioFromBytes && uncompressedSize > limits.ratio * compressedSize)
      throw new ArchiveFault(
        `the part ${name} would become ${limits.ratio} times as large or more when unpacked`,
      )
    entries.set(name, entry)
  }
  return entries
}

async function manifestOf(
  zip: ZipFile,
  { entries, limits }: { readonly entries: ReadonlyMap<string, Entry>; readonly limits: ArchiveLimits },
): Promise<Manifest> {
  const entry = entries.get(MANIFEST)
  if (!entry) throw new ArchiveFault(`it has no ${MANIFEST}, so it is no archive of Lengthwise`)
  const bytes = await wholeOf(piecesOf(zip, entry), { name: MANIFEST, most: limits.manifestBytes })
  let value: unknown
  try {
    value = JSON.parse(bytes.toString("utf8"))
  } catch {
    throw new ArchiveFault(`${MANIFEST} is not JSON`)
  }
  const { format, version } = (value ?? {}) as { readonly format?: unknown; readonly version?: unknown }
  if (format !== ARCHIVE_FORMAT) throw new ArchiveFault(`${MANIFEST} is not one of Lengthwise`)
  if (version !== ARCHIVE_VERSION)
    throw new ArchiveFault(
      `it is an archive of version ${shown(String(version))}; this program reads version ${ARCHIVE_VERSION}. Use the version of Lengthwise that made it, or a later one`,
    )
  const read = manifestSchema.safeParse(value)
  if (read.success) return read.data
  const fault = read.error.issues[0]
  throw new ArchiveFault(
    `${MANIFEST}: ${fault?.path.join(".") ?? ""}: ${fault?.message ?? "not as documented"}`,
  )
}

/** The parts by name; the manifest and the directory must name the same ones. */
function partsOf(manifest: Manifest, entries: ReadonlyMap<string, Entry>): ReadonlyMap<string, ArchivePart> {
  const parts = new Map(manifest.parts.map((part) => [part.name, part]))
  if (parts.size !== manifest.parts.length) throw new ArchiveFault(`${MANIFEST} names a part twice`)
  for (const { name, bytes } of parts.values()) {
    const entry = entries.get(name)
    if (!entry) throw new ArchiveFault(`the part ${shown(name)} is missing`)
    if (entry.uncompressedSize !== bytes)
      throw new ArchiveFault(
        `the part ${name} has ${entry.uncompressedSize} bytes; the manifest says ${bytes}`,
      )
  }
  for (const name of entries.keys())
    if (name !== MANIFEST && !parts.has(name))
      throw new ArchiveFault(`the part ${name} is not in the manifest`)
  return parts
}

async function* piecesOf(zip: ZipFile, entry: Entry): AsyncGenerator<Buffer> {
  const stream = await zip.openReadStreamPromise(entry)
  let bytes = 0
  for await (const piece of stream) {
    bytes += (piece as Buffer).length
    // The directory can say less than what comes.
    if (bytes > entry.uncompressedSize)
      throw new ArchiveFault(`the part ${entry.fileName} has more bytes than it says`)
    yield piece as Buffer
  }
  if (bytes !== entry.uncompressedSize) throw new ArchiveFault(`the part ${entry.fileName} is cut short`)
}

async function* checkedPieces(
  zip: ZipFile,
  { entry, part }: { readonly entry: Entry; readonly part: ArchivePart },
): AsyncGenerator<Buffer> {
  const hash = createHash("sha256")
  try {
    for await (const piece of piecesOf(zip, entry)) {
      hash.update(piece)
      yield piece
    }
  } catch (cause) {
    throw asFault(cause, part.name)
  }
  if (hash.digest("hex") !== part.sha256)
    throw new ArchiveFault(`the part ${part.name} is not what it was when the archive was made (SHA-256)`)
}

async function wholeOf(
  pieces: AsyncIterable<Buffer>,
  { name, most }: { readonly name: string; readonly most: number },
): Promise<Buffer> {
  const held: Buffer[] = []
  let bytes = 0
  for await (const piece of pieces) {
    bytes += piece.length
    if (bytes > most) throw new ArchiveFault(`the part ${name} has more than ${most} bytes`)
    held.push(piece)
  }
  return Buffer.concat(held)
}

const shown = (text: string): string => JSON.stringify(text.slice(0, 120))

function asFault(cause: unknown, part?: string): ArchiveFault {
  if (cause instanceof ArchiveFault) return cause
  const where = part === undefined ? "" : `the part ${part}: `
  return new ArchiveFault(`${where}${cause instanceof Error ? cause.message : String(cause)}`)
}
