import type { Readable } from "node:stream"
import * as yauzl from "yauzl"
import { say } from "../../../engine/say.js"
import { TableFault } from "../table-types.js"

/** A workbook of a practice has a few dozen parts; its largest sheet read here has 100,000 rows of twenty figures. */
const MOST_PARTS = 2000
const LARGEST_PART_BYTES = 128_000_000
/** Of all parts that are read together. */
const MOST_READ_BYTES = 256_000_000
const LARGEST_WORKBOOK_BYTES = 20_000_000

/** The fixed part of a local header; what follows it is at least the name and the data. */
const LOCAL_HEADER_BYTES = 30

/** The parts of a workbook by name. Nothing is ever written to a disk, so a name is only a name. */
export interface WorkbookPackage {
  has(name: string): boolean
  /** A part in pieces; throws a `TableFault` when it is larger than it says or than is allowed. */
  part(name: string): AsyncGenerator<Uint8Array>
}

/**
 * Opens the zip of a workbook from memory. Refused before anything is unpacked: too many parts, parts that say they are
 * too large, two parts of one name, parts that share bytes of the file, names that lead out of a folder, encryption.
 */
export async function openPackage(bytes: Uint8Array): Promise<WorkbookPackage> {
  if (bytes.length > LARGEST_WORKBOOK_BYTES)
    throw unsafe(say("The workbook has more than {most} MB.", { most: LARGEST_WORKBOOK_BYTES / 1e6 }))
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const zip = await orUnsound(() => opened(buffer))
  const entries = await orUnsound(() => entriesOf(zip))
  checkNames(entries)
  checkPlaces(entries, zip.fileSize)
  const byName = new Map(entries.map((entry) => [entry.fileName, entry]))
  const budget = { left: MOST_READ_BYTES }
  return {
    has: (name) => byName.has(name),
    part: (name) => unpacked({ zip, entry: byName.get(name), budget }),
  }
}

/** What a receptionist can do about any fault of a workbook. */
export const unsafe = (why: string): TableFault =>
  new TableFault(say("{why} Please save the sheet as CSV (UTF-8).", { why }), { line: 0 })

export const unsound = (): TableFault => unsafe(say("The workbook is damaged or no workbook."))

/** Faults of the zip's own reader are told in our words. */
async function orUnsound<T>(task: () => Promise<T>): Promise<T> {
  try {
    return await task()
  } catch (error) {
    throw error instanceof TableFault ? error : unsound()
  }
}

const opened = (buffer: Buffer): Promise<yauzl.ZipFile> =>
  new Promise((resolve, reject) => {
    const options = { lazyEntries: true, strictFileNames: true, validateEntrySizes: true }
    yauzl.fromBuffer(buffer, options, (error, zip) => (error ? reject(error) : resolve(zip)))
  })

function entriesOf(zip: yauzl.ZipFile): Promise<readonly yauzl.Entry[]> {
  if (zip.entryCount > MOST_PARTS)
    throw unsafe(say("The workbook has more than {most} parts.", { most: MOST_PARTS }))
  return new Promise((resolve, reject) => {
    const entries: yauzl.Entry[] = []
    zip.on("entry", (entry: yauzl.Entry) => {
      entries.push(entry)
      zip.readEntry()
    })
    zip.on("end", () => resolve(entries))
    zip.on("error", reject)
    zip.readEntry()
  })
}

function checkNames(entries: readonly yauzl.Entry[]): void {
  const names = new Set(entries.map(({ fileName }) => fileName.toLowerCase()))
  if (names.size !== entries.length) throw unsound()
  if (entries.some((entry) => entry.isEncrypted()))
    throw unsafe(say("The workbook is protected by a password."))
  if (entries.some(({ compressionMethod }) => compressionMethod !== 0 && compressionMethod !== 8))
    throw unsound()
  if (names.has("mimetype") && !names.has("xl/workbook.xml"))
    throw unsafe(say("This is a document of another office program (.ods)."))
}

/** No two parts may stand on the same bytes: that is how a small file unpacks to a huge one. */
function checkPlaces(entries: readonly yauzl.Entry[], fileSize: number): void {
  const inOrder = entries.toSorted((a, b) => a.relativeOffsetOfLocalHeader - b.relativeOffsetOfLocalHeader)
  let free = 0
  for (const { relativeOffsetOfLocalHeader: start, compressedSize, fileNameLength } of inOrder) {
    if (start < free) throw unsound()
    free = start + LOCAL_HEADER_BYTES + fileNameLength + compressedSize
  }
  if (free > fileSize) throw unsound()
}

async function* unpacked({
  zip,
  entry,
  budget,
}: {
  readonly zip: yauzl.ZipFile
  readonly entry: yauzl.Entry | undefined
  readonly budget: { left: number }
}): AsyncGenerator<Uint8Array> {
  if (!entry) throw unsound()
  const tooLarge = () =>
    unsafe(say("A part of the workbook has more than {most} MB.", { most: LARGEST_PART_BYTES / 1e6 }))
  if (entry.uncompressedSize > LARGEST_PART_BYTES) throw tooLarge()
  const stream = await orUnsound(() => streamOf(zip, entry))
  let read = 0
  try {
    for await (const piece of stream as AsyncIterable<Buffer>) {
      read += piece.length
      budget.left -= piece.length
      if (read > LARGEST_PART_BYTES || budget.left < 0) throw tooLarge()
      yield piece
    }
  } catch (error) {
    throw error instanceof TableFault ? error : unsound()
  } finally {
    stream.destroy()
  }
}

const streamOf = (zip: yauzl.ZipFile, entry: yauzl.Entry): Promise<Readable> =>
  new Promise((resolve, reject) => {
    zip.openReadStream(entry, (error, stream) => (error ? reject(error) : resolve(stream)))
  })
