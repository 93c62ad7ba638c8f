import { type Colours, colours as coloursOf } from "../colours.js"
import type { LinearScale } from "../linear-scale.js"
import { linearScale } from "../linear-scale.js"
import { label, line } from "../marks.js"
import { el, polygon, type Rectangle, type SvgElement } from "../svg.js"
import { svgDocument } from "../svg-document.js"
import { axisAge, fixed } from "../words.js"
import { lengthWords, spanWords } from "./figure-words.js"
import {
  block,
  blockMarks,
  checkedWidth,
  FAMILY_WIDTH,
  type FamilyFigure,
  type FamilyFigureOptions,
  LARGE,
  stacked,
  type TextBlock,
} from "./large-text.js"
import { besideMarks, type PathLabel, pathEnds, placeBeside, type Scales } from "./path-labels.js"

export interface LengthAt {
  readonly ageYears: number
  readonly mm: number
}

export interface LengthAhead {
  readonly ageYears: number
  readonly low: number
  readonly middle: number
  readonly high: number
}

export interface LengthPathInput {
  /** In order of age, as all of them. */
  readonly measured: readonly LengthAt[]
  readonly usual: readonly LengthAt[]
  readonly ahead?:
    | { readonly untreated: readonly LengthAhead[]; readonly treated?: readonly LengthAhead[] | undefined }
    | undefined
  readonly labels: {
    readonly axisAge: string
    readonly axisMm: string
    readonly measured: string
    readonly usual: string
    readonly untreated: string
    readonly treated: string
  }
  readonly title: string
  readonly description: string
}

const LEFT = 56
const LEAST_PLOT = 300

/**
 * The child's length over the years, that of children who need no glasses, and what may lie ahead with and without
 * treatment. Each line has its name where it ends; lines differ in kind, so that they are told apart without colour.
 */
export function lengthPathFigure(
  input: LengthPathInput,
  { width = FAMILY_WIDTH, colours: kind = "plain" }: FamilyFigureOptions = {},
): FamilyFigure {
  const { title, description, labels } = input
  checkPath(input)
  const colours = coloursOf(kind)
  const right = checkedWidth(width) - Math.round(Math.min(210, Math.max(144, 0.29 * width)))
  const ends = endLabels(input, { width: width - right - 14, colours })
  const above = block(labels.axisMm, { width: width - 8, size: LARGE.small, fill: colours.soft })
  const own = block(labels.measured, {
    width: Math.min(230, right - LEFT - 8),
    size: LARGE.text,
    bold: true,
    fill: colours.accent,
  })
  const ofEnds = ends.reduce((sum, { text }) => sum + text.height + 6, 0)
  const plot: Rectangle = {
    x: LEFT,
    y: above.height + 12,
    width: right - LEFT,
    height: Math.max(LEAST_PLOT, ofEnds),
  }
  const bottom = plot.y + plot.height
  const { x, y, place } = scalesAndName(input, { plot, own })
  const under = block(labels.axisAge, { width: width - 8, size: LARGE.small, fill: colours.soft })
  const drawn = { x, y, plot, colours }
  const content = [
    ...blockMarks(above, { x: 4, top: 0 }),
    ...axes(drawn),
    ...paths(input, drawn),
    ...pathEnds(ends, { x: right, y, plot, colours }),
    ...(place === null ? [] : besideMarks(own, place, { x, y, colours })),
    ...blockMarks(under, { x: plot.x, top: bottom + 26 }),
  ]
  const height = Math.ceil(bottom + 26 + under.height + 4)
  return { svg: svgDocument({ width, height, title, description, content }), description }
}

/** Room is kept beyond the lines only where the name of the measured one would find no place without. */
function scalesAndName(input: LengthPathInput, { plot, own }: { plot: Rectangle; own: TextBlock }) {
  const { measured } = input
  const others = otherLines(input)
  const side = isAboveUsual(input) ? "above" : "below"
  const least = { above: 12, below: 12 }
  const tries = [least, { ...least, [side]: own.height + 30 }].map((room) => {
    const scales = scalesOf(input, { plot, room })
    return { ...scales, place: placeBeside(own, { measured, others, ...scales, plot, side }) }
  })
  return (tries.find(({ place }) => place !== null) ?? tries[1]) as Scales & {
    place: ReturnType<typeof placeBeside>
  }
}

/** Whether the child's eye is longer than usual at its last measurement, or the usual length not known there. */
function isAboveUsual({ measured, usual }: LengthPathInput): boolean {
  const last = measured.at(-1)
  if (last === undefined) return true
  const after = usual.find(({ ageYears }) => ageYears >= last.ageYears)
  return after === undefined || last.mm >= after.mm
}

function scalesOf(
  { measured, usual, ahead }: LengthPathInput,
  {
    plot,
    room,
  }: { readonly plot: Rectangle; readonly room: { readonly above: number; readonly below: number } },
): Scales {
  const fans = [...(ahead?.untreated ?? []), ...(ahead?.treated ?? [])]
  const ages = [...measured, ...usual, ...fans].map(({ ageYears }) => ageYears)
  const lengths = [...measured, ...usual].map(({ mm }) => mm)
  const all = [...lengths, ...fans.flatMap(({ low, high }) => [low, high])]
  const [low, high] = [Math.min(...all), Math.max(...all)]
  const slack = Math.max(0, (1 - (high - low)) / 2)
  const [youngest, oldest] = [Math.min(...ages), Math.max(...ages)]
  const x = linearScale(youngest < oldest ? [youngest, oldest] : [youngest - 1, oldest + 1], [
    plot.x + 12,
    plot.x + plot.width - 4,
  ])
  const y = linearScale([low - slack, high + slack], [plot.y + plot.height - room.below, plot.y + room.above])
  return { x, y }
}

