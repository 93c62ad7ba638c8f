import { dayNumber } from "../engine/calendar.js"
import { type CalendarDate, EYES } from "../engine/course.js"
import type { ComfortCourse, ComfortLine, ComfortPoint } from "../engine/safety/comfort-course.js"
import { say } from "../engine/say.js"
import { type Colours, colours as coloursOf } from "./colours.js"
import type { CourseFigureOptions } from "./course-figure-input.js"
import { eyeKey, eyeMark, eyeShift } from "./eye-mark.js"
import { linearScale } from "./linear-scale.js"
import { label, line } from "./marks.js"
import { el, polygon, type SvgElement } from "./svg.js"
import { svgDocument } from "./svg-document.js"
import { LINE_HEIGHT, TEXT, wrapped } from "./text-size.js"
import { dateWords, eyeWords, fixed } from "./words.js"

type Options = Pick<CourseFigureOptions, "width" | "colours">

const TOP = 40
const PANEL = 62
const GAP = 20
const LEFT = 156
const RIGHT = 62
/** Room for a title left of the figures of its axis, less what bold type takes more than `wrapped` counts. */
const TITLE = 112
const FOOT = 26
/** What is drawn; acuity far away and pressure stand in the table alone. */
const DRAWN: readonly ComfortLine["measure"][] = ["photopic-pupil", "accommodation", "near-acuity"]
/** The least span of an axis, so that an error of measurement does not look like a course. */
const LEAST_SPAN: Readonly<Partial<Record<ComfortLine["measure"], number>>> = {
  "photopic-pupil": 1.5,
  accommodation: 4,
  "near-acuity": 0.3,
}

/**
 * Pupil, accommodation and near acuity over the visits: a dotted line at each eye's own value before the drops, the right
 * eye as a filled circle, the left as an open square.
 *
 * @example
 * comfortFigure(comfortCourse({ course, today }), { width: 640 })
 */
export function comfortFigure(
  { begun, lines }: ComfortCourse,
  { width = 640, colours: kind = "themed" }: Options = {},
): string | null {
  const drawn = lines.filter(({ measure }) => DRAWN.includes(measure))
  const dates = drawn.flatMap(({ points }) => points.map(({ date }) => date)).toSorted()
  const [first, last] = [dates[0], dates.at(-1)]
  if (first === undefined || last === undefined) return null
  const colours = coloursOf(kind)
  const [from, to] = [dayNumber(first), dayNumber(last)]
  const x = linearScale(from === to ? [from - 1, to + 1] : [from, to], [LEFT + 14, width - RIGHT - 14])
  const at = (date: CalendarDate) => x(dayNumber(date))
  const height = TOP + drawn.length * (PANEL + GAP) - GAP + FOOT
  const key = eyeKey(EYES, colours)
  return svgDocument({
    width,
    height,
    title: say("Pupil, accommodation and near acuity against the child’s own values before the drops"),
    description: drawn.map(inWords).join(" "),
    content: [
      el("g", { transform: `translate(${width - RIGHT - key.width},12)` }, key.marks),
      ...startMark({ begun, at, bottom: height - FOOT, colours, edges: [LEFT, width - RIGHT] }),
      ...drawn.flatMap((drawnLine, index) =>
        panel(drawnLine, { top: TOP + index * (PANEL + GAP), width, at, colours }),
      ),
      ...dayLabels({ first, last, at, y: height - 6, colours }),
    ],
  })
}

function startMark({
  begun,
  at,
  bottom,
  colours,
  edges: [left, right],
}: {
  readonly begun: CalendarDate | null
  readonly at: (date: CalendarDate) => number
  readonly bottom: number
  readonly colours: Colours
  readonly edges: readonly [number, number]
}): readonly SvgElement[] {
  if (begun === null) return []
  const x = at(begun)
  if (x < left || x > right) return []
  return [
    line({ x, y: TOP - 12 }, { x, y: bottom }, { stroke: colours.accentMiddle, width: 1.5 }),
    label(
      say("drops from {day}", { day: dateWords(begun) }),
      { x: x + 4, y: TOP - 16 },
      { fill: colours.accent, size: TEXT.small },
    ),
  ]
}

