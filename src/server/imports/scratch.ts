import { createHash } from "node:crypto"
import { createWriteStream, mkdirSync } from "node:fs"
import { open, readdir, rm, stat } from "node:fs/promises"
import { join } from "node:path"
import { Transform } from "node:stream"
import { pipeline } from "node:stream/promises"

/** A file being imported, as it lies on the disk. */
export interface ScratchFile {
  readonly path: string
  readonly sha256: string
  readonly bytes: number
}

const A_DAY_MS = 24 * 60 * 60 * 1000

/** The file is larger than one import may be. */
export class TooLarge extends Error {
  constructor(readonly most: number) {
    super(`more than ${most} bytes`)
    this.name = "TooLarge"
  }
}

/** Writes what arrives to a file that only its owner can read; never more than `most` bytes, and nothing when it breaks off. */
export async function received(
  arriving: NodeJS.ReadableStream,
  { folder, id, most }: { readonly folder: string; readonly id: string; readonly most: number },
): Promise<ScratchFile> {
  // Nothing is waited for before the pipeline holds the stream: an error of it would be nobody's.
  mkdirSync(folder, { recursive: true, mode: 0o700 })
  const path = join(folder, `${id}.upload`)
  const hash = createHash("sha256")
  let bytes = 0
  const counted = new Transform({
    transform(part: Buffer, _encoding, done) {
      bytes += part.length
      hash.update(part)
      if (bytes > most) done(new TooLarge(most))
      else done(null, part)
    },
  })
  try {
    await pipeline(arriving, counted, createWriteStream(path, { mode: 0o600, flags: "wx" }))
  } catch (cause) {
    await rm(path, { force: true })
    throw cause
  }
  return { path, sha256: hash.digest("hex"), bytes }
}

/** The first bytes of a file. */
export async function beginningOf(path: string, most: number): Promise<Uint8Array> {
  const file = await open(path)
  try {
    const { bytesRead, buffer } = await file.read(Buffer.alloc(most), 0, most, 0)
    return buffer.subarray(0, bytesRead)
  } finally {
    await file.close()
  }
}

/** Removes what an import left behind when the program ended in the middle of it. */
export async function sweep(
  folder: string,
  { nowMs, olderThanMs = A_DAY_MS }: { readonly nowMs: number; readonly olderThanMs?: number },
): Promise<void> {
  const names = await readdir(folder).catch(() => [])
  for (const name of names) {
    if (!/\.(upload|staging)(-\w+)?$/.test(name)) continue
    const path = join(folder, name)
    const found = await stat(path).catch(() => null)
    if (found && nowMs - found.mtimeMs >= olderThanMs) await rm(path, { force: true })
  }
}