interface Drawn {
  readonly x: LinearScale
  readonly y: LinearScale
  readonly plot: Rectangle
  readonly colours: Colours
}

function axes({ x, y, plot, colours }: Drawn): readonly SvgElement[] {
  const [right, bottom] = [plot.x + plot.width, plot.y + plot.height]
  const style = { fill: colours.soft, size: LARGE.small }
  const lengths = y.ticks(5)
  const decimals = lengths.every(Number.isInteger) ? 0 : 1
  const years = x.ticks(Math.max(2, Math.floor(plot.width / 70))).filter(Number.isInteger)
  return [
    ...lengths.flatMap((mm) => [
      line({ x: plot.x, y: y(mm) }, { x: right, y: y(mm) }, { stroke: colours.line }),
      label(fixed(mm, decimals), { x: plot.x - 8, y: y(mm) + 5 }, { ...style, anchor: "end" }),
    ]),
    line({ x: plot.x, y: bottom }, { x: right, y: bottom }, { stroke: colours.shadeDark }),
    ...years.flatMap((age) => [
      line({ x: x(age), y: bottom }, { x: x(age), y: bottom + 5 }, { stroke: colours.shadeDark }),
      label(axisAge(age), { x: x(age), y: bottom + 21 }, { ...style, anchor: "middle" }),
    ]),
  ]
}

function paths({ measured, usual, ahead }: LengthPathInput, { x, y, colours }: Drawn): readonly SvgElement[] {
  const trace = (points: readonly LengthAt[], stroke: string, width: number, dash?: string) =>
    points.length < 2
      ? []
      : [
          el("path", {
            d: polygon(
              points.map(({ ageYears, mm }) => ({ x: x(ageYears), y: y(mm) })),
              { closed: false },
            ),
            fill: "none",
            stroke,
            "stroke-width": width,
            "stroke-dasharray": dash,
            "stroke-linejoin": "round",
          }),
        ]
  const band = (rows: readonly LengthAhead[], fill: string, rim: string, dash?: string) => {
    const [lows, highs] = [rows.map((row) => row.low), rows.map((row) => row.high)]
    const at = (mm: readonly number[]) =>
      rows.map(({ ageYears }, i) => ({ x: x(ageYears), y: y(mm[i] ?? 0) }))
    const d = polygon([...at(lows), ...at(highs).toReversed()], { closed: true })
    const style = { "fill-opacity": 0.7, stroke: rim, "stroke-width": 1, "stroke-dasharray": dash }
    return rows.length < 2 ? [] : [el("path", { d, fill, ...style })]
  }
  const middle = (rows: readonly LengthAhead[]) =>
    rows.map((row) => ({ ageYears: row.ageYears, mm: row.middle }))
  const { untreated = [], treated = [] } = ahead ?? {}
  return [
    ...band(untreated, colours.shade, colours.shadeDark, "2 3"),
    ...band(treated, colours.wash, colours.accentMiddle),
    ...trace(usual, colours.soft, 2, "1.5 4"),
    ...trace(middle(untreated), colours.ink, 2, "9 6"),
    ...trace(middle(treated), colours.accent, 2.4),
    ...trace(measured, colours.accent, 3),
    ...measured.map(({ ageYears, mm }) =>
      el("circle", { cx: x(ageYears), cy: y(mm), r: 5, fill: colours.accent, stroke: colours.paper }),
    ),
  ]
}

/** Names at the right ends, each with its figure there: a range where the length is only expected. */
function endLabels(
  { usual, ahead, labels }: LengthPathInput,
  { width, colours }: { readonly width: number; readonly colours: Colours },
): readonly PathLabel[] {
  const named = (name: string, figure: string, fill: string): TextBlock =>
    stacked(
      block(name, { width, size: LARGE.text, bold: true, fill }),
      block(figure, { width, size: LARGE.small, fill: colours.soft }),
    )
  const last = usual.at(-1)
  const untreated = ahead?.untreated.at(-1)
  const treated = ahead?.treated?.at(-1)
  const range = ({ low, high }: LengthAhead) => spanWords(low, high)
  return [
    ...(untreated
      ? [{ ...untreated, mm: untreated.middle, text: named(labels.untreated, range(untreated), colours.ink) }]
      : []),
    ...(treated
      ? [{ ...treated, mm: treated.middle, text: named(labels.treated, range(treated), colours.accent) }]
      : []),
    ...(last ? [{ ...last, text: named(labels.usual, lengthWords(last.mm), colours.soft) }] : []),
  ]
}

/** Every line that the name of the measured one must keep clear of. */
function otherLines({ usual, ahead }: LengthPathInput): readonly (readonly LengthAt[])[] {
  const fans = [ahead?.untreated ?? [], ahead?.treated ?? []]
  return [
    usual,
    ...fans.flatMap((rows) => [
      rows.map(({ ageYears, low }) => ({ ageYears, mm: low })),
      rows.map(({ ageYears, high }) => ({ ageYears, mm: high })),
    ]),
  ]
}

function checkPath({ measured, usual, ahead }: LengthPathInput): void {
  if (measured.length === 0) throw new RangeError("a length path needs at least one measured length")
  const rows = { measured, usual, untreated: ahead?.untreated ?? [], treated: ahead?.treated ?? [] }
  for (const [name, points] of Object.entries(rows)) {
    points.forEach(({ ageYears }, i) => {
      if (!((points[i - 1]?.ageYears ?? Number.NEGATIVE_INFINITY) < ageYears)) {
        throw new RangeError(`ages of ${name} must rise: ${ageYears}`)
      }
    })
  }
}
