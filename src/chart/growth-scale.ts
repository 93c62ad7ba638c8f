import type { PracticeSettings } from "../engine/assessment.js"
import { msg, say } from "../engine/say.js"
import { colours as coloursOf } from "./colours.js"
import type { CourseFigureOptions } from "./course-figure-input.js"
import { spread } from "./label-placement.js"
import { linearScale } from "./linear-scale.js"
import { label, line } from "./marks.js"
import { el, polygon, type SvgElement } from "./svg.js"
import { svgDocument } from "./svg-document.js"
import { TEXT, textWidth } from "./text-size.js"
import { fixed, rangeWords } from "./words.js"

/** Rates of the last 12 months, mm per year. */
export interface GrowthScaleInput {
  readonly mmPerYear: number
  readonly low95: number
  readonly high95: number
  readonly emmetropic: number
  readonly natural: number
  /** Where one word ends and the next begins on the scale 0 = emmetropic growth, 1 = natural growth. */
  readonly cuts: PracticeSettings["cuts"]
}

type Options = Pick<CourseFigureOptions, "width" | "colours">

const HEIGHT = 96
const SIDE = 10
const BAND = { top: 28, height: 20 } as const
const AXIS = BAND.top + BAND.height / 2

/**
 * Where a child's growth lies between emmetropic and natural growth, with its 95 % interval.
 *
 * @example
 * growthScale({ mmPerYear: 0.14, low95: 0.05, high95: 0.23, emmetropic: 0.09, natural: 0.29, cuts })
 */
export function growthScale(input: GrowthScaleInput, options: Options = {}): string {
  const { width = 340, colours: kind = "themed" } = options
  const { mmPerYear, low95, high95, emmetropic, natural } = input
  const colours = coloursOf(kind)
  const x = linearScale(shownRates(input), [SIDE, width - SIDE])
  const drawing = { x, width, colours }
  const dotWords = `${fixed(mmPerYear, 2)} mm`
  const half = textWidth(dotWords, { size: TEXT.title, bold: true }) / 2
  const interval = {
    stroke: colours.accent,
    "stroke-width": 6,
    "stroke-opacity": 0.4,
  }
  return svgDocument({
    width,
    height: HEIGHT,
    title: say("Growth between emmetropic and natural growth"),
    description: say(
      "Growth {mm} mm a year (95 % {range}); emmetropic growth {emmetropic}, natural growth of untreated myopia {natural}.",
      {
        mm: fixed(mmPerYear, 2),
        range: rangeWords({ low: low95, high: high95, digits: 2 }),
        emmetropic: fixed(emmetropic, 2),
        natural: fixed(natural, 2),
      },
    ),
    content: [
      ...band(input, drawing),
      el("line", { x1: x(low95), x2: x(high95), y1: AXIS, y2: AXIS, ...interval }),
      ...markedRates(input, drawing),
      ...zoneWords(input, drawing),
      el("circle", { cx: x(mmPerYear), cy: AXIS, r: 6, fill: colours.accent, stroke: colours.paper }),
      label(
        dotWords,
        { x: Math.max(half, Math.min(x(mmPerYear), width - half)), y: 18 },
        { fill: colours.ink, size: TEXT.title, anchor: "middle", bold: true },
      ),
    ],
  })
}

interface Drawing {
  readonly x: (mmPerYear: number) => number
  readonly width: number
  readonly colours: ReturnType<typeof coloursOf>
}

/** Wide enough for all zones, both lines and the whole interval; never so narrow that noise looks like a difference. */
function shownRates({
  mmPerYear,
  low95,
  high95,
  emmetropic,
  natural,
  cuts,
}: GrowthScaleInput): [number, number] {
  const span = Math.max(natural - emmetropic, 0.05)
  const low = Math.min(emmetropic - 0.4 * span, low95, mmPerYear)
  const high = Math.max(emmetropic + (cuts.asUntreated + 0.4) * span, high95, mmPerYear, natural)
  return [low - 0.04 * (high - low), high + 0.04 * (high - low)]
}

const ZONE_WORDS = [
  msg("near-normal|growth"),
  msg("slowed|growth"),
  msg("as untreated|growth"),
  msg("faster|growth"),
] as const

interface Zone {
  readonly words: string
  readonly from: number
  readonly to: number
}

/** The stretches that the words stand for; where natural growth is no faster than emmetropic there are none. */
function zones({ emmetropic, natural, cuts }: GrowthScaleInput, { x, width }: Drawing): readonly Zone[] {
  const span = natural - emmetropic
  if (span <= 0) return []
  const edges = [cuts.nearNormal, cuts.slowed, cuts.asUntreated].map((cut) => x(emmetropic + cut * span))
  const bounds = [SIDE, ...edges, width - SIDE]
  return ZONE_WORDS.map((words, i) => ({
    words: say(words),
    from: bounds[i] as number,
    to: bounds[i + 1] as number,
  }))
}

function band(input: GrowthScaleInput, drawing: Drawing): readonly SvgElement[] {
  const { colours, width } = drawing
  const stretches = zones(input, drawing)
  if (stretches.length === 0) {
    return [line({ x: SIDE, y: AXIS }, { x: width - SIDE, y: AXIS }, { stroke: colours.line, width: 2 })]
  }
  return stretches.map(({ from, to }, i) =>
    el("rect", {
      x: from,
      y: BAND.top,
      width: Math.max(0, to - from - 1.5),
      height: BAND.height,
      fill: i % 2 === 0 ? colours.faint : colours.line,
    }),
  )
}

/** The word of each stretch under it, where it is wide enough for its word. */
function zoneWords(input: GrowthScaleInput, drawing: Drawing): readonly SvgElement[] {
  const { soft, paper } = drawing.colours
  return zones(input, drawing)
    .filter(({ words, from, to }) => textWidth(words, { size: TEXT.small }) <= to - from)
    .map(({ words, from, to }) =>
      label(
        words,
        { x: (from + to) / 2, y: BAND.top + BAND.height + 14 },
        { fill: soft, size: TEXT.small, anchor: "middle", halo: paper },
      ),
    )
}

/** The two published lines: a tick through the band, led to its name and figure below the zones. */
function markedRates(
  { emmetropic, natural }: GrowthScaleInput,
  { x, width, colours }: Drawing,
): readonly SvgElement[] {
  const marked = [
    { name: say("emmetropic {mm}", { mm: fixed(emmetropic, 2) }), at: x(emmetropic) },
    { name: say("natural {mm}", { mm: fixed(natural, 2) }), at: x(natural) },
  ]
  const middles = spread(
    marked.map(({ name, at }) => ({ at, size: textWidth(name, { size: TEXT.label }) })),
    { low: 0, high: width, gap: 8 },
  )
  const [knee, names] = [BAND.top + BAND.height + 18, HEIGHT - 8]
  return marked.flatMap(({ name, at }, i) => {
    const middle = middles[i] as number
    return [
      line(
        { x: at, y: BAND.top - 3 },
        { x: at, y: BAND.top + BAND.height + 3 },
        { stroke: colours.ink, width: 1.4 },
      ),
      el("path", {
        d: polygon(
          [
            { x: at, y: BAND.top + BAND.height + 3 },
            { x: at, y: knee },
            { x: middle, y: names - 11 },
          ],
          { closed: false },
        ),
        fill: "none",
        stroke: colours.shadeDark,
        "stroke-width": 0.8,
      }),
      label(name, { x: middle, y: names }, { fill: colours.ink, anchor: "middle" }),
    ]
  })
}
