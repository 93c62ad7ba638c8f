import { LONGEST_TEXT_BYTES } from "./bounds.js"
import { type CharacterSets, characterSets, decoded } from "./character-sets.js"
import { type Attribute, TAGS } from "./tags.js"
import { UNREADABLE } from "./text-decoders.js"

export interface DataElement {
  readonly vr: string
  /** The value as it stands in the file, not copied. */
  readonly bytes: Uint8Array
  /** Of a sequence. */
  readonly items?: readonly DataSet[]
}

/** Elements by tag. An item of a sequence knows what it stands in, since it inherits the character set. */
export interface DataSet {
  readonly elements: ReadonlyMap<number, DataElement>
  readonly parent?: DataSet | undefined
}

export const elementOf = (set: DataSet, attribute: Attribute): DataElement | undefined =>
  set.elements.get(TAGS[attribute][0])

/** The items of a sequence; none when it is absent or empty. */
export const itemsOf = (set: DataSet, attribute: Attribute): readonly DataSet[] =>
  elementOf(set, attribute)?.items ?? []

export const firstItem = (set: DataSet, attribute: Attribute): DataSet | undefined =>
  itemsOf(set, attribute)[0]

/** A text, or the first of several; undefined when it is absent, empty or cannot be decoded. */
export function textOf(set: DataSet, attribute: Attribute): string | undefined {
  const whole = wholeTextOf(set, attribute)
  if (whole === undefined || whole.includes(UNREADABLE)) return undefined
  const vr = TAGS[attribute][1]
  return trimmed(vr === "ST" ? whole : (whole.split("\\")[0] ?? ""))
}

/** The text with all its parts, and a mark where letters cannot be read. */
export function wholeTextOf(set: DataSet, attribute: Attribute): string | undefined {
  const element = elementOf(set, attribute)
  if (!element || element.bytes.length === 0 || element.bytes.length > LONGEST_TEXT_BYTES) return undefined
  return decoded(element.bytes, { sets: setsOf(set), isName: TAGS[attribute][1] === "PN" })
}

/** Blanks and padding that writers put at the end are no part of a text; control characters are none either. */
export function trimmed(text: string): string | undefined {
  const plain = text
    .replace(/\p{Cc}+/gu, " ")
    .replace(/\s+/g, " ")
    .trim()
  return plain === "" ? undefined : plain
}

/** A number; undefined when it is absent or empty, NaN when what stands there is none. */
export function numberOf(set: DataSet, attribute: Attribute): number | undefined {
  const element = elementOf(set, attribute)
  if (!element || element.bytes.length === 0) return undefined
  const { vr, bytes } = element
  const width = WIDTHS[vr]
  if (width !== undefined) return bytes.length === width ? binaryNumber(vr, bytes) : Number.NaN
  if (vr !== "DS" && vr !== "IS") return Number.NaN
  const text = bytes.length > 32 ? "" : trimmed(String.fromCharCode(...bytes))
  if (text === undefined) return undefined
  return /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d{1,3})?$/.test(text) ? Number(text) : Number.NaN
}

const WIDTHS: Readonly<Record<string, number>> = { FL: 4, FD: 8, SS: 2, US: 2, SL: 4, UL: 4 }

function binaryNumber(vr: string, bytes: Uint8Array): number {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  if (vr === "FL") return asWritten(view.getFloat32(0, true))
  if (vr === "FD") return view.getFloat64(0, true)
  if (vr === "SS") return view.getInt16(0, true)
  if (vr === "US") return view.getUint16(0, true)
  return vr === "SL" ? view.getInt32(0, true) : view.getUint32(0, true)
}

/**
 * The shortest decimal that is the same 32-bit float: what the instrument showed before it was stored in 32 bits.
 *
 * @example
 * asWritten(Math.fround(24.12)) // => 24.12, where the float reads 24.1200008392334
 */
export function asWritten(float: number): number {
  for (let digits = 1; digits < 9; digits++) {
    const shorter = Number(float.toPrecision(digits))
    if (Math.fround(shorter) === float) return shorter
  }
  return float
}

const known = new WeakMap<DataSet, CharacterSets>()

function setsOf(set: DataSet): CharacterSets {
  const before = known.get(set)
  if (before) return before
  const own = elementOf(set, "characterSet")
  const sets =
    own === undefined && set.parent
      ? setsOf(set.parent)
      : characterSets(own ? String.fromCharCode(...own.bytes.subarray(0, 256)) : "")
  known.set(set, sets)
  return sets
}
