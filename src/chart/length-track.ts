import type { Eye } from "../engine/course.js"
import { EYES } from "../engine/course.js"
import { say } from "../engine/say.js"
import type { CourseFigureInput, LengthAtAge, ReferenceBand } from "./course-figure-input.js"
import { type EyePoint, lengthPoints } from "./course-points.js"
import { smoothBand, smoothLine } from "./curves.js"
import { type EndLabel, endLabels } from "./end-labels.js"
import { eyeKey, eyeMark, eyeShift } from "./eye-mark.js"
import { type DrawnForecast, drawnForecast, type FanRow, fanMarks } from "./forecast-fan.js"
import { EMPTY_HEIGHT, emptyNote, type Frame, mix, type Track, valueAxis, windowed, within } from "./frame.js"
import { linearScale } from "./linear-scale.js"
import { line } from "./marks.js"
import { el, type Rectangle, type SvgElement } from "./svg.js"
import { axisAge, fixed } from "./words.js"

type BandRow = ReferenceBand["rows"][number]

/** Axial length of both eyes, what is usual, and what is to be expected. */
export function lengthTrack(input: CourseFigureInput, frame: Frame): Track {
  const { domain, colours } = frame
  const all = lengthPoints(input)
  const points = all.filter(({ age }) => within(domain, age))
  const forecast = drawnForecast(input.forecast, domain)
  const emmetropic = windowed(input.emmetropicLength, { window: domain, between: lengthBetween })
  const band = windowed(input.referenceBand?.rows ?? [], { window: domain, between: bandBetween })
  const eyes = EYES.filter((eye) => points.some((point) => point.eye === eye))
  const shared = { name: "length", title: say("Length|of the eye"), unit: "mm" } as const

  if (points.length === 0 && forecast === null) {
    const why = all.length === 0 ? say("no axial length recorded yet") : say("no axial length at these ages")
    return { ...shared, height: EMPTY_HEIGHT, marks: (plot) => [emptyNote(frame, plot, why)] }
  }

  const shown = shownLengths({
    points,
    forecast,
    behind: [...emmetropic.map(({ mm }) => mm), ...band.flatMap(({ lowMm, highMm }) => [lowMm, highMm])],
  })
  const shownCurve = windowed(emmetropic, { window: shown, between: lengthBetween, key: ({ mm }) => mm })
  const shownBand = band.map((row) => ({
    ...row,
    lowMm: clamped(row.lowMm, shown),
    highMm: clamped(row.highMm, shown),
  }))

  const scale = (plot: Rectangle) => linearScale(shown, [plot.y + plot.height, plot.y])

  return {
    ...shared,
    height: frame.narrow ? 200 : 216,
    key: eyes.length === 0 ? undefined : eyeKey(eyes, colours),
    behind: (plot) => bandMarks(shownBand, { frame, y: scale(plot) }),
    marks: (plot) => {
      const y = scale(plot)
      const ticks = y.ticks(4)
      return [
        ...valueAxis({ frame, ticks, y, words: (mm) => fixed(mm, ticks.every(Number.isInteger) ? 0 : 1) }),
        ...emmetropicMarks(shownCurve, { frame, y }),
        ...(forecast === null ? [] : fanMarks(forecast, { frame, y })),
        ...points.flatMap((point) => lengthMark(point, { frame, y })),
        ...endLabels(frame, plot, [
          ...forecastNames(forecast, y),
          ...behindName(say("emmetropic|length"), { at: emmetropic.at(-1)?.mm, shown, y }),
          ...behindName(input.referenceBand?.label ?? "", { at: middle(shownBand.at(-1)), shown, y }),
        ]),
      ]
    },
  }
}

function lengthMark(
  { age, eye, value, half95 }: EyePoint,
  { frame, y }: { frame: Frame; y: (mm: number) => number },
): readonly SvgElement[] {
  const x = frame.x(age) + eyeShift(eye)
  const stroke = { stroke: frame.colours.ink, width: 1 }
  const [from, to] = [y(value - (half95 ?? 0)), y(value + (half95 ?? 0))]
  const whisker = [
    line({ x, y: from }, { x, y: to }, stroke),
    ...[from, to].map((end) => line({ x: x - 2.5, y: end }, { x: x + 2.5, y: end }, stroke)),
  ]
  // A whisker that the mark covers would only blur the shape that tells the eye.
  const seen = half95 !== null && from - to >= 8
  return [...(seen ? whisker : []), eyeMark({ eye, x, y: y(value) }, frame.colours)]
}

