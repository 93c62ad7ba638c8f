import { type Colours, colours } from "./colours.js"
import type { CourseFigureOptions, TrackName } from "./course-figure-input.js"
import { type LinearScale, linearScale } from "./linear-scale.js"
import { type Key, label, line } from "./marks.js"
import type { Rectangle, SvgElement } from "./svg.js"
import { LINE_HEIGHT, TEXT } from "./text-size.js"

/** What all tracks of one figure share: the age axis, the gutters left and right of it, the inks. */
export interface Frame {
  readonly width: number
  /** Below this the titles stand above their tracks instead of left of them. */
  readonly narrow: boolean
  readonly left: number
  readonly right: number
  readonly domain: readonly [number, number]
  readonly x: LinearScale
  readonly colours: Colours
  readonly todayX: number | null
}

/** One track: how tall its plot is, and how it is drawn once its place is known. */
export interface Track {
  readonly name: TrackName
  readonly title: string
  readonly unit: string
  readonly height: number
  /** Beside the unit: a key of the marks, drawn from (0, 0) rightwards along the baseline. */
  readonly key?: Key | undefined
  /** Areas that the lines of the axis must stay visible on. */
  readonly behind?: ((plot: Rectangle) => readonly SvgElement[]) | undefined
  readonly marks: (plot: Rectangle) => readonly SvgElement[]
}

const NARROW_BELOW = 700

export function frame({
  width,
  domain,
  todayAge,
  kind,
}: {
  readonly width: number
  readonly domain: readonly [number, number]
  readonly todayAge: number
  readonly kind: NonNullable<CourseFigureOptions["colours"]>
}): Frame {
  const narrow = width < NARROW_BELOW
  const left = narrow ? 40 : 128
  const right = width - (narrow ? 90 : 96)
  const x = linearScale(domain, [left, right])
  const todayX = todayAge >= domain[0] && todayAge <= domain[1] ? x(todayAge) : null
  return { width, narrow, left, right, domain, x, colours: colours(kind), todayX }
}

export const within = ([from, to]: readonly [number, number], age: number) => age >= from && age <= to

/**
 * The rows of a curve whose `key` (its age unless told) lies in the window, with a row interpolated at each edge that
 * the curve crosses, so that it reaches the edge of the plot and never passes it.
 */
export function windowed<Row extends { readonly age: number }>(
  curve: readonly Row[],
  { window, between, key = ({ age }) => age }: Windowing<Row>,
): readonly Row[] {
  return curve.flatMap((row, i) => {
    const before = curve[i - 1]
    if (before === undefined) return within(window, key(row)) ? [row] : []
    const [from, to] = [key(before), key(row)]
    const crossed = window
      .map((edge) => (edge - from) / (to - from))
      .filter((share) => share > 0 && share < 1)
    const edges = crossed.sort((a, b) => a - b).map((share) => between(before, row, share))
    return within(window, to) ? [...edges, row] : edges
  })
}

interface Windowing<Row> {
  readonly window: readonly [number, number]
  readonly between: (a: Row, b: Row, share: number) => Row
  readonly key?: (row: Row) => number
}

export const mix = ({ from, to, share }: { from: number; to: number; share: number }) =>
  from + (to - from) * share

/** Horizontal rules with their values left of the plot. */
export function valueAxis({
  frame,
  ticks,
  y,
  words,
}: {
  readonly frame: Frame
  readonly ticks: readonly number[]
  readonly y: (value: number) => number
  readonly words: (value: number) => string
}): readonly SvgElement[] {
  const { left, right, colours } = frame
  return ticks.flatMap((value) => [
    line({ x: left, y: y(value) }, { x: right, y: y(value) }, { stroke: colours.line }),
    label(
      words(value),
      { x: left - 8, y: y(value) + 4 },
      { fill: colours.soft, size: TEXT.small, anchor: "end" },
    ),
  ])
}

/** The one line of text of a track that has nothing to show. */
export function emptyNote(frame: Frame, plot: Rectangle, why: string): SvgElement {
  return label(
    why,
    { x: plot.x + 2, y: plot.y + 12 },
    { fill: frame.colours.soft, halo: frame.colours.paper },
  )
}

export const EMPTY_HEIGHT = LINE_HEIGHT + 10
