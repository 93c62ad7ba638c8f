import { say } from "../engine/say.js"
import type { CourseFigureInput, GrowthInterval, RateAtAge } from "./course-figure-input.js"
import { lengthPoints } from "./course-points.js"
import { smoothBand, smoothLine } from "./curves.js"
import { type EndLabel, endLabels } from "./end-labels.js"
import { EMPTY_HEIGHT, emptyNote, type Frame, mix, type Track, valueAxis, windowed } from "./frame.js"
import { spreadWithin } from "./label-placement.js"
import { linearScale } from "./linear-scale.js"
import { label, line } from "./marks.js"
import { el, type Rectangle, type SvgElement } from "./svg.js"
import { LINE_HEIGHT, TEXT, textWidth } from "./text-size.js"
import { fixed } from "./words.js"

/** Growth between one length and the next, against what an untreated and an emmetropic eye would grow. */
export function growthTrack(input: CourseFigureInput, frame: Frame): Track {
  const { domain, colours } = frame
  const eyes = [...new Set(lengthPoints(input).map(({ eye }) => eye))]
  const [eye = "right", ...others] = eyes
  const unit =
    others.length === 0 && eyes.length === 1
      ? say("{eye, select, right {mm per year, right eye} other {mm per year, left eye}}", { eye })
      : say("mm per year, mean of eyes")
  const shared = { name: "growth", title: say("Growth"), unit } as const
  const intervals = input.growthIntervals.filter(
    ({ fromAge, toAge }) => toAge > domain[0] && fromAge < domain[1],
  )
  const natural = windowed(input.naturalRate, { window: domain, between: rateBetween })
  const emmetropic = windowed(input.emmetropicRate, { window: domain, between: rateBetween })

  if (intervals.length === 0) {
    const why =
      input.growthIntervals.length === 0
        ? say("growth needs two axial lengths at different dates")
        : say("no growth measured at these ages")
    return { ...shared, height: EMPTY_HEIGHT, marks: (plot) => [emptyNote(frame, plot, why)] }
  }

  // Two lengths a few weeks apart have an interval so wide that it would flatten all others: it is cut, with a mark.
  const rates = [...intervals, ...natural, ...emmetropic].map(({ mmPerYear }) => mmPerYear)
  const top = Math.min(
    Math.max(...rates, ...intervals.map(({ high95 }) => high95)),
    1.6 * Math.max(0.25, ...rates),
  )
  const bottom = Math.max(Math.min(0, ...intervals.map(({ low95 }) => low95)), Math.min(-0.12, ...rates))

  const scale = (plot: Rectangle) =>
    linearScale([bottom, top], [plot.y + plot.height - LINE_HEIGHT - 2, plot.y])

  return {
    ...shared,
    height: frame.narrow ? 108 : 116,
    behind: (plot) => zone({ natural, emmetropic, frame, y: scale(plot) }),
    marks: (plot) => {
      const y = scale(plot)
      return [
        ...valueAxis({ frame, ticks: y.ticks(3), y, words: (rate) => fixed(rate, rate === 0 ? 0 : 1) }),
        ...intervals.map((interval) => bar(interval, { frame, y })),
        ...lines({ natural, emmetropic, frame, y }),
        line(
          { x: plot.x, y: y(0) },
          { x: plot.x + plot.width, y: y(0) },
          { stroke: colours.shadeDark, width: 0.8 },
        ),
        ...intervals.flatMap((interval) => whisker(interval, { frame, y, bounds: [bottom, top] })),
        ...figures(intervals, { frame, plot }),
        ...endLabels(frame, plot, names({ natural, emmetropic, y })),
      ]
    },
  }
}

interface Drawing {
  readonly frame: Frame
  readonly y: (mmPerYear: number) => number
}

interface Expected {
  readonly natural: readonly RateAtAge[]
  readonly emmetropic: readonly RateAtAge[]
}

function bar({ fromAge, toAge, mmPerYear }: GrowthInterval, { frame, y }: Drawing): SvgElement {
  const [from, to] = [clampedX(frame, fromAge) + 1, clampedX(frame, toAge) - 1]
  return el("rect", {
    x: from,
    y: Math.min(y(0), y(mmPerYear)),
    width: Math.max(1, to - from),
    height: Math.abs(y(0) - y(mmPerYear)),
    fill: frame.colours.accentMiddle,
  })
}

