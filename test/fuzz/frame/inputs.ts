import fc from "fast-check"
import { broken } from "./broken.js"
import type { FuzzTarget } from "./target.js"

/** One input in so many is made by the target's own rules, or from bytes of any kind; the others are valid files, broken. */
const ONE_MADE_IN = { byRules: 2, fromBytes: 20 }

/** The input of a place in a run: the same for the same seed, so that a failure can be had again by its number alone. */
export function inputAt(
  { seeds, target }: { readonly seeds: readonly Uint8Array[]; readonly target: FuzzTarget },
  { seed, index }: { readonly seed: number; readonly index: number },
): Uint8Array {
  const own = (Math.imul(seed, 0x9e3779b1) ^ Math.imul(index + 1, 0x85ebca6b)) >>> 0
  const oneIn = target.generated ? ONE_MADE_IN.byRules : ONE_MADE_IN.fromBytes
  if (index % oneIn !== 0 || seeds.length === 0) return broken(seeds, own)
  const [made] = fc.sample(target.generated ?? fc.uint8Array({ maxLength: 4000 }), { seed: own, numRuns: 1 })
  return made ?? new Uint8Array()
}
