import { addMonths, dayNumber } from "../engine/calendar.js"
import type { CalendarDate } from "../engine/course.js"
import { msg, say } from "../engine/say.js"
import type { NightState, Run } from "../engine/supply/covered-days.js"
import { percent } from "../engine/words.js"
import { type Colours, colours as coloursOf } from "./colours.js"
import type { CourseFigureOptions } from "./course-figure-input.js"
import { linearScale } from "./linear-scale.js"
import { label, line } from "./marks.js"
import { decimals, el, polygon, type SvgElement } from "./svg.js"
import { svgDocument } from "./svg-document.js"
import { TEXT, textWidth } from "./text-size.js"
import { dateWords } from "./words.js"

export interface CoverageStripInput {
  /** Every night of the prescription in runs, in order and without holes. */
  readonly nights: readonly Run[]
  /** The day each bottle was opened, or handed out where nobody recorded the opening. */
  readonly bottles: readonly { readonly date: CalendarDate; readonly isOpeningRecorded: boolean }[]
  /** Spans of which the family told missed nights, both ends included. */
  readonly missed: readonly {
    readonly from: CalendarDate
    readonly to: CalendarDate
    readonly nights: number
  }[]
  readonly proportion: number | null
}

type Options = Pick<CourseFigureOptions, "width" | "colours">

const SIDE = 6
const BOTTLES = { top: 2, size: 7 } as const
const BAR = { top: 14, height: 22 } as const
const MISSED = { top: 40, height: 14 } as const
const AXIS = 70
const LEGEND_ROW = 17

const WORDS: Readonly<Record<NightState, string>> = {
  covered: msg("bottle in date"),
  "not-covered": msg("no bottle in date"),
  "not-recorded": msg("no bottle on record"),
  "not-prescribed": msg("not prescribed"),
}

/**
 * The nights of a prescription from left to right: filled where a bottle was in date, an empty frame where none was, a
 * dashed frame where nothing is recorded, a thin line where no drops were prescribed. Above it the bottles, a hollow mark
 * where nobody recorded the opening; below it what the family told.
 *
 * @example
 * coverageStrip({ nights: report.nights, bottles: [], missed: [], proportion: report.proportionOfDaysCovered })
 */
export function coverageStrip(input: CoverageStripInput, options: Options = {}): string {
  const { width = 880, colours: kind = "themed" } = options
  const { nights, bottles, missed } = input
  const [first, last] = [nights[0], nights.at(-1)]
  if (!first || !last) throw new RangeError("a coverage strip needs at least one night")
  const span = [dayNumber(first.from), dayNumber(last.to) + 1] as const
  const x = linearScale(span, [SIDE, width - SIDE])
  const colours = coloursOf(kind)
  const isUnder = missed.length > 0
  const axis = isUnder ? AXIS : AXIS - MISSED.height - 4
  const keys = legend(input, { colours, width, top: axis + 18 })
  return svgDocument({
    width,
    height: keys.bottom + 4,
    title: say("Nights with a bottle in date"),
    description: described(input),
    content: [
      ...nights.flatMap((run) => runMarks(run, { x, colours })),
      ...bottles
        .filter(({ date }) => dayNumber(date) >= span[0] && dayNumber(date) < span[1])
        .map((bottle) => bottleMark(bottle, { x, colours })),
      ...missed.flatMap((one) => missedMarks(one, { x, colours, span, width })),
      ...axisMarks([first.from, last.to], { x, colours, axis, width }),
      ...keys.marks,
    ],
  })
}

interface Drawing {
  readonly x: (day: number) => number
  readonly colours: Colours
}

function runMarks({ from, nights, state }: Run, { x, colours }: Drawing): readonly SvgElement[] {
  const start = dayNumber(from)
  const [left, right] = [x(start), x(start + nights)]
  const box = { x: left, y: BAR.top, width: Math.max(0.8, right - left), height: BAR.height }
  if (state === "covered") return [el("rect", { ...box, fill: colours.accent })]
  if (state === "not-prescribed") {
    const middle = BAR.top + BAR.height / 2
    return [line({ x: left, y: middle }, { x: right, y: middle }, { stroke: colours.shadeDark })]
  }
  return [
    el("rect", {
      x: box.x + 0.6,
      y: box.y + 0.6,
      width: Math.max(0.4, box.width - 1.2),
      height: box.height - 1.2,
      fill: colours.paper,
      stroke: state === "not-covered" ? colours.warm : colours.shadeDark,
      "stroke-width": state === "not-covered" ? 1.4 : 1,
      "stroke-dasharray": state === "not-recorded" ? "3 3" : undefined,
    }),
  ]
}

/** A point down at the day from which a bottle counts. */
function bottleMark(
  { date, isOpeningRecorded }: CoverageStripInput["bottles"][number],
  { x, colours }: Drawing,
): SvgElement {
  const at = x(dayNumber(date))
  const { top, size } = BOTTLES
  return el("path", {
    d: polygon(
      [
        { x: at - size / 2, y: top },
        { x: at + size / 2, y: top },
        { x: at, y: top + size + 2 },
      ],
      { closed: true },
    ),
    fill: isOpeningRecorded ? colours.ink : colours.paper,
    stroke: colours.ink,
  })
}

