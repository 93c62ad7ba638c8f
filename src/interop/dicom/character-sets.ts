import { iso2022 } from "./iso-2022.js"
import { decodedBy, UNREADABLE } from "./text-decoders.js"

/** The character sets a data set declares in (0008,0005). */
export interface CharacterSets {
  /** In force at the start of every value. */
  readonly first: string
  /** Whether a value may change its set by escape sequences. */
  readonly changes: boolean
}

/** @example characterSets("\\ISO 2022 IR 87") // => { first: "ISO_IR 6", changes: true } */
export function characterSets(declared: string): CharacterSets {
  const terms = declared.split("\\").map((term) => term.replaceAll("\0", " ").trim())
  const [first = ""] = terms
  const plain = first.replace(/^ISO 2022 IR /, "ISO_IR ")
  return {
    first: plain === "" ? "ISO_IR 6" : plain,
    changes: terms.length > 1 || first.startsWith("ISO 2022"),
  }
}

/** A value as text, with a mark for what its declared sets do not hold. */
export function decoded(
  bytes: Uint8Array,
  { sets, isName }: { readonly sets: CharacterSets; readonly isName: boolean },
): string {
  if (bytes.every((byte) => byte < 0x80 && byte !== 0x1b)) return String.fromCharCode(...bytes)
  if (sets.changes) return iso2022(bytes, { first: sets.first, isName })
  return decodedBy(sets.first, bytes) ?? UNREADABLE
}
