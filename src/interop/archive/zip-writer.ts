import { createHash } from "node:crypto"
import { Readable, type Writable } from "node:stream"
import { pipeline } from "node:stream/promises"
import { ZipFile } from "yazl"
import { ARCHIVE_FORMAT, ARCHIVE_VERSION, type ArchivePart, MANIFEST, type Manifest } from "./format.js"

export type PartContent = string | Uint8Array | AsyncIterable<string | Uint8Array>

export interface ArchiveWriter {
  /** Writes a part as it comes, never more of it in memory than a few pieces. One part at a time. */
  readonly add: (name: string, content: PartContent) => Promise<ArchivePart>
  /** Writes the manifest as the last part and closes the archive. */
  readonly finish: (about: Omit<Manifest, "format" | "version" | "parts">) => Promise<Manifest>
  /** Closes a zip that is no archive of ours, only files. */
  readonly end: () => Promise<void>
}

/** What is packed already gains nothing by being packed again. */
const PACKED = /\.(pdf|png|jpg|zip)$|^files\//

/** An archive of ours into a stream. A fault of the stream, or the signal, ends the part under way with an error. */
export function archiveWriter(
  destination: Writable,
  { madeAt, signal }: { readonly madeAt: Date; readonly signal?: AbortSignal | undefined },
): ArchiveWriter {
  const zip = new ZipFile()
  const output = zip.outputStream as Readable
  const written = pipeline(output, destination, ...(signal ? [{ signal }] : []))
  // Awaited by whoever adds or finishes; until then a failure must not end the process.
  written.catch(() => {})
  zip.on("error", (cause: Error) => output.destroy(cause))
  const parts: ArchivePart[] = []
  const names = new Set<string>()

  const add: ArchiveWriter["add"] = async (name, content) => {
    if (names.has(name)) throw new RangeError(`two parts of one name: ${name}`)
    names.add(name)
    const hash = createHash("sha256")
    let bytes = 0
    const counted = async function* () {
      for await (const piece of piecesOf(content)) {
        signal?.throwIfAborted()
        const buffer = typeof piece === "string" ? Buffer.from(piece, "utf8") : Buffer.from(piece)
        if (buffer.length === 0) continue
        hash.update(buffer)
        bytes += buffer.length
        yield buffer
      }
    }
    const source = Readable.from(counted(), { objectMode: false })
    const read = new Promise<void>((resolve, reject) => {
      source.once("end", resolve)
      source.once("error", (cause) => {
        reject(cause)
        output.destroy(cause)
      })
    })
    zip.addReadStream(source, name, { mtime: madeAt, mode: 0o100600, compress: !PACKED.test(name) })
    try {
      await Promise.race([read, written])
      signal?.throwIfAborted()
    } catch (cause) {
      source.destroy()
      throw cause
    }
    const part = { name, sha256: hash.digest("hex"), bytes }
    parts.push(part)
    return part
  }

  const end = async () => {
    zip.end()
    await written
  }

  return {
    add,
    finish: async (about) => {
      const head = { format: ARCHIVE_FORMAT, version: ARCHIVE_VERSION } as const
      const manifest: Manifest = { ...head, ...about, parts: [...parts] }
      await add(MANIFEST, `${JSON.stringify(manifest, null, 1)}\n`)
      await end()
      return manifest
    },
    end,
  }
}

async function* piecesOf(content: PartContent): AsyncGenerator<string | Uint8Array> {
  if (typeof content === "string" || content instanceof Uint8Array) yield content
  else yield* content
}