interface Drawing {
  readonly frame: Frame
  readonly y: (mm: number) => number
}

function bandMarks(band: readonly BandRow[], { frame, y }: Drawing): readonly SvgElement[] {
  if (band.length < 2) return []
  const between = smoothBand(
    band.map(({ age, highMm }) => ({ x: frame.x(age), y: y(highMm) })),
    band.map(({ age, lowMm }) => ({ x: frame.x(age), y: y(lowMm) })),
  )
  return [el("path", { d: between, fill: frame.colours.ground })]
}

function emmetropicMarks(rows: readonly LengthAtAge[], { frame, y }: Drawing): readonly SvgElement[] {
  if (rows.length < 2) return []
  const along = smoothLine(rows.map(({ age, mm }) => ({ x: frame.x(age), y: y(mm) })))
  const stroke = { fill: "none", stroke: frame.colours.shadeDark, "stroke-width": 1.2 }
  return [el("path", { d: along, ...stroke })]
}

/**
 * The lengths that the plot spans: all that was measured and is forecast, and of what lies behind it only so much that
 * the child's own course keeps at least three fifths of the height.
 */
function shownLengths({
  points,
  forecast,
  behind,
}: {
  readonly points: readonly EyePoint[]
  readonly forecast: DrawnForecast | null
  readonly behind: readonly number[]
}): readonly [number, number] {
  const own = [
    ...points.flatMap(({ value, half95 }) => [value - (half95 ?? 0), value + (half95 ?? 0)]),
    ...[...(forecast?.untreated ?? []), ...(forecast?.asTreated ?? [])].flatMap(({ p5, p95 }) => [p5, p95]),
  ]
  const [low, high] = [Math.min(...own), Math.max(...own)]
  const margin = Math.max(0.1, (high - low) * 0.06)
  const room = Math.max(0.5, high - low) / 2
  const lowest = Math.max(low - room, Math.min(low, ...behind.map((mm) => mm - margin)))
  const highest = Math.min(high + room / 4, Math.max(high, ...behind))
  return [Math.min(lowest, low - margin), Math.max(highest, high + margin)]
}

function forecastNames(forecast: DrawnForecast | null, y: (mm: number) => number): readonly EndLabel[] {
  const figure = ({ age, p50 }: FanRow) => say("{mm} at {age}", { mm: fixed(p50, 1), age: axisAge(age) })
  const [untreated, treated] = [forecast?.untreated.at(-1), forecast?.asTreated?.at(-1)]
  return [
    ...(untreated
      ? [{ y: y(untreated.p50), name: say("untreated|forecast"), figure: figure(untreated) }]
      : []),
    ...(treated
      ? [{ y: y(treated.p50), name: say("as treated|forecast"), figure: figure(treated), strong: true }]
      : []),
  ]
}

/** The name of a line behind the course; where the line ends outside the plot, at the edge with its length. */
function behindName(
  name: string,
  {
    at,
    shown,
    y,
  }: {
    readonly at: number | undefined
    readonly shown: readonly [number, number]
    readonly y: (mm: number) => number
  },
): readonly EndLabel[] {
  if (at === undefined) return []
  if (within(shown, at)) return [{ y: y(at), name }]
  const mm = fixed(at, 1)
  const figure = at < shown[0] ? say("below, {mm}", { mm }) : say("above, {mm}", { mm })
  return [{ y: y(clamped(at, shown)), name, figure }]
}

const clamped = (mm: number, [low, high]: readonly [number, number]) => Math.max(low, Math.min(mm, high))

const middle = (row: BandRow | undefined) =>
  row === undefined ? undefined : mix({ from: row.lowMm, to: row.highMm, share: 0.5 })

/** The eye whose forecast is drawn, for the words under the figure. */
export function forecastEye(input: CourseFigureInput, domain: readonly [number, number]): Eye | null {
  return drawnForecast(input.forecast, domain)?.eye ?? null
}

const lengthBetween = (a: LengthAtAge, b: LengthAtAge, share: number): LengthAtAge => ({
  age: mix({ from: a.age, to: b.age, share }),
  mm: mix({ from: a.mm, to: b.mm, share }),
})

const bandBetween = (a: BandRow, b: BandRow, share: number): BandRow => ({
  age: mix({ from: a.age, to: b.age, share }),
  lowMm: mix({ from: a.lowMm, to: b.lowMm, share }),
  highMm: mix({ from: a.highMm, to: b.highMm, share }),
})
