import type { Fan, Forecast } from "../engine/assessment.js"
import type { Eye } from "../engine/course.js"
import { EYES } from "../engine/course.js"
import { smoothBand, smoothLine } from "./curves.js"
import { type Frame, mix, windowed } from "./frame.js"
import { el, type SvgElement } from "./svg.js"

type Quantile = keyof Fan
const QUANTILES: readonly Quantile[] = ["p5", "p25", "p50", "p75", "p95"]

/** The forecast at one age, mm. */
export type FanRow = { readonly age: number } & Readonly<Record<Quantile, number>>

/** The forecast that is drawn: of the longer eye, since that is the eye at risk; two eyes' fans would hide each other. */
export interface DrawnForecast {
  readonly eye: Eye
  readonly untreated: readonly FanRow[]
  /** Null when treating makes no difference to the forecast: none is given, or it has been stopped. */
  readonly asTreated: readonly FanRow[] | null
}

export function drawnForecast(
  forecast: Forecast | undefined,
  domain: readonly [number, number],
): DrawnForecast | null {
  const candidates = EYES.flatMap((eye) => {
    const ofEye = forecast?.eyes[eye]
    if (ofEye === undefined || ofEye.ages.length < 2) return []
    const untreated = fanRows(ofEye.ages, ofEye.untreated)
    const asTreated = fanRows(ofEye.ages, ofEye.asTreated)
    return [{ eye, start: untreated[0]?.p50 ?? 0, untreated, asTreated }]
  })
  const longest = candidates.sort((a, b) => b.start - a.start)[0]
  if (longest === undefined) return null
  const { eye, untreated, asTreated } = longest
  const differs = untreated.some(({ p50 }, i) => Math.abs(p50 - (asTreated[i]?.p50 ?? p50)) > 0.005)
  const shown = (rows: readonly FanRow[]) => windowed(rows, { window: domain, between: rowBetween })
  const drawn = { eye, untreated: shown(untreated), asTreated: differs ? shown(asTreated) : null }
  return drawn.untreated.length < 2 ? null : drawn
}

/** The forecast at an age, or null outside its ages. */
export function fanAt(rows: readonly FanRow[], age: number): FanRow | null {
  const next = rows.findIndex((row) => row.age >= age)
  const [before, after] = [rows[next - 1], rows[next]]
  if (after === undefined) return null
  if (after.age === age) return after
  return before === undefined
    ? null
    : rowBetween(before, after, (age - before.age) / (after.age - before.age))
}

/**
 * Bands from 5 to 95 % and from 25 to 75 % with the median. Untreated is grey with dashed lines, as treated is filled
 * and solid, so that each can be followed where they overlap and on a black-and-white print.
 */
export function fanMarks(
  { untreated, asTreated }: DrawnForecast,
  { frame, y }: { readonly frame: Frame; readonly y: (mm: number) => number },
): readonly SvgElement[] {
  const { colours } = frame
  const band = (rows: readonly FanRow[], low: Quantile, high: Quantile, fill: string, opacity: number) =>
    el("path", {
      d: smoothBand(
        rows.map((row) => ({ x: frame.x(row.age), y: y(row[high]) })),
        rows.map((row) => ({ x: frame.x(row.age), y: y(row[low]) })),
      ),
      fill,
      "fill-opacity": opacity,
    })
  const trace = (rows: readonly FanRow[], quantile: Quantile, stroke: string, width: number, dash?: string) =>
    el("path", {
      d: smoothLine(rows.map((row) => ({ x: frame.x(row.age), y: y(row[quantile]) }))),
      fill: "none",
      stroke,
      "stroke-width": width,
      "stroke-dasharray": dash,
    })
  const grey = colours.shadeDark
  return [
    band(untreated, "p5", "p95", colours.shade, 0.75),
    band(untreated, "p25", "p75", grey, 0.22),
    ...(asTreated === null
      ? []
      : [
          band(asTreated, "p5", "p95", colours.wash, 0.75),
          band(asTreated, "p25", "p75", colours.accentMiddle, 0.6),
          trace(asTreated, "p5", colours.accentMiddle, 0.8),
          trace(asTreated, "p95", colours.accentMiddle, 0.8),
        ]),
    trace(untreated, "p5", grey, 0.8, "2 3"),
    trace(untreated, "p95", grey, 0.8, "2 3"),
    trace(untreated, "p50", colours.soft, 1.6, "6 4"),
    ...(asTreated === null ? [] : [trace(asTreated, "p50", colours.accent, 2.2)]),
  ]
}

function fanRows(ages: readonly number[], fan: Fan): readonly FanRow[] {
  return ages.map((age, i) => {
    const at = (quantile: Quantile) => {
      const mm = fan[quantile][i]
      if (mm === undefined)
        throw new RangeError(`forecast ${quantile} must have a value for each age: ${age}`)
      return mm
    }
    return { age, p5: at("p5"), p25: at("p25"), p50: at("p50"), p75: at("p75"), p95: at("p95") }
  })
}

function rowBetween(a: FanRow, b: FanRow, share: number): FanRow {
  const values = QUANTILES.map((q) => [q, mix({ from: a[q], to: b[q], share })])
  return { age: mix({ from: a.age, to: b.age, share }), ...Object.fromEntries(values) } as FanRow
}
