/** A label that wants to stand at `at` (its middle) and takes `size` along the line. */
export interface Wish {
  readonly at: number
  readonly size: number
}

/** The stretch of the line that labels may use. */
interface Room {
  readonly low: number
  readonly high: number
  readonly gap?: number
}

interface Block {
  readonly members: readonly { readonly index: number; readonly offset: number }[]
  readonly start: number
  readonly length: number
}

/**
 * Middles of labels along a line, in the order given, moved as little as possible (least squares) so that none
 * overlaps another and, where there is room for all, none leaves [low, high].
 *
 * Labels that would overlap move as one block to the mean of what its members want (pooling of adjacent violators).
 * @example
 * spread([{ at: 10, size: 8 }, { at: 10, size: 8 }], { low: 0, high: 100 }) // => [6, 14]
 */
export function spread(wishes: readonly Wish[], { low, high, gap = 0 }: Room): readonly number[] {
  const settled = (members: Block["members"], length: number): Block => {
    const wanted = members.map(({ index, offset }) => (wishes[index] as Wish).at - offset)
    const start = wanted.reduce((sum, value) => sum + value, 0) / wanted.length
    return { members, length, start: Math.max(low, Math.min(start, high - length)) }
  }
  const blocks: Block[] = []
  for (const index of inOrder(wishes, (wish) => wish.at)) {
    const { size } = wishes[index] as Wish
    let block = settled([{ index, offset: size / 2 }], size)
    for (
      let before = blocks.at(-1);
      before && before.start + before.length + gap > block.start;
      before = blocks.at(-1)
    ) {
      const shift = before.length + gap
      const moved = block.members.map((member) => ({ ...member, offset: member.offset + shift }))
      block = settled([...before.members, ...moved], shift + block.length)
      blocks.pop()
    }
    blocks.push(block)
  }
  const middles = wishes.map(() => 0)
  for (const { members, start } of blocks) {
    for (const { index, offset } of members) middles[index] = start + offset
  }
  return middles
}

/**
 * As `spread`, or null when a label would end up further than `reach` from where it belongs: then some could no longer
 * be read as theirs, and showing only the others would be a choice nobody made.
 */
export function spreadWithin(
  wishes: readonly Wish[],
  { reach, ...room }: Room & { readonly reach: number },
): readonly number[] | null {
  const middles = spread(wishes, room)
  return middles.every((middle, i) => Math.abs(middle - (wishes[i] as Wish).at) <= reach) ? middles : null
}

/** A stretch that something occupies along a line. */
export interface Stretch {
  readonly from: number
  readonly to: number
}

/**
 * The row for each stretch: the first in which it comes no closer than `gap` to those placed before it.
 *
 * @example
 * rows([{ from: 0, to: 10 }, { from: 5, to: 20 }, { from: 15, to: 30 }], { gap: 2 }) // => [0, 1, 0]
 */
export function rows(stretches: readonly Stretch[], { gap }: { gap: number }): readonly number[] {
  const taken: Stretch[][] = []
  return stretches.map((stretch) => {
    const free = taken.findIndex((row) =>
      row.every(({ from, to }) => to + gap <= stretch.from || stretch.to + gap <= from),
    )
    const row = free === -1 ? taken.length : free
    taken[row] = [...(taken[row] ?? []), stretch]
    return row
  })
}

function inOrder<T>(items: readonly T[], key: (item: T) => number): readonly number[] {
  return items.map((_, i) => i).sort((a, b) => key(items[a] as T) - key(items[b] as T))
}
