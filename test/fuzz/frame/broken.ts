import { brokenText, isText } from "./broken-text.js"
import { type Chance, chanceFrom } from "./chance.js"

const LARGEST_INPUT_BYTES = 400_000

/** A valid file broken in one way as a rule, and in up to six. */
export function broken(seeds: readonly Uint8Array[], seed: number): Uint8Array {
  const chance = chanceFrom(seed)
  let bytes = chance.of(seeds)
  for (let ways = chance.below(2) === 0 ? 1 : 1 + chance.below(6); ways > 0; ways--) {
    const way =
      isText(bytes) && chance.below(2) === 0
        ? (given: Uint8Array) => brokenText(given, chance)
        : (given: Uint8Array) => chance.of(WAYS)(given, { chance, seeds })
    const next = way(bytes)
    if (next.length <= LARGEST_INPUT_BYTES) bytes = next
  }
  return bytes
}

type Way = (
  bytes: Uint8Array,
  around: { readonly chance: Chance; readonly seeds: readonly Uint8Array[] },
) => Uint8Array

const joined = (...parts: readonly Uint8Array[]) => new Uint8Array(Buffer.concat(parts))
const part = (bytes: Uint8Array, chance: Chance, longest = bytes.length) => {
  const from = chance.below(bytes.length)
  return { from, to: Math.min(bytes.length, from + 1 + chance.below(longest)) }
}
const changed = (bytes: Uint8Array, change: (copy: Uint8Array) => void) => {
  // A slice of a Buffer would be the seed itself, and every later input would be made of a broken one.
  const copy = new Uint8Array(bytes)
  change(copy)
  return copy
}

/** What lengths, counts and tags are broken by. */
const WORDS = [0, 1, 2, 0x7f, 0x80, 0xff, 0x7fff, 0xffff, 0x7fffffff, 0x80000000, 0xfffffffe, 0xffffffff]

const flip: Way = (bytes, { chance }) =>
  changed(bytes, (copy) => {
    const at = chance.below(copy.length)
    if (copy.length > 0) copy[at] = (copy[at] ?? 0) ^ (1 << chance.below(8))
  })
const blowUp: Way = (bytes, { chance }) =>
  changed(bytes, (copy) => {
    const width = chance.of([1, 2, 4])
    if (copy.length < width) return
    const at = chance.below(copy.length - width + 1)
    const word = chance.of(WORDS)
    for (let index = 0; index < width; index++) copy[at + index] = (word >>> (8 * index)) & 0xff
  })
const nudge: Way = (bytes, { chance }) =>
  changed(bytes, (copy) => {
    const at = chance.below(copy.length)
    if (copy.length > 0) copy[at] = (copy[at] ?? 0) + chance.of([-2, -1, 1, 2, 8])
  })
const cutEnd: Way = (bytes, { chance }) => bytes.slice(0, chance.below(bytes.length + 1))
const cutOut: Way = (bytes, { chance }) => {
  const { from, to } = part(bytes, chance, 64)
  return joined(bytes.subarray(0, from), bytes.subarray(to))
}
const double: Way = (bytes, { chance }) => {
  const { from, to } = part(bytes, chance, 600)
  const piece = bytes.subarray(from, to)
  const times = chance.of([1, 1, 1, 2, 50])
  return joined(bytes.subarray(0, to), ...Array<Uint8Array>(times).fill(piece), bytes.subarray(to))
}
const splice: Way = (bytes, { chance, seeds }) => {
  const other = chance.of(seeds)
  return joined(bytes.subarray(0, chance.below(bytes.length + 1)), other.subarray(chance.below(other.length)))
}
const plant: Way = (bytes, { chance, seeds }) => {
  const other = chance.of(seeds)
  const { from, to } = part(other, chance, 200)
  const at = chance.below(bytes.length + 1)
  return joined(bytes.subarray(0, at), other.subarray(from, to), bytes.subarray(at))
}
const junk: Way = (bytes, { chance }) => {
  const at = chance.below(bytes.length + 1)
  const piece = Uint8Array.from({ length: 1 + chance.below(40) }, () => chance.below(256))
  return joined(bytes.subarray(0, at), piece, bytes.subarray(at))
}
const blank: Way = (bytes, { chance }) =>
  changed(bytes, (copy) => {
    const { from, to } = part(copy, chance, 64)
    copy.fill(chance.of([0, 0x20, 0xff]), from, to)
  })

const WAYS: readonly Way[] = [
  flip,
  flip,
  blowUp,
  blowUp,
  nudge,
  cutEnd,
  cutOut,
  double,
  splice,
  plant,
  junk,
  blank,
]
