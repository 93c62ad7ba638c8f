/**
 * A chance as children of ten, the way a family is told it: never none of them and never all, since no chance from a model
 * is certain. `share` picks the words in a message, `count` is the number in them.
 *
 * @example
 * ofTen(0.38) // => { share: "about", count: 4 }
 * ofTen(0.02) // => { share: "under", count: 1 }
 * ofTen(0.98) // => { share: "over", count: 9 }
 */
export function ofTen(chance: number): {
  readonly share: "under" | "about" | "over"
  readonly count: number
} {
  if (!(chance >= 0 && chance <= 1)) throw new RangeError(`chance must be 0 to 1, not ${chance}`)
  const count = Math.round(10 * chance)
  if (count === 0) return { share: "under", count: 1 }
  return count === 10 ? { share: "over", count: 9 } : { share: "about", count }
}
