import { say } from "../../engine/say.js"
import { DEEPEST_NESTING, MOST_ELEMENTS, MOST_ITEMS } from "./bounds.js"
import type { DataElement, DataSet } from "./data-set.js"
import { DicomFault } from "./dicom-fault.js"
import { representationOf, tagText } from "./tags.js"

const UNDEFINED_LENGTH = 0xffffffff
const ITEM = 0xfffee000
const ITEM_END = 0xfffee00d
const SEQUENCE_END = 0xfffee0dd
/** Representations whose length has four bytes after two that are kept free; all others have a length of two. */
const LONG = new Set(["OB", "OD", "OF", "OL", "OV", "OW", "SQ", "SV", "UC", "UN", "UR", "UT", "UV"])
const SHORT = new Set([
  ...["AE", "AS", "AT", "CS", "DA", "DS", "DT", "FD", "FL", "IS", "LO", "LT", "PN", "SH", "SL", "SS"],
  ...["ST", "TM", "UI", "UL", "US"],
])

/** Where the reading stands, and what has been spent; one for a whole object. */
export interface Cursor {
  readonly bytes: Uint8Array
  readonly view: DataView
  at: number
  elements: number
  items: number
  /** Tags of the sequences around, to say where a fault stands. */
  readonly path: string[]
}

export const cursorOf = (bytes: Uint8Array): Cursor => ({
  bytes,
  view: new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength),
  at: 0,
  elements: 0,
  items: 0,
  path: [],
})

interface Stretch {
  /** First byte after what may be read. */
  readonly end: number
  /** Whether a delimiter ends it, and not `end`. */
  readonly isDelimited: boolean
  readonly isExplicit: boolean
  readonly parent?: DataSet | undefined
  /** Stops before an element of another group: the header of a file. */
  readonly onlyGroup?: number | undefined
}

/**
 * The elements of a stretch of an object in little endian. Every length is held against what is left of the stretch before
 * it is believed, values are views and not copies, and depth, items and elements are bounded: so time and memory are at
 * most in proportion to the file, whatever it says of itself.
 *
 * @throws DicomFault when the bytes do not add up.
 */
export function dataSetAt(cursor: Cursor, stretch: Stretch): DataSet {
  const elements = new Map<number, DataElement>()
  const set: DataSet = { elements, parent: stretch.parent }
  const { end, isDelimited, onlyGroup } = stretch
  while (cursor.at < end) {
    need(cursor, { bytes: 8, end })
    const tag = tagAt(cursor)
    if (onlyGroup !== undefined && tag >>> 16 !== onlyGroup) return set
    if (tag === ITEM_END && isDelimited) {
      cursor.at += 8
      return set
    }
    cursor.at += 4
    // The same figure twice in one place would leave it to chance which one is read.
    if (elements.has(tag) || tag >>> 16 === 0xfffe) throw fault(cursor, tag, notAddingUp())
    if (++cursor.elements > MOST_ELEMENTS) throw fault(cursor, tag, tooMuch())
    elements.set(tag, elementAt(cursor, { tag, set, stretch }))
  }
  if (isDelimited) throw cutOff(cursor)
  return set
}

function elementAt(
  cursor: Cursor,
  { tag, set, stretch }: { readonly tag: number; readonly set: DataSet; readonly stretch: Stretch },
): DataElement {
  const { vr: written, length } = headOf(cursor, { tag, stretch })
  const meant = representationOf(tag)
  // A program that did not know an attribute passes it on as unknown, in implicit form (PS3.5 6.2.2).
  const vr = written === "UN" || written === "" ? (meant ?? "UN") : written
  const isSequence = vr === "SQ" || (vr === "UN" && length === UNDEFINED_LENGTH)
  if (!isSequence) {
    // Only pictures may have a length that is not stated; they are not read.
    if (length === UNDEFINED_LENGTH) throw fault(cursor, tag, notAddingUp())
    need(cursor, { bytes: length, end: stretch.end })
    const bytes = cursor.bytes.subarray(cursor.at, cursor.at + length)
    cursor.at += length
    return { vr, bytes }
  }
  const isExplicit = stretch.isExplicit && written !== "UN"
  cursor.path.push(tagText(tag))
  const items = itemsAt(cursor, { length, end: stretch.end, isExplicit, parent: set })
  cursor.path.pop()
  return { vr: "SQ", bytes: NOTHING, items }
}

