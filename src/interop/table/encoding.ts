import { say } from "../../engine/say.js"
import type { TableEncoding } from "./table-types.js"

/** How the text of a file is written, or why it cannot be read. */
export type FoundEncoding = { readonly encoding: TableEncoding } | { readonly fault: string }

/**
 * How text is written, by its byte order mark, else by what its bytes allow. A file of an older kind is taken for
 * windows-1252 only when its letters look like those of Western Europe: read wrongly, a name would be another name.
 *
 * @example
 * foundEncoding(new TextEncoder().encode("Núñez")) // => { encoding: "utf-8" }
 */
export function foundEncoding(bytes: Uint8Array): FoundEncoding {
  const kind = otherKind(bytes)
  if (kind !== null) return { fault: kind }
  if (startsWith(bytes, [0xef, 0xbb, 0xbf])) return { encoding: "utf-8" }
  if (startsWith(bytes, [0xff, 0xfe])) return { encoding: "utf-16le" }
  if (startsWith(bytes, [0xfe, 0xff])) return { encoding: "utf-16be" }
  const wide = wideEncoding(bytes)
  if (wide !== null) return wide
  if (isValid(bytes, "utf-8")) return { encoding: "utf-8" }
  if (looksWestern(bytes)) return { encoding: "windows-1252" }
  const other = OTHER_ENCODINGS.find((name) => isValid(bytes, name))
  return {
    fault: other
      ? say(
          "The text is written in none of the ways that are read here; it may be {name}. Please save it as CSV (UTF-8).",
          { name: other },
        )
      : say(
          "The text is written in none of the ways that are read here: UTF-8, UTF-16, windows-1252. Please save it as CSV (UTF-8).",
        ),
  }
}

/** Only named, never read: one of them taken for another gives wrong names without any sign of it. */
const OTHER_ENCODINGS = ["gb18030", "shift_jis", "euc-jp", "big5", "euc-kr"] as const

/** Files of other kinds that people send for tables, by their first bytes. */
function otherKind(bytes: Uint8Array): string | null {
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0]))
    return say(
      "This is a workbook of the older kind (.xls) or one with a password. Please save it as CSV (UTF-8).",
    )
  if (startsWith(bytes, [0x50, 0x4b])) return say("This is a zip file. Please save the table as CSV (UTF-8).")
  if (startsWith(bytes, [0x25, 0x50, 0x44, 0x46]))
    return say("This is a PDF. Please save the table as CSV (UTF-8).")
  if (/^\s*<(!doctype|html|\?xml|table)/i.test(latin1(bytes.subarray(0, 200))))
    return say("This is a web page and no table of text. Please save it as CSV (UTF-8).")
  return null
}

/** UTF-16 without a mark: every second byte of plain text is 0. */
function wideEncoding(bytes: Uint8Array): FoundEncoding | null {
  const looked = bytes.subarray(0, 4096)
  let [even, odd] = [0, 0]
  for (let at = 0; at < looked.length; at += 1) {
    if (looked[at] !== 0) continue
    if (at % 2 === 0) even += 1
    else odd += 1
  }
  if (even + odd === 0) return null
  const half = looked.length / 2
  if (odd > half * 0.4 && even < half * 0.05) return { encoding: "utf-16le" }
  if (even > half * 0.4 && odd < half * 0.05) return { encoding: "utf-16be" }
  return { fault: say("This is no table of text. Please save it as CSV (UTF-8).") }
}

const startsWith = (bytes: Uint8Array, first: readonly number[]): boolean =>
  first.every((byte, at) => bytes[at] === byte)

function isValid(bytes: Uint8Array, encoding: string): boolean {
  try {
    // As a stream: the bytes may end in the middle of a letter.
    new TextDecoder(encoding, { fatal: true }).decode(bytes, { stream: true })
    return true
  } catch {
    return false
  }
}

/** Letters with accents stand alone between plain ones; writings of two bytes come in pairs, or begin with controls. */
function looksWestern(bytes: Uint8Array): boolean {
  let [letters, others, alone, runs] = [0, 0, 0, 0]
  for (let at = 0; at < bytes.length; at += 1) {
    const byte = bytes[at] ?? 0
    if (byte < 0x80) continue
    if (UNDEFINED_1252.has(byte)) return false
    if (byte >= 0xc0 || USUAL_SIGNS.has(byte)) letters += 1
    else others += 1
    if ((bytes[at - 1] ?? 0) >= 0x80) continue
    runs += 1
    if ((bytes[at + 1] ?? 0) < 0x80) alone += 1
  }
  return alone >= runs * 0.5 && others <= letters * 0.1
}

const UNDEFINED_1252: ReadonlySet<number> = new Set([0x81, 0x8d, 0x8f, 0x90, 0x9d])

/** Of 0x80 to 0xBF what Western text holds: euro, quotes, dashes, and signs of measurement. */
const USUAL_SIGNS: ReadonlySet<number> = new Set([
  0x80, 0x85, 0x91, 0x92, 0x93, 0x94, 0x96, 0x97, 0xa0, 0xa1, 0xaa, 0xab, 0xb0, 0xb1, 0xb2, 0xb3, 0xb4, 0xb5,
  0xb7, 0xba, 0xbb, 0xbd, 0xbf,
])

const latin1 = (bytes: Uint8Array): string =>
  Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString("latin1")

/** Bytes to text, piece by piece; `decode` throws on bytes that the writing does not have. */
export interface PieceDecoder {
  decode(bytes: Uint8Array): string
  end(): string
}

/** A decoder of pieces; a byte order mark at the very beginning is left out. */
export function pieceDecoder(encoding: TableEncoding): PieceDecoder {
  if (encoding === "windows-1252") return { decode: decoded1252, end: () => "" }
  const decoder = new TextDecoder(encoding, { fatal: true })
  return { decode: (bytes) => decoder.decode(bytes, { stream: true }), end: () => decoder.decode() }
}

/** 0x80 to 0x9F by the Encoding Standard. Node's own decoder of this name leaves them as control characters. */
const HIGH_1252 = "€\x81‚ƒ„…†‡ˆ‰Š‹Œ\x8DŽ\x8F\x90‘’“”•–—˜™š›œ\x9DžŸ"

const decoded1252 = (bytes: Uint8Array): string =>
  latin1(bytes).replace(/[\x80-\x9f]/g, (letter) => {
    const code = letter.charCodeAt(0)
    if (UNDEFINED_1252.has(code)) throw new TypeError(`not a letter of windows-1252: ${code}`)
    return HIGH_1252.charAt(code - 0x80)
  })
