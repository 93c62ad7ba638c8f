/** A stretch of life between two ages in years; the second may be Infinity. */
export type Stretch = readonly [fromAge: number, toAge: number]

export function overlap(a: Stretch, b: Stretch): Stretch | null {
  const from = Math.max(a[0], b[0])
  const to = Math.min(a[1], b[1])
  return to > from ? [from, to] : null
}

/** What is left of a stretch outside others, which must be in order and apart from each other. */
export function without(stretch: Stretch, others: readonly Stretch[]): Stretch[] {
  const left: Stretch[] = []
  let from = stretch[0]
  for (const [start, end] of others) {
    if (start > from && from < stretch[1]) left.push([from, Math.min(start, stretch[1])])
    from = Math.max(from, end)
  }
  if (from < stretch[1]) left.push([from, stretch[1]])
  return left
}
