/** A point of a curve. Lists of them must ascend strictly in x. */
export interface Knot {
  readonly x: number
  readonly y: number
}

/**
 * Cubic through the knots that never leaves the range of two neighbouring knots (Fritsch and Carlson 1980):
 * slopes are the weighted harmonic mean of the two chords, 0 where those differ in sign, and at the ends the
 * three-point formula held to the sign and to three times the chord next to it. Same convention as PCHIP of SciPy
 * and of Matlab; R's `splinefun(method = "monoH.FC")` takes other slopes. Two knots give a straight line.
 * Never extrapolates: an x outside the knots throws, because a caller has to refuse it first.
 *
 * @example
 * monotoneCubic([{ x: 0, y: 1 }, { x: 2, y: 3 }])(1) // => 2
 */
export function monotoneCubic(knots: readonly Knot[]): (x: number) => number {
  requireAscending(knots)
  const slopes = slopesAtKnots(knots)
  const first = knots[0]!
  const last = knots[knots.length - 1]!
  return (x) => {
    if (!(x >= first.x && x <= last.x)) throw new RangeError(`${x} lies outside ${first.x} to ${last.x}`)
    if (knots.length === 1) return first.y
    const right = Math.max(
      1,
      knots.findIndex((knot) => knot.x >= x),
    )
    const [from, to] = [knots[right - 1]!, knots[right]!]
    const width = to.x - from.x
    const t = (x - from.x) / width
    const u = 1 - t
    // Cubic Hermite basis: values first, slopes after.
    return (
      (1 + 2 * t) * u * u * from.y +
      t * t * (3 - 2 * t) * to.y +
      t * u * width * (u * slopes[right - 1]! - t * slopes[right]!)
    )
  }
}

function requireAscending(knots: readonly Knot[]): void {
  if (knots.length === 0) throw new RangeError("a curve needs at least one knot")
  for (let i = 1; i < knots.length; i += 1) {
    if (!(knots[i]!.x > knots[i - 1]!.x)) {
      throw new RangeError(`knots must ascend; ${knots[i]!.x} follows ${knots[i - 1]!.x}`)
    }
  }
}

function slopesAtKnots(knots: readonly Knot[]): readonly number[] {
  const widths = knots.slice(1).map((knot, i) => knot.x - knots[i]!.x)
  const chords = knots.slice(1).map((knot, i) => (knot.y - knots[i]!.y) / widths[i]!)
  if (chords.length < 2) return knots.map(() => chords[0] ?? 0)
  const inner = chords.slice(1).map((after, i) => {
    const before = chords[i]!
    if (before * after <= 0) return 0
    const weightBefore = 2 * widths[i + 1]! + widths[i]!
    const weightAfter = widths[i + 1]! + 2 * widths[i]!
    return (weightBefore + weightAfter) / (weightBefore / before + weightAfter / after)
  })
  return [
    slopeAtEnd(widths[0]!, widths[1]!, chords[0]!, chords[1]!),
    ...inner,
    slopeAtEnd(widths.at(-1)!, widths.at(-2)!, chords.at(-1)!, chords.at(-2)!),
  ]
}

function slopeAtEnd(width: number, nextWidth: number, chord: number, nextChord: number): number {
  const slope = ((2 * width + nextWidth) * chord - width * nextChord) / (width + nextWidth)
  if (slope * chord <= 0) return 0
  if (chord * nextChord <= 0 && Math.abs(slope) > 3 * Math.abs(chord)) return 3 * chord
  return slope
}
