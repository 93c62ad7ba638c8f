import fc from "fast-check"
import type { DataSet } from "../../../src/interop/dicom/data-set.js"
import { dataSetOfFile } from "../../../src/interop/dicom/part-10.js"
import { TAGS } from "../../../src/interop/dicom/tags.js"
import { type Chance, chanceFrom } from "../frame/chance.js"
import { fileOf, type Made } from "./made.js"

/** Valid files taken apart, changed in a few values, items and attributes, and put together again with lengths that fit. */
export function remadeFile(files: readonly Uint8Array[]): fc.Arbitrary<Uint8Array> {
  const trees = files.flatMap((bytes) => {
    try {
      return [treeOf(dataSetOfFile(bytes))]
    } catch {
      return []
    }
  })
  return fc
    .tuple(fc.constantFrom(...trees), fc.boolean(), fc.integer())
    .map(([tree, isExplicit, seed]) => fileOf(changed(tree, chanceFrom(seed)), isExplicit))
}

interface Branch extends Made {
  tag: number
  vr: string
  value: Buffer | Branch[][]
}

const treeOf = (set: DataSet): Branch[] =>
  [...set.elements].map(([tag, { vr, bytes, items }]) => ({
    tag,
    vr,
    value: items ? items.map(treeOf) : Buffer.from(bytes),
  }))

const copied = (tree: readonly Branch[]): Branch[] =>
  tree.map((one) => ({ ...one, value: Buffer.isBuffer(one.value) ? one.value : one.value.map(copied) }))

/** Every set of elements in the tree, the outermost first. */
const setsOf = (tree: Branch[]): Branch[][] => [
  tree,
  ...tree.flatMap(({ value }) => (Buffer.isBuffer(value) ? [] : value.flatMap(setsOf))),
]

function changed(tree: readonly Branch[], chance: Chance): readonly Made[] {
  const own = copied(tree)
  for (let times = 1 + chance.below(4); times > 0; times--) {
    const set = chance.of(setsOf(own))
    const at = chance.below(set.length)
    const one = set[at]
    if (one) changeOne(one, { set, at, chance })
  }
  return own
}

function changeOne(
  one: Branch,
  { set, at, chance }: { readonly set: Branch[]; readonly at: number; readonly chance: Chance },
): void {
  const { value } = one
  switch (chance.below(8)) {
    case 0:
      set.splice(at, 1)
      return
    case 1:
      one.tag = chance.of(Object.values(TAGS).filter(([, vr]) => vr === one.vr))?.[0] ?? one.tag
      return
    case 2:
      one.vr = chance.of(["DS", "FD", "FL", "LO", "UN", "SQ", "PN", "US"])
      return
    case 3:
      if (!Buffer.isBuffer(value) && value[0]) value.push(copied(value[0]))
      return
    case 4:
      if (!Buffer.isBuffer(value)) value.pop()
      return
    default:
      if (Buffer.isBuffer(value)) one.value = otherValue(one.vr, chance)
  }
}

const FIGURES = [
  0,
  -0,
  1,
  -1,
  0.25,
  4.2,
  7.7,
  24.1,
  44,
  90,
  180,
  180.5,
  240.4,
  -30.5,
  1e9,
  -1e308,
  Number.NaN,
  Infinity,
]
const WORDS = [
  ...[
    "",
    " ",
    "YES",
    "NO",
    "OPTICAL",
    "ULTRASOUND",
    "TOTAL LENGTH",
    "LENGTH SUMMATION",
    "DISTANCE",
    "NEAR",
    "R",
    "B",
  ],
  ...[
    "IN",
    "DCM",
    "SCT",
    "UCUM",
    "%",
    "mg/ml",
    "111786",
    "111787",
    "121410",
    "349947003",
    "420050001",
    "419775003",
  ],
  ...[
    "20260316",
    "20261399",
    "18000101",
    "99991231",
    "20170904",
    "1.5",
    "1e400",
    "-",
    "^^^",
    "a^b=c^d",
    "\\",
    "x".repeat(200),
  ],
  ...[
    "ISO_IR 192",
    "ISO 2022 IR 87\\ISO 2022 IR 149",
    "\u001b$B;3\u001b(B",
    "\u001b$)C",
    "\u00ff\u00fe",
    "constructor",
  ],
]

function otherValue(vr: string, chance: Chance): Buffer {
  const figure = chance.of(FIGURES)
  const value = Buffer.alloc(vr === "FD" ? 8 : 4)
  if (vr === "FD") value.writeDoubleLE(figure)
  else if (vr === "FL") value.writeFloatLE(figure)
  else return Buffer.from(chance.of(WORDS), "latin1")
  return value
}