function panel(
  { measure, title, unit, digits, points }: ComfortLine,
  {
    top,
    width,
    at,
    colours,
  }: {
    readonly top: number
    readonly width: number
    readonly at: (date: CalendarDate) => number
    readonly colours: Colours
  },
): readonly SvgElement[] {
  const values = points.map(({ value }) => value)
  const [low, high] = [Math.min(...values), Math.max(...values)]
  const slack = Math.max(((LEAST_SPAN[measure] ?? 0) - (high - low)) / 2, 0.08 * (high - low))
  const y = linearScale([low - slack, high + slack], [top + PANEL, top])
  const right = width - RIGHT
  const names = wrapped(title, { width: TITLE, size: TEXT.label })
  const ticks = y.ticks(3)
  // As many decimals as the step between two ticks needs.
  const decimals = Math.max(0, -Math.floor(Math.log10((ticks[1] ?? 1) - (ticks[0] ?? 0)) + 1e-9))
  return [
    ...names.map((text, i) =>
      label(text, { x: 0, y: top + 14 + i * LINE_HEIGHT }, { fill: colours.ink, bold: true }),
    ),
    label(unit, { x: 0, y: top + 16 + names.length * LINE_HEIGHT }, { fill: colours.soft, size: TEXT.small }),
    ...ticks.flatMap((value) => [
      line({ x: LEFT, y: y(value) }, { x: right, y: y(value) }, { stroke: colours.line }),
      label(
        fixed(value, decimals),
        { x: LEFT - 8, y: y(value) + 4 },
        { fill: colours.soft, size: TEXT.small, anchor: "end" },
      ),
    ]),
    ...EYES.flatMap((eye) =>
      eyeLine(
        points.filter((point) => point.eye === eye),
        { at, y, right, colours },
      ),
    ),
    ...lastChange(points, { x: right + 6, y, digits, colours }),
  ]
}

function eyeLine(
  points: readonly ComfortPoint[],
  {
    at,
    y,
    right,
    colours,
  }: {
    readonly at: (date: CalendarDate) => number
    readonly y: (value: number) => number
    readonly right: number
    readonly colours: Colours
  },
): readonly SvgElement[] {
  const eye = points[0]?.eye
  if (eye === undefined) return []
  const place = (point: ComfortPoint) => at(point.date) + eyeShift(eye)
  const path = (line: readonly ComfortPoint[]) =>
    polygon(
      line.map((point) => ({ x: place(point), y: y(point.value) })),
      { closed: false },
    )
  const baseline = points.find(({ isBaseline }) => isBaseline)
  return [
    ...(baseline
      ? [
          line(
            { x: place(baseline), y: y(baseline.value) },
            { x: right, y: y(baseline.value) },
            { stroke: colours.accentMiddle, width: 1.2, dash: "1.5 3" },
          ),
        ]
      : []),
    ...(points.length < 2
      ? []
      : [
          el("path", {
            d: path(points),
            fill: "none",
            stroke: colours.shadeDark,
            "stroke-width": 1.1,
            "stroke-dasharray": eye === "left" ? "3 3" : undefined,
          }),
        ]),
    ...points.map((point) => eyeMark({ eye, x: place(point), y: y(point.value) }, colours)),
  ]
}

/** The larger change of the two eyes at the last visit, beside where it was measured. */
function lastChange(
  points: readonly ComfortPoint[],
  {
    x,
    y,
    digits,
    colours,
  }: {
    readonly x: number
    readonly y: (value: number) => number
    readonly digits: number
    readonly colours: Colours
  },
): readonly SvgElement[] {
  const last = largestLastChange(points)
  if (!last) return []
  const style = { fill: colours.ink, bold: true } as const
  return [label(signed(last.change ?? 0, digits), { x, y: y(last.value) + 4 }, style)]
}

function largestLastChange(points: readonly ComfortPoint[]): ComfortPoint | undefined {
  const day = points
    .map(({ date }) => date)
    .toSorted()
    .at(-1)
  return points
    .filter(({ date, change }) => date === day && change !== null)
    .toSorted((a, b) => Math.abs(b.change ?? 0) - Math.abs(a.change ?? 0))[0]
}

const signed = (value: number, digits: number): string =>
  Number(value.toFixed(digits)) > 0 ? `+${fixed(value, digits)}` : fixed(value, digits)

function inWords({ title, unit, digits, points }: ComfortLine): string {
  const last = largestLastChange(points)
  if (!last) return say("{title}: no value to compare with one before the drops.", { title })
  const { change, value, eye, date } = last
  return say("{title}: {eye} {value} {unit} on {day}, {change} {unit} against before the drops.", {
    title,
    eye: eyeWords(eye),
    value: fixed(value, digits),
    unit,
    day: dateWords(date),
    change: signed(change ?? 0, digits),
  })
}

function dayLabels({
  first,
  last,
  at,
  y,
  colours,
}: {
  readonly first: CalendarDate
  readonly last: CalendarDate
  readonly at: (date: CalendarDate) => number
  readonly y: number
  readonly colours: Colours
}): readonly SvgElement[] {
  const style = { fill: colours.soft, size: TEXT.small, anchor: "middle" } as const
  const days = first === last ? [first] : [first, last]
  return days.map((day) => label(dateWords(day), { x: at(day), y }, style))
}
