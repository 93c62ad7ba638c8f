import { crc32, deflateRawSync } from "node:zlib"
import * as yauzl from "yauzl"

export interface ZipPart {
  readonly name: string
  readonly bytes: Uint8Array
}

/** The parts of a sound zip, unpacked. */
export function zipParts(bytes: Uint8Array): Promise<readonly ZipPart[]> {
  return new Promise((resolve, reject) => {
    yauzl.fromBuffer(Buffer.from(bytes), { lazyEntries: true }, (error, zip) => {
      if (error) return reject(error)
      const parts: ZipPart[] = []
      zip.on("error", reject)
      zip.on("end", () => resolve(parts))
      zip.on("entry", (entry: yauzl.Entry) => {
        zip.openReadStream(entry, (cause, stream) => {
          if (cause) return reject(cause)
          const pieces: Buffer[] = []
          stream.on("error", reject)
          stream.on("data", (piece: Buffer) => pieces.push(piece))
          stream.on("end", () => {
            parts.push({ name: entry.fileName, bytes: new Uint8Array(Buffer.concat(pieces)) })
            zip.readEntry()
          })
        })
      })
      zip.readEntry()
    })
  })
}

/** A zip of these parts with sound lengths and checksums, so that only what is in them is broken. */
export function zipOf(parts: readonly ZipPart[]): Uint8Array {
  const locals: Buffer[] = []
  const entries: Buffer[] = []
  let start = 0
  for (const { name, bytes } of parts) {
    const named = Buffer.from(name)
    const packed = deflateRawSync(bytes, { level: 1 })
    // From "version needed" to "length of the extra field": the same words in both headers.
    const shared = Buffer.alloc(26)
    shared.writeUInt16LE(20, 0)
    shared.writeUInt16LE(8, 4)
    shared.writeUInt16LE(0x21, 8)
    shared.writeUInt32LE(crc32(bytes), 10)
    shared.writeUInt32LE(packed.length, 14)
    shared.writeUInt32LE(bytes.length, 18)
    shared.writeUInt16LE(named.length, 22)
    locals.push(Buffer.from("PK\x03\x04", "latin1"), shared, named, packed)
    const place = Buffer.alloc(14)
    place.writeUInt32LE(start, 10)
    entries.push(Buffer.from("PK\x01\x02\x14\x00", "latin1"), shared, place, named)
    start += 30 + named.length + packed.length
  }
  const directory = Buffer.concat(entries)
  const end = Buffer.alloc(18)
  end.writeUInt16LE(parts.length, 4)
  end.writeUInt16LE(parts.length, 6)
  end.writeUInt32LE(directory.length, 8)
  end.writeUInt32LE(start, 12)
  return new Uint8Array(Buffer.concat([...locals, directory, Buffer.from("PK\x05\x06", "latin1"), end]))
}
