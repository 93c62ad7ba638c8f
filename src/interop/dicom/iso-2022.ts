import { decodedBy, UNREADABLE } from "./text-decoders.js"

/** How a run of bytes is read: low bytes (G0) by one set, high bytes (G1) by another. */
interface State {
  readonly low: "ascii" | "kanji" | "more-kanji"
  readonly high: string
}

const ESC = 0x1b

/** Escape sequences (PS3.3 tables C.12-3 and C.12-4), without the ESC, and what each changes. */
const ESCAPES: Readonly<Record<string, Partial<State>>> = {
  "(B": { low: "ascii" },
  "(J": { low: "ascii" },
  $B: { low: "kanji" },
  "$@": { low: "kanji" },
  "$(D": { low: "more-kanji" },
  ")I": { high: "ISO_IR 13" },
  "$)C": { high: "ISO_IR 149" },
  "$)A": { high: "ISO_IR 58" },
  "-A": { high: "ISO_IR 100" },
  "-B": { high: "ISO_IR 101" },
  "-C": { high: "ISO_IR 109" },
  "-D": { high: "ISO_IR 110" },
  "-L": { high: "ISO_IR 144" },
  "-G": { high: "ISO_IR 127" },
  "-F": { high: "ISO_IR 126" },
  "-H": { high: "ISO_IR 138" },
  "-M": { high: "ISO_IR 148" },
  "-b": { high: "ISO_IR 203" },
  "-T": { high: "ISO_IR 166" },
}

/**
 * Text whose character set changes within a value by escape sequences. Every part of a name, and every one of several
 * values, begins in the first set again. A stretch
 * that cannot be read is one mark, so that the parts beside it are not lost.
 */
export function iso2022(
  bytes: Uint8Array,
  { first, isName }: { readonly first: string; readonly isName: boolean },
): string {
  const start: State = { low: "ascii", high: first }
  let state = start
  let text = ""
  let from = 0
  for (let at = 0; at <= bytes.length; at++) {
    const byte = bytes[at]
    // A two-byte set has the codes of delimiters inside its letters; it is always left before a delimiter.
    const isDelimiter = state.low === "ascii" && byte !== undefined && resets(byte, isName)
    if (byte !== undefined && byte !== ESC && !isDelimiter) continue
    text += runOf(bytes.subarray(from, at), state) ?? UNREADABLE
    if (byte === ESC) {
      const sequence = escapeAt(bytes, at + 1)
      if (sequence === null) return text + UNREADABLE
      state = { ...state, ...ESCAPES[sequence] }
      at += sequence.length
    } else if (byte !== undefined) {
      text += String.fromCharCode(byte)
      state = start
    }
    from = at + 1
  }
  return text
}

const DELIMITERS = new Set([0x09, 0x0a, 0x0c, 0x0d, 0x5c])
/** In a name the parts are set apart by ^ and the spellings by =. */
const resets = (byte: number, isName: boolean): boolean =>
  DELIMITERS.has(byte) || (isName && (byte === 0x5e || byte === 0x3d))

function escapeAt(bytes: Uint8Array, at: number): string | null {
  const three = String.fromCharCode(...bytes.subarray(at, at + 3))
  return [three, three.slice(0, 2)].find((sequence) => Object.hasOwn(ESCAPES, sequence)) ?? null
}

function runOf(run: Uint8Array, { low, high }: State): string | null {
  if (run.length === 0) return ""
  if (low === "ascii") {
    if (run.every((byte) => byte < 0x80)) return String.fromCharCode(...run)
    return decodedBy(high, run)
  }
  if (run.length % 2 !== 0 || run.some((byte) => byte > 0x7f)) return null
  // EUC holds the same letters with the high bit set, and marks the second set by a byte before each letter.
  const euc = [...run].flatMap((byte, index) =>
    low === "more-kanji" && index % 2 === 0 ? [0x8f, byte | 0x80] : [byte | 0x80],
  )
  return decodedBy("EUC-JP", Uint8Array.from(euc))
}
