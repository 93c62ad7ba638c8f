import { scaleLinear } from "d3-scale"
import { area, line as curve, curveMonotoneX } from "d3-shape"
import type { Eye } from "../engine/course.js"
import { EYES } from "../engine/course.js"
import type { CourseFigureInput, LengthAtAge, ReferenceBand } from "./course-figure-input.js"
import { type EyePoint, lengthPoints } from "./course-points.js"
import { type EndLabel, endLabels } from "./end-labels.js"
import { eyeKey, eyeMark, eyeShift } from "./eye-mark.js"
import { type DrawnForecast, drawnForecast, fanMarks } from "./forecast-fan.js"
import { EMPTY_HEIGHT, emptyNote, type Frame, mix, type Track, valueAxis, windowed, within } from "./frame.js"
import { line } from "./marks.js"
import { el, type SvgElement } from "./svg.js"
import { fixed } from "./words.js"

type BandRow = ReferenceBand["rows"][number]

/** Axial length of both eyes, what is usual, and what is to be expected. */
export function lengthTrack(input: CourseFigureInput, frame: Frame): Track {
  const { domain, colours } = frame
  const all = lengthPoints(input)
  const points = all.filter(({ age }) => within(domain, age))
  const forecast = drawnForecast(input.forecast, domain)
  const emmetropic = windowed(input.emmetropicLength, domain, lengthBetween)
  const band = windowed(input.referenceBand?.rows ?? [], domain, bandBetween)
  const eyes = EYES.filter((eye) => points.some((point) => point.eye === eye))
  const shared = {
    name: "length",
    title: "Length",
    unit: eyes.length === 1 ? `mm, ${eyes[0]} eye` : "mm",
  } as const

  if (points.length === 0 && forecast === null) {
    const why = all.length === 0 ? "no axial length recorded yet" : "no axial length at these ages"
    return { ...shared, height: EMPTY_HEIGHT, marks: (plot) => [emptyNote(frame, plot, why)] }
  }

  const [low, high] = extent([
    ...points.flatMap(({ value, half95 }) => [value - (half95 ?? 0), value + (half95 ?? 0)]),
    ...fanEnds(forecast),
    ...emmetropic.map(({ mm }) => mm),
    ...band.flatMap(({ lowMm, highMm }) => [lowMm, highMm]),
  ])
  const margin = Math.max(0.1, (high - low) * 0.04)

  return {
    ...shared,
    height: frame.narrow ? 200 : 216,
    key: eyes.length === 0 ? undefined : eyeKey(eyes, colours),
    marks: (plot) => {
      const y = scaleLinear([low - margin, high + margin], [plot.y + plot.height, plot.y])
      const ticks = y.ticks(4)
      return [
        ...valueAxis({ frame, ticks, y, words: (mm) => fixed(mm, ticks.every(Number.isInteger) ? 0 : 1) }),
        ...referenceMarks({ band, emmetropic, frame, y }),
        ...(forecast === null ? [] : fanMarks(forecast, { frame, y })),
        ...points.flatMap((point) => lengthMark(point, { frame, y })),
        ...endLabels(frame, plot, lineNames({ input, forecast, band, emmetropic, y })),
      ]
    },
  }
}

function lengthMark(
  { age, eye, value, half95 }: EyePoint,
  { frame, y }: { frame: Frame; y: (mm: number) => number },
): readonly SvgElement[] {
  const x = frame.x(age) + eyeShift(eye)
  const whisker = { stroke: frame.colours.ink, width: 1.1 }
  return [
    ...(half95 === null ? [] : [line({ x, y: y(value - half95) }, { x, y: y(value + half95) }, whisker)]),
    eyeMark({ eye, x, y: y(value) }, frame.colours),
  ]
}

function referenceMarks({
  band,
  emmetropic,
  frame,
  y,
}: {
  readonly band: readonly BandRow[]
  readonly emmetropic: readonly LengthAtAge[]
  readonly frame: Frame
  readonly y: (mm: number) => number
}): readonly SvgElement[] {
  const between = area<BandRow>()
    .curve(curveMonotoneX)
    .digits(2)
    .x(({ age }) => frame.x(age))
    .y0(({ lowMm }) => y(lowMm))
    .y1(({ highMm }) => y(highMm))
  const along = curve<LengthAtAge>()
    .curve(curveMonotoneX)
    .digits(2)
    .x(({ age }) => frame.x(age))
    .y(({ mm }) => y(mm))
  const { ground, shadeDark } = frame.colours
  return [
    ...(band.length < 2 ? [] : [el("path", { d: between([...band]) as string, fill: ground })]),
    ...(emmetropic.length < 2
      ? []
      : [
          el("path", {
            d: along([...emmetropic]) as string,
            fill: "none",
            stroke: shadeDark,
            "stroke-width": 1.2,
          }),
        ]),
  ]
}

function lineNames({
  input,
  forecast,
  band,
  emmetropic,
  y,
}: {
  readonly input: CourseFigureInput
  readonly forecast: DrawnForecast | null
  readonly band: readonly BandRow[]
  readonly emmetropic: readonly LengthAtAge[]
  readonly y: (mm: number) => number
}): readonly EndLabel[] {
  const [bandEnd, curveEnd] = [band.at(-1), emmetropic.at(-1)]
  const [untreatedEnd, treatedEnd] = [forecast?.untreated.at(-1), forecast?.asTreated?.at(-1)]
  const figure = (mm: number) => `${fixed(mm, 1)} mm`
  const names: (EndLabel | undefined)[] = [
    untreatedEnd && { y: y(untreatedEnd.p50), name: "untreated", figure: figure(untreatedEnd.p50) },
    treatedEnd && { y: y(treatedEnd.p50), name: "as treated", figure: figure(treatedEnd.p50), strong: true },
    curveEnd && { y: y(curveEnd.mm), name: "emmetropic" },
    bandEnd && {
      y: y(mix({ from: bandEnd.lowMm, to: bandEnd.highMm, share: 0.5 })),
      name: input.referenceBand?.label ?? "",
    },
  ]
  return names.filter((name) => name !== undefined)
}

/** The eye whose forecast is drawn, for the words under the figure. */
export function forecastEye(input: CourseFigureInput, domain: readonly [number, number]): Eye | null {
  return drawnForecast(input.forecast, domain)?.eye ?? null
}

function fanEnds(forecast: DrawnForecast | null): readonly number[] {
  return [...(forecast?.untreated ?? []), ...(forecast?.asTreated ?? [])].flatMap(({ p5, p95 }) => [p5, p95])
}

function extent(values: readonly number[]): readonly [number, number] {
  return [Math.min(...values), Math.max(...values)]
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
