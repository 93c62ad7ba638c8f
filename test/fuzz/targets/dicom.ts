import { readdirSync, readFileSync } from "node:fs"
import { fileURLToPath } from "node:url"
import fc from "fast-check"
import { courseFrom } from "../../../src/interop/course/read-course.js"
import { readDicom } from "../../../src/interop/dicom/read-dicom.js"
import { TAGS } from "../../../src/interop/dicom/tags.js"
import type { FuzzTarget } from "../frame/target.js"

const objects = fileURLToPath(new URL("../../validation/dicom/objects/", import.meta.url))

/** Whatever is read must fit into a course file, and whatever is not must say why. */
export const target: FuzzTarget = {
  name: "dicom",
  seeds: async () => readdirSync(objects).map((file) => new Uint8Array(readFileSync(`${objects}${file}`))),
  async read(bytes) {
    const { fragments, skipped } = await readDicom({ file: "input", bytes, today: "2026-11-26" })
    if (fragments.length === 0 && skipped.length === 0) throw new Error("nothing was read and nothing said")
    if (skipped.some(({ why }) => why.trim() === "")) throw new Error("skipped without a reason")
    for (const { identity, course, documents } of fragments) {
      const child = {
        born: identity.born ?? "1900-01-01",
        sex: identity.sex ?? "female",
        id: identity.number,
      }
      const read = courseFrom({ lengthwise: 1, child, ...course }, { today: "2026-11-26" })
      if ("problems" in read) throw new Error(`no course: ${JSON.stringify(read.problems)}`)
      const unknown = read.notes.filter(({ kind }) => kind === "unknown-field")
      if (unknown.length > 0) throw new Error(`no field of a course: ${JSON.stringify(unknown)}`)
      if (documents.some(({ bytes: paper }) => paper.length > bytes.length))
        throw new Error("a paper is larger than the file it came in")
    }
    return fragments
  },
  generated: fc
    .tuple(fc.constantFrom("1.2.840.10008.1.2.1\0", "1.2.840.10008.1.2\0"), elements())
    .map(([syntax, body]) => {
      const isExplicit = syntax.length === 20
      const meta = written({ tag: TAGS.transferSyntax[0], vr: "UI", value: Buffer.from(syntax) }, true)
      return new Uint8Array(
        Buffer.concat([
          Buffer.alloc(128),
          Buffer.from("DICM"),
          meta,
          ...body.map((one) => written(one, isExplicit)),
        ]),
      )
    }),
}

interface Made {
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
      fc.array(plain, { maxLength: 8 }),
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

function written({ tag, vr, value }: Made, isExplicit: boolean): Buffer {
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
