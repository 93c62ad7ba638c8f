/** Chance from a seed: the same seed gives the same course of events on every machine. */
export interface Chance {
  /** A whole number from 0 up to and without `below`. */
  readonly below: (below: number) => number
  readonly of: <Item>(items: readonly Item[]) => Item
}

/** The generator mulberry32: one 32-bit word of state, good enough to break files with. */
export function chanceFrom(seed: number): Chance {
  let state = seed >>> 0
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0
    let word = state
    word = Math.imul(word ^ (word >>> 15), word | 1)
    word ^= word + Math.imul(word ^ (word >>> 7), word | 61)
    return ((word ^ (word >>> 14)) >>> 0) / 0x1_0000_0000
  }
  const below = (limit: number) => Math.floor(next() * Math.max(1, limit))
  return { below, of: (items) => items[below(items.length)] as (typeof items)[number] }
}