function whisker(
  { fromAge, toAge, low95, high95 }: GrowthInterval,
  { frame, y, bounds: [bottom, top] }: Drawing & { readonly bounds: readonly [number, number] },
): readonly SvgElement[] {
  const x = middleX(frame, { fromAge, toAge })
  const stroke = { stroke: frame.colours.ink, width: 1.2 }
  const [from, to] = [y(Math.max(low95, bottom)), y(Math.min(high95, top))]
  const foot = (at: number) => line({ x: x - 3, y: at }, { x: x + 3, y: at }, stroke)
  const arrow = (at: number, towards: number) =>
    el("path", {
      d: `M${x - 3},${at + towards}L${x},${at}L${x + 3},${at + towards}`,
      fill: "none",
      stroke: stroke.stroke,
    })
  return [
    line({ x, y: from }, { x, y: to }, stroke),
    low95 < bottom ? arrow(from, -4) : foot(from),
    high95 > top ? arrow(to, 4) : foot(to),
  ]
}

/** The figure of each bar under it, unless the bars are too close for all to have one. */
function figures(
  intervals: readonly GrowthInterval[],
  { frame, plot }: { readonly frame: Frame; readonly plot: Rectangle },
): readonly SvgElement[] {
  const { ink, paper } = frame.colours
  const texts = intervals.map(({ mmPerYear }) => fixed(mmPerYear, 2))
  const wishes = intervals.map((interval, i) => ({
    at: middleX(frame, interval),
    size: textWidth(texts[i] as string, { size: TEXT.small }),
  }))
  const middles = spreadWithin(wishes, { low: plot.x, high: frame.width, gap: 3, reach: 8 }) ?? []
  return middles.map((x, i) =>
    label(
      texts[i] as string,
      { x, y: plot.y + plot.height },
      { fill: ink, size: TEXT.small, anchor: "middle", halo: paper },
    ),
  )
}

function zone({ natural, emmetropic, frame, y }: Expected & Drawing): readonly SvgElement[] {
  const both = natural.flatMap(({ age, mmPerYear }) => {
    const low = rateAt(emmetropic, age)
    return low === null ? [] : [{ age, low, high: mmPerYear }]
  })
  if (both.length < 2) return []
  const between = smoothBand(
    both.map(({ age, high }) => ({ x: frame.x(age), y: y(high) })),
    both.map(({ age, low }) => ({ x: frame.x(age), y: y(low) })),
  )
  return [el("path", { d: between, fill: frame.colours.faint })]
}

function lines({ natural, emmetropic, frame, y }: Expected & Drawing): readonly SvgElement[] {
  const along = (rows: readonly RateAtAge[]) =>
    smoothLine(rows.map(({ age, mmPerYear }) => ({ x: frame.x(age), y: y(mmPerYear) })))
  const drawn = (rows: readonly RateAtAge[], width: number, dash?: string) =>
    rows.length < 2
      ? []
      : [
          el("path", {
            d: along(rows),
            fill: "none",
            stroke: frame.colours.soft,
            "stroke-width": width,
            "stroke-dasharray": dash,
          }),
        ]
  return [...drawn(natural, 1.5, "6 4"), ...drawn(emmetropic, 1.1)]
}

function names({ natural, emmetropic, y }: Expected & Pick<Drawing, "y">): readonly EndLabel[] {
  const [naturalEnd, emmetropicEnd] = [natural.at(-1), emmetropic.at(-1)]
  return [
    ...(naturalEnd ? [{ y: y(naturalEnd.mmPerYear), name: say("natural|growth") }] : []),
    ...(emmetropicEnd ? [{ y: y(emmetropicEnd.mmPerYear), name: say("emmetropic|growth") }] : []),
  ]
}

function clampedX({ x, domain }: Frame, age: number): number {
  return x(Math.max(domain[0], Math.min(age, domain[1])))
}

function middleX(frame: Frame, { fromAge, toAge }: Pick<GrowthInterval, "fromAge" | "toAge">): number {
  return (clampedX(frame, fromAge) + clampedX(frame, toAge)) / 2
}

function rateAt(rows: readonly RateAtAge[], age: number): number | null {
  const next = rows.findIndex((row) => row.age >= age)
  const [before, after] = [rows[next - 1], rows[next]]
  if (after === undefined) return null
  if (after.age === age || before === undefined) return after.age === age ? after.mmPerYear : null
  return rateBetween(before, after, (age - before.age) / (after.age - before.age)).mmPerYear
}

const rateBetween = (a: RateAtAge, b: RateAtAge, share: number): RateAtAge => ({
  age: mix({ from: a.age, to: b.age, share }),
  mmPerYear: mix({ from: a.mmPerYear, to: b.mmPerYear, share }),
})