const NOTHING = new Uint8Array(0)

/** Representation and length; the representation is empty where the encoding leaves it out. */
function headOf(
  cursor: Cursor,
  { tag, stretch: { end, isExplicit } }: { readonly tag: number; readonly stretch: Stretch },
): { readonly vr: string; readonly length: number } {
  const { view, bytes } = cursor
  if (!isExplicit) {
    const length = view.getUint32(cursor.at, true)
    cursor.at += 4
    return { vr: "", length }
  }
  const vr = String.fromCharCode(bytes[cursor.at] ?? 0, bytes[cursor.at + 1] ?? 0)
  if (SHORT.has(vr)) {
    const length = view.getUint16(cursor.at + 2, true)
    cursor.at += 4
    return { vr, length }
  }
  if (!LONG.has(vr)) throw fault(cursor, tag, notAddingUp())
  need(cursor, { bytes: 8, end })
  const length = view.getUint32(cursor.at + 4, true)
  cursor.at += 8
  return { vr, length }
}

interface Sequence {
  readonly length: number
  readonly end: number
  readonly isExplicit: boolean
  readonly parent: DataSet
}

function itemsAt(cursor: Cursor, { length, end, isExplicit, parent }: Sequence): readonly DataSet[] {
  if (cursor.path.length > DEEPEST_NESTING) throw new DicomFault(tooMuch(), cursor.path.at(-1))
  const isOpen = length === UNDEFINED_LENGTH
  if (!isOpen) need(cursor, { bytes: length, end })
  const last = isOpen ? end : cursor.at + length
  const items: DataSet[] = []
  while (cursor.at < last) {
    need(cursor, { bytes: 8, end: last })
    const tag = tagAt(cursor)
    const itemLength = cursor.view.getUint32(cursor.at + 4, true)
    cursor.at += 8
    if (tag === SEQUENCE_END && isOpen) return items
    if (tag !== ITEM) throw fault(cursor, tag, notAddingUp())
    if (++cursor.items > MOST_ITEMS) throw fault(cursor, tag, tooMuch())
    const isDelimited = itemLength === UNDEFINED_LENGTH
    if (!isDelimited) need(cursor, { bytes: itemLength, end: last })
    const itemEnd = isDelimited ? last : cursor.at + itemLength
    items.push(dataSetAt(cursor, { end: itemEnd, isDelimited, isExplicit, parent }))
  }
  if (isOpen) throw cutOff(cursor)
  return items
}

/** Unsigned: a tag begins with any bit. */
const tagAt = ({ view, at }: Cursor): number =>
  view.getUint16(at, true) * 0x10000 + view.getUint16(at + 2, true)

function need(cursor: Cursor, { bytes, end }: { readonly bytes: number; readonly end: number }): void {
  if (bytes > end - cursor.at) throw cutOff(cursor)
}

const placeIn = (cursor: Cursor, tag?: number): string | undefined =>
  [...cursor.path, ...(tag === undefined ? [] : [tagText(tag)])].join(".") || undefined

const fault = (cursor: Cursor, tag: number, why: string) => new DicomFault(why, placeIn(cursor, tag))

const cutOff = (cursor: Cursor) =>
  new DicomFault(
    say("The file ends in the middle of a value: it was cut off on its way or is damaged. Send it again."),
    placeIn(cursor),
  )
const notAddingUp = () =>
  say("The file is damaged: its parts do not add up. Send it again from the instrument.")
const tooMuch = () => say("The file holds far more than a measurement can: it is not read.")