function missedMarks(
  { from, to, nights }: CoverageStripInput["missed"][number],
  { x, colours, span, width }: Drawing & { readonly span: readonly [number, number]; readonly width: number },
): readonly SvgElement[] {
  const [start, end] = [Math.max(dayNumber(from), span[0]), Math.min(dayNumber(to) + 1, span[1])]
  if (end <= start) return []
  const [left, right] = [x(start), x(end)]
  const y = MISSED.top + 3
  const words = say("{nights, plural, one {# missed} other {# missed}}", { nights })
  const half = textWidth(words, { size: TEXT.small }) / 2
  const middle = Math.min(Math.max((left + right) / 2, half), width - half)
  const stroke = { stroke: colours.warm, width: 1.4 }
  return [
    line({ x: left, y }, { x: right, y }, stroke),
    line({ x: left, y: y - 3 }, { x: left, y: y + 3 }, stroke),
    line({ x: right, y: y - 3 }, { x: right, y: y + 3 }, stroke),
    label(
      words,
      { x: middle, y: MISSED.top + MISSED.height },
      { fill: colours.soft, size: TEXT.small, anchor: "middle", halo: colours.paper },
    ),
  ]
}

/** The first of a month, as many as there is room for. */
function axisMarks(
  [from, to]: readonly [CalendarDate, CalendarDate],
  { x, colours, axis, width }: Drawing & { readonly axis: number; readonly width: number },
): readonly SvgElement[] {
  const firsts: CalendarDate[] = []
  for (let month = `${from.slice(0, 7)}-01`; month <= to; month = addMonths(month, 1))
    if (month >= from) firsts.push(month)
  const words = (month: CalendarDate) => dateWords(month).replace(/^1 /, "")
  const each = textWidth("Mmm 2025", { size: TEXT.small }) + 10
  const step = Math.max(1, Math.ceil((firsts.length * each) / (width - 2 * SIDE)))
  return firsts
    .filter((_, i) => i % step === 0)
    .flatMap((month) => {
      const at = x(dayNumber(month))
      const fits = at + textWidth(words(month), { size: TEXT.small }) <= width
      return [
        line({ x: at, y: BAR.top + BAR.height }, { x: at, y: axis - 10 }, { stroke: colours.line }),
        ...(fits ? [label(words(month), { x: at, y: axis }, { fill: colours.soft, size: TEXT.small })] : []),
      ]
    })
}

interface Key {
  readonly words: string
  /** Drawn with its left end at x = 0 and the words' baseline at y = 0. */
  readonly marks: readonly SvgElement[]
}

/** What each mark means, in the marks themselves, in as many rows as they need; colour is never the only carrier. */
function legend(
  { nights, bottles }: CoverageStripInput,
  { colours, width, top }: { readonly colours: Colours; readonly width: number; readonly top: number },
): { readonly marks: readonly SvgElement[]; readonly bottom: number } {
  const order: readonly NightState[] = ["covered", "not-covered", "not-recorded", "not-prescribed"]
  const day = "2000-01-01"
  const x = (at: number) => 18 * (at - dayNumber(day))
  const keys: readonly Key[] = [
    ...order
      .filter((state) => nights.some((run) => run.state === state))
      .map((state) => ({
        words: say(WORDS[state]),
        marks: runMarks({ from: day, to: day, nights: 1, state }, { x, colours }).map(lowered),
      })),
    ...[true, false]
      .filter((isOpeningRecorded) => bottles.some((bottle) => bottle.isOpeningRecorded === isOpeningRecorded))
      .map((isOpeningRecorded) => ({
        words: isOpeningRecorded ? say("bottle opened") : say("bottle handed out, opening not recorded"),
        marks: [
          el("g", { transform: `translate(9,${-BOTTLES.top - 9})` }, [
            bottleMark({ date: day, isOpeningRecorded }, { x, colours }),
          ]),
        ],
      })),
  ]
  let [at, y] = [SIDE, top]
  const marks = keys.flatMap((key) => {
    const size = 24 + textWidth(key.words, { size: TEXT.small })
    if (at > SIDE && at + size > width) [at, y] = [SIDE, y + LEGEND_ROW]
    const placed = el("g", { transform: `translate(${decimals(at)},${y})` }, [
      ...key.marks,
      label(key.words, { x: 24, y: 0 }, { fill: colours.soft, size: TEXT.small }),
    ])
    at += size + 18
    return [placed]
  })
  return { marks, bottom: y }
}

/** A mark of the strip made as low as a line of words. */
function lowered(mark: SvgElement): SvgElement {
  const { attributes } = mark
  const moved = "y1" in attributes ? { y1: -4, y2: -4 } : { y: -9, height: 10 }
  return { ...mark, attributes: { ...attributes, ...moved } }
}

function described({ nights, missed, proportion }: CoverageStripInput): string {
  const count = (state: NightState) =>
    nights.filter((run) => run.state === state).reduce((sum, run) => sum + run.nights, 0)
  const [first, last] = [nights[0] as Run, nights.at(-1) as Run]
  const share =
    proportion === null
      ? say("No bottle is recorded.")
      : say("{share} of nights had a bottle in date.", { share: percent(proportion) })
  const gaps = nights
    .filter(({ state }) => state === "not-covered")
    .map(({ from, to }) => say("{from} to {to}", { from: dateWords(from), to: dateWords(to) }))
  return [
    `${say("From {from} to {to}.", { from: dateWords(first.from), to: dateWords(last.to) })} ${share}`,
    gaps.length === 0
      ? ""
      : say("{nights, plural, one {# night} other {# nights}} without one: {spans}.", {
          nights: count("not-covered"),
          spans: gaps.join("; "),
        }),
    missed.length === 0
      ? ""
      : say("Missed nights told of: {spans}.", {
          spans: missed
            .map(({ from, to, nights: n }) =>
              say("{nights} from {from} to {to}", { nights: n, from: dateWords(from), to: dateWords(to) }),
            )
            .join("; "),
        }),
  ]
    .filter((part) => part !== "")
    .join(" ")
}
