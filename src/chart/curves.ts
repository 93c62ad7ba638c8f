import { decimals, type Point } from "./svg.js"

/** A smooth line through points that stand in order of x. It never rises or falls beyond the points it joins. */
export const smoothLine = (points: readonly Point[]): string => drawn(points, "M")

/** The area between two smooth lines over the same x. */
export const smoothBand = (upper: readonly Point[], lower: readonly Point[]): string =>
  `${drawn(upper, "M")}${drawn(lower.toReversed(), "L")}Z`

function drawn(points: readonly Point[], begin: "M" | "L"): string {
  const [first, second] = points
  if (first === undefined) return ""
  const start = `${begin}${place(first)}`
  if (second === undefined) return start
  if (points.length === 2) return `${start}L${place(second)}`
  const slopes = slopesOf(points)
  const steps = points.slice(1).map((to, i) => {
    const from = points[i] as Point
    // A cubic by Hermite's form as Bezier's: the handles lie a third of the way along each slope.
    const third = (to.x - from.x) / 3
    const leaving = { x: from.x + third, y: from.y + third * (slopes[i] as number) }
    const arriving = { x: to.x - third, y: to.y - third * (slopes[i + 1] as number) }
    return `C${place(leaving)},${place(arriving)},${place(to)}`
  })
  return start + steps.join("")
}

/** Slopes at the points by Steffen 1990: those of a parabola through three neighbours, limited so that nothing overshoots. */
function slopesOf(points: readonly Point[]): readonly number[] {
  const secants = points.slice(1).map((to, i) => secant(points[i] as Point, to))
  const last = points.length - 1
  const inner = points.map((point, i) => {
    if (i === 0 || i === last) return 0
    const [before, after] = [secants[i - 1] as number, secants[i] as number]
    const [widthBefore, widthAfter] = [
      point.x - (points[i - 1] as Point).x,
      (points[i + 1] as Point).x - point.x,
    ]
    const parabola = (before * widthAfter + after * widthBefore) / (widthBefore + widthAfter)
    const limit = Math.min(Math.abs(before), Math.abs(after), Math.abs(parabola) / 2)
    return (Math.sign(before) + Math.sign(after)) * (Number.isFinite(limit) ? limit : 0)
  })
  // At an end the parabola of the first or last two points and the inner slope.
  const atEnd = (across: number, neighbour: number) => (3 * across - neighbour) / 2
  return inner.map((slope, i) => {
    if (i === 0) return atEnd(secants[0] as number, inner[1] as number)
    return i === last ? atEnd(secants[last - 1] as number, inner[last - 1] as number) : slope
  })
}

const secant = (from: Point, to: Point): number => (to.x === from.x ? 0 : (to.y - from.y) / (to.x - from.x))
const place = ({ x, y }: Point): string => `${decimals(x)},${decimals(y)}`
