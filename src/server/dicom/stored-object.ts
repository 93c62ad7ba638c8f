import { IMPLEMENTATION_CLASS, IMPLEMENTATION_VERSION } from "./associate.js"
import { ascii, byteReader, paddedText, u16le, u32le } from "./bytes.js"
import { EXPLICIT_LITTLE } from "./negotiate.js"

export interface ObjectName {
  readonly sopClass: string
  readonly sopInstance: string
}

/** A UID as it may stand in a name of a file: digits and dots, at most 64 (PS3.5 9.1). */
export const isUid = (text: string): boolean => /^[0-9]+(\.[0-9]+)*$/.test(text) && text.length <= 64

/**
 * A received data set as a file of PS3.10. Who sent it is not written into it: the same object from two senders is the
 * same file.
 */
export function part10File(
  { sopClass, sopInstance, transferSyntax }: ObjectName & { readonly transferSyntax: string },
  dataSet: Uint8Array,
): Buffer {
  const meta = Buffer.concat([
    element(0x0001, "OB", Buffer.from([0, 1])),
    element(0x0002, "UI", uid(sopClass)),
    element(0x0003, "UI", uid(sopInstance)),
    element(0x0010, "UI", uid(transferSyntax)),
    element(0x0012, "UI", uid(IMPLEMENTATION_CLASS)),
    element(0x0013, "SH", ascii(IMPLEMENTATION_VERSION)),
  ])
  return Buffer.concat([
    Buffer.alloc(128),
    ascii("DICM"),
    element(0x0000, "UL", u32le(meta.length)),
    meta,
    dataSet,
  ])
}

function element(number: number, representation: string, value: Buffer): Buffer {
  const length =
    representation === "OB" ? Buffer.concat([u16le(0), u32le(value.length)]) : u16le(value.length)
  return Buffer.concat([u16le(0x0002), u16le(number), ascii(representation), length, value])
}

/** Padded to an even length with a zero (PS3.5 9.1). */
const uid = (text: string): Buffer => Buffer.concat([ascii(text), Buffer.alloc(text.length % 2)])

const SOP_CLASS = 0x00080016
const SOP_INSTANCE = 0x00080018
const UNDEFINED_LENGTH = 0xffffffff
/** Representations with two reserved bytes and a length of four (PS3.5 7.1.2). */
const LONG = new Set(["OB", "OD", "OF", "OL", "OV", "OW", "SQ", "SV", "UC", "UN", "UR", "UT", "UV"])

/**
 * Class and instance as the data set itself names them, to be held against the command. Both stand near the beginning;
 * what stands before them with an undefined length is not followed, and then neither is known.
 */
export function namesInDataSet(dataSet: Uint8Array, transferSyntax: string): Partial<ObjectName> {
  const reader = byteReader(dataSet)
  const found: { sopClass?: string; sopInstance?: string } = {}
  try {
    while (reader.left() >= 8) {
      const tag = reader.u16le() * 0x10000 + reader.u16le()
      if (tag > SOP_INSTANCE) break
      const length = transferSyntax === EXPLICIT_LITTLE ? explicitLength(reader) : reader.u32le()
      if (length === UNDEFINED_LENGTH) break
      const value = reader.take(length)
      if (tag === SOP_CLASS) found.sopClass = paddedText(value)
      if (tag === SOP_INSTANCE) found.sopInstance = paddedText(value)
    }
  } catch {
    // Cut short inside an element: whoever reads the whole object says so.
  }
  return found
}

function explicitLength(reader: ReturnType<typeof byteReader>): number {
  const representation = paddedText(reader.take(2))
  if (!LONG.has(representation)) return reader.u16le()
  reader.skip(2)
  return reader.u32le()
}
