import { type Colours, colours as coloursOf } from "../colours.js"
import { type LinearScale, linearScale } from "../linear-scale.js"
import { label, line } from "../marks.js"
import { decimals, el, type Rectangle, type SvgElement } from "../svg.js"
import { svgDocument } from "../svg-document.js"
import { textWidth } from "../text-size.js"
import { fixed } from "../words.js"
import {
  block,
  blockMarks,
  checkedWidth,
  FAMILY_WIDTH,
  type FamilyFigure,
  type FamilyFigureOptions,
  LARGE,
} from "./large-text.js"

export interface GrowthBar {
  readonly label: string
  readonly mm: number
  /** How sure the figure is, drawn as a whisker. */
  readonly low?: number | undefined
  readonly high?: number | undefined
  readonly isChild: boolean
}

export interface GrowthBarsInput {
  readonly bars: readonly GrowthBar[]
  /** After each figure: "mm". */
  readonly unitLabel: string
  readonly title: string
  readonly description: string
}

const BAR = 30
const GAP = 18
const LEFT = 4

/**
 * Growth of the child's eyes over the same time as that of others: the child's bar filled, all others hatched, so that
 * they differ without colour. Names stand over their bars, where any language has the whole width.
 */
export function growthBarsFigure(
  { bars, unitLabel, title, description }: GrowthBarsInput,
  { width = FAMILY_WIDTH, colours: kind = "plain" }: FamilyFigureOptions = {},
): FamilyFigure {
  if (bars.length === 0) throw new RangeError("growth bars need at least one bar")
  const colours = coloursOf(kind)
  const values = bars.map(({ mm }) => `${fixed(mm, 2)} ${unitLabel}`)
  const room = Math.max(...values.map((value) => textWidth(value, { size: LARGE.strong, bold: true }))) + 12
  const scale = scaleOf(bars, { left: LEFT, right: Math.max(checkedWidth(width) / 2, width - room) })
  let top = 4
  const content: SvgElement[] = []
  for (const [i, bar] of bars.entries()) {
    const fill = bar.isChild ? colours.ink : colours.soft
    const name = block(bar.label, { width: width - 8, size: LARGE.text, bold: bar.isChild, fill })
    content.push(...blockMarks(name, { x: LEFT, top }))
    const y = top + name.height + 4
    content.push(...barMarks(bar, { value: values[i] ?? "", y, scale, colours }))
    top = y + BAR + GAP
  }
  const bottom = top - GAP
  return {
    svg: svgDocument({
      width,
      height: Math.ceil(bottom + 8),
      title,
      description,
      content,
    }),
    description,
  }
}

/** From nothing, or from the smallest value where an eye measured shorter than before. */
function scaleOf(bars: readonly GrowthBar[], { left, right }: { left: number; right: number }): LinearScale {
  const ends = bars.flatMap(({ mm, low = mm, high = mm }) => [low, mm, high])
  for (const end of ends) {
    if (!Number.isFinite(end)) throw new RangeError(`growth must be a number of mm: ${end}`)
  }
  const [low, high] = [Math.min(0, ...ends), Math.max(0, ...ends)]
  return linearScale([low, high > low ? high : low + 1], [left, right])
}

function barMarks(
  { mm, low, high, isChild }: GrowthBar,
  {
    value,
    y,
    scale,
    colours,
  }: {
    readonly value: string
    readonly y: number
    readonly scale: LinearScale
    readonly colours: Colours
  },
): readonly SvgElement[] {
  const [from, to] = [Math.min(scale(0), scale(mm)), Math.max(scale(0), scale(mm))]
  const bar = { x: from, y, width: to - from, height: BAR }
  const end = Math.max(to, scale(high ?? mm))
  const text = { fill: isChild ? colours.accent : colours.ink, size: LARGE.strong, bold: isChild }
  return [
    ...(isChild ? [filled(bar, colours)] : hatched(bar, colours)),
    line({ x: scale(0), y: y - 4 }, { x: scale(0), y: y + BAR + 4 }, { stroke: colours.soft, width: 1.5 }),
    ...(low === undefined || high === undefined
      ? []
      : whisker({ from: scale(low), to: scale(high), y: y + BAR / 2, colours })),
    label(value, { x: end + 10, y: y + BAR / 2 + 6 }, text),
  ]
}

const filled = (bar: Rectangle, { accent }: Colours): SvgElement =>
  el("rect", { ...bar, fill: accent, stroke: accent, "stroke-width": 1.5 })

/** Outlined and hatched by lines of its own: a pattern would need a name that no other figure of the page has. */
function hatched(bar: Rectangle, { shadeDark, paper }: Colours): readonly SvgElement[] {
  const [right, bottom] = [bar.x + bar.width, bar.y + bar.height]
  const strokes: string[] = []
  for (let start = bar.x - bar.height + 9; start < right; start += 9) {
    const [fromX, toX] = [Math.max(start, bar.x), Math.min(start + bar.height, right)]
    const yAt = (x: number) => decimals(bottom - (x - start))
    if (toX - fromX > 0.5) strokes.push(`M${decimals(fromX)},${yAt(fromX)}L${decimals(toX)},${yAt(toX)}`)
  }
  return [
    el("rect", { ...bar, fill: paper, stroke: shadeDark, "stroke-width": 1.5 }),
    ...(strokes.length === 0
      ? []
      : [el("path", { d: strokes.join(""), fill: "none", stroke: shadeDark, "stroke-width": 0.8 })]),
  ]
}

/** Drawn twice, so that it stands out from the bar as well as from the paper. */
function whisker({
  from,
  to,
  y,
  colours,
}: {
  readonly from: number
  readonly to: number
  readonly y: number
  readonly colours: Colours
}): readonly SvgElement[] {
  const strokes = (stroke: string, width: number) => [
    line({ x: from, y }, { x: to, y }, { stroke, width }),
    ...[from, to].map((x) => line({ x, y: y - 8 }, { x, y: y + 8 }, { stroke, width })),
  ]
  return [...strokes(colours.paper, 5), ...strokes(colours.ink, 2)]
}
