import type { Colours } from "../colours.js"
import { spread } from "../label-placement.js"
import type { LinearScale } from "../linear-scale.js"
import { line } from "../marks.js"
import type { Rectangle, SvgElement } from "../svg.js"
import { blockMarks, type TextBlock } from "./large-text.js"

interface PointOfPath {
  readonly ageYears: number
  readonly mm: number
}

/** The name of a line, which belongs at its last point. */
export interface PathLabel extends PointOfPath {
  readonly text: TextBlock
}

/** Names right of the plot, moved apart where they would overlap, each tied to the end of its line. */
export function pathEnds(
  labels: readonly PathLabel[],
  {
    x,
    y,
    plot,
    colours,
  }: { readonly x: number; readonly y: LinearScale; readonly plot: Rectangle; readonly colours: Colours },
): readonly SvgElement[] {
  const middles = spread(
    labels.map(({ mm, text }) => ({ at: y(mm), size: text.height })),
    { low: plot.y - 6, high: plot.y + plot.height + 6, gap: 6 },
  )
  return labels.flatMap(({ mm, text }, i) => {
    const middle = middles[i] ?? y(mm)
    return [
      line({ x: x - 2, y: y(mm) }, { x: x + 9, y: middle }, { stroke: colours.shadeDark }),
      ...blockMarks(text, { x: x + 13, top: middle - text.height / 2 }),
    ]
  })
}

const SPACE = 12

export interface Scales {
  readonly x: LinearScale
  readonly y: LinearScale
}

interface Beside extends Scales {
  readonly measured: readonly PointOfPath[]
  /** The other lines, each in order of age. */
  readonly others: readonly (readonly PointOfPath[])[]
  readonly plot: Rectangle
  readonly side: "above" | "below"
}

/** Where a name stands, and the measured point it is tied to. */
interface NamePlace {
  readonly left: number
  readonly top: number
  readonly point: PointOfPath
}

/**
 * Where the name of the measured line stands: on the given side of everything that is drawn over its width, and as near
 * to a measured point as can be. Null when no such place is in the plot.
 */
export function placeBeside(
  text: TextBlock,
  { measured, others, x, y, plot, side }: Beside,
): NamePlace | null {
  const right = plot.x + plot.width
  const places = measured.flatMap((point) =>
    [1, 0.5, 0].flatMap((share) => {
      const wanted = x(point.ageYears) - share * text.width
      const left = Math.min(Math.max(wanted, plot.x + 6), right - text.width)
      const heights = [measured, ...others].flatMap((points) =>
        heightsOver(points, { from: left - 6, to: left + text.width + 6, x, y }),
      )
      const top = side === "above" ? Math.min(...heights) - SPACE - text.height : Math.max(...heights) + SPACE
      if (top < plot.y || top + text.height > plot.y + plot.height) return []
      const middle = Math.abs(left + text.width / 2 - x(point.ageYears))
      const distance = Math.abs(top + text.height / 2 - y(point.mm)) + middle / 4
      return [{ point, left, top, distance }]
    }),
  )
  return places.toSorted((a, b) => a.distance - b.distance)[0] ?? null
}

/** The heights that a line takes between two places, corners included. */
function heightsOver(
  points: readonly PointOfPath[],
  { from, to, x, y }: Scales & { readonly from: number; readonly to: number },
): readonly number[] {
  return points.flatMap((point, i) => {
    const here = x(point.ageYears)
    const before = points[i - 1]
    const own = here >= from && here <= to ? [y(point.mm)] : []
    if (before === undefined) return own
    const start = x(before.ageYears)
    const at = (place: number) => y(before.mm + ((place - start) / (here - start)) * (point.mm - before.mm))
    return [...own, ...[from, to].filter((place) => place > start && place < here).map(at)]
  })
}

/** The name, tied to its line by a fine stroke. */
export function besideMarks(
  text: TextBlock,
  { left, top, point }: NamePlace,
  { x, y, colours }: Scales & { readonly colours: Colours },
): readonly SvgElement[] {
  const at = { x: x(point.ageYears), y: y(point.mm) }
  const isAbove = top < at.y
  const edge = { x: Math.min(Math.max(at.x, left), left + text.width), y: isAbove ? top + text.height : top }
  return [
    line(edge, { x: at.x, y: at.y + (isAbove ? -7 : 7) }, { stroke: colours.accentMiddle, width: 1.2 }),
    ...blockMarks(text, { x: left, top, halo: colours.paper }),
  ]
}
