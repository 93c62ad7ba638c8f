import fc from "fast-check"
import { TAGS } from "../../../src/interop/dicom/tags.js"

/** DICOM files made from nothing: the attributes that are read, in any order and nesting, with values of any kind. */
export const madeFile = (): fc.Arbitrary<Uint8Array> =>
  fc.tuple(fc.boolean(), elements()).map(([isExplicit, made]) => fileOf(made, isExplicit))

/** A file around these elements, in explicit or implicit little endian. */
export function fileOf(made: readonly Made[], isExplicit: boolean): Uint8Array {
  const syntax = isExplicit ? "1.2.840.10008.1.2.1\0" : "1.2.840.10008.1.2\0"
  const meta = written({ tag: TAGS.transferSyntax[0], vr: "UI", value: Buffer.from(syntax) }, true)
  const body = made.map((one) => written(one, isExplicit))
  return new Uint8Array(Buffer.concat([Buffer.alloc(128), Buffer.from("DICM"), meta, ...body]))
}

export interface Made {
  readonly tag: number
  readonly vr: string
  readonly value: Buffer | readonly (readonly Made[])[]
}

/** Data sets of the attributes that are read, with values of the right kind and of others, nested. */
function elements(): fc.Arbitrary<readonly Made[]> {
  const attributes = Object.values(TAGS).filter(([tag]) => tag >>> 16 !== 2)
  const number = fc.oneof(fc.double(), fc.double({ min: -40, max: 40, noNaN: true }))
  const text = fc.constantFrom(
    "OPTICAL",
    "TOTAL LENGTH",
    "YES",
    "NO",
    "F",
    "20260316",
    "20170905",
    "1.5",
    "2.25.7",
    "",
    "DISTANCE",
  )
  const bytes = fc.uint8Array({ maxLength: 40 })
  const plain = fc
    .tuple(fc.constantFrom(...attributes), number, text, bytes)
    .map(
      ([[tag, vr], figure, words, any]): Made => ({ tag, vr, value: bytesFor(vr, { figure, words, any }) }),
    )
  const { set } = fc.letrec<{ set: readonly Made[] }>((tie) => ({
    set: fc.oneof(
      { depthSize: "small", maxDepth: 6 },
      fc.uniqueArray(plain, { maxLength: 8, selector: ({ tag }) => tag }),
      fc.array(
        fc.oneof(
          plain,
          fc
            .tuple(
              fc.constantFrom(...attributes.filter(([, vr]) => vr === "SQ")),
              fc.array(tie("set"), { maxLength: 2 }),
            )
            .map(([[tag, vr], items]): Made => ({ tag, vr, value: items })),
        ),
        { maxLength: 8 },
      ),
    ),
  }))
  const classes = fc
    .constantFrom("1", "2", "3", "4", "5", "7")
    .map((kind) => `1.2.840.10008.5.1.4.1.1.78.${kind}`)
  return fc
    .tuple(classes, set)
    .map(([uid, made]) => [
      { tag: TAGS.sopClass[0], vr: "UI", value: Buffer.from(uid) },
      { tag: TAGS.sopInstance[0], vr: "UI", value: Buffer.from("2.25.99") },
      { tag: TAGS.contentDate[0], vr: "DA", value: Buffer.from("20260316") },
      ...made,
    ])
}

function bytesFor(
  vr: string,
  { figure, words, any }: { readonly figure: number; readonly words: string; readonly any: Uint8Array },
): Buffer {
  const value = Buffer.alloc(vr === "FD" ? 8 : 4)
  if (vr === "FD") value.writeDoubleLE(figure)
  else if (vr === "FL") value.writeFloatLE(figure)
  else return vr === "OB" ? Buffer.from(any) : Buffer.from(words)
  return value
}

export function written({ tag, vr, value }: Made, isExplicit: boolean): Buffer {
  const head = Buffer.alloc(4)
  head.writeUInt16LE(tag >>> 16, 0)
  head.writeUInt16LE(tag & 0xffff, 2)
  const body = Buffer.isBuffer(value)
    ? value
    : Buffer.concat((value as readonly (readonly Made[])[]).map((item) => itemWritten(item, isExplicit)))
  const isLong = ["SQ", "OB"].includes(vr)
  const length = Buffer.alloc(isExplicit && !isLong ? 2 : 4)
  if (length.length === 2) length.writeUInt16LE(Math.min(body.length, 0xffff))
  else length.writeUInt32LE(body.length)
  const kind = isExplicit ? Buffer.from(isLong ? `${vr}\0\0` : vr) : Buffer.alloc(0)
  return Buffer.concat([head, kind, length, body])
}

function itemWritten(item: readonly Made[], isExplicit: boolean): Buffer {
  const body = Buffer.concat(item.map((one) => written(one, isExplicit)))
  const head = Buffer.from([0xfe, 0xff, 0x00, 0xe0, 0, 0, 0, 0])
  head.writeUInt32LE(body.length, 4)
  return Buffer.concat([head, body])
}
