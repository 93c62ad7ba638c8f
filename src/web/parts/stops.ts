/** Index of the stop nearest to a place along the axis; stops stand in order. */
export function nearestStop(stops: readonly { readonly x: number }[], x: number): number {
  let nearest = 0
  stops.forEach((stop, index) => {
    if (Math.abs(stop.x - x) < Math.abs((stops[nearest]?.x ?? 0) - x)) nearest = index
  })
  return nearest
}

/** Where a key takes the reading line; null for a key that means nothing to it. */
export function stopAfterKey(
  key: string,
  { at, count }: { readonly at: number; readonly count: number },
): number | null {
  switch (key) {
    case "ArrowRight":
      return Math.min(count - 1, at + 1)
    case "ArrowLeft":
      return Math.max(0, at - 1)
    case "Home":
      return 0
    case "End":
      return count - 1
    default:
      return null
  }
}
