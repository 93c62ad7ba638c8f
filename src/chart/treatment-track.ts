import { say } from "../engine/say.js"
import type { CourseFigureInput, MonthOfCoverage } from "./course-figure-input.js"
import { type TreatmentSpan, treatmentSpans } from "./course-points.js"
import { EMPTY_HEIGHT, emptyNote, type Frame, type Track } from "./frame.js"
import { rows, type Stretch } from "./label-placement.js"
import { label } from "./marks.js"
import { el, polygon, type SvgElement } from "./svg.js"
import { TEXT, textWidth } from "./text-size.js"
import { type WordsBeside, wordsBeside } from "./words-beside.js"

const RIBBON = 18
const CELL = 8
const MONTH_YEARS = 1 / 12

/** What was given when, in words on ribbons, and under it the nights covered by the bottles supplied. */
export function treatmentTrack(input: CourseFigureInput, frame: Frame): Track {
  const { domain } = frame
  const shared = { name: "treatment", title: say("Treatment") } as const
  const spans = treatmentSpans(input)
  const ribbons = spans
    .filter(({ fromAge, toAge }) => toAge >= domain[0] && fromAge <= domain[1])
    .map((span) => placed(span, frame))
  const months = (input.coverageByMonth ?? []).filter(
    ({ age }) => age + MONTH_YEARS > domain[0] && age < domain[1],
  )
  if (ribbons.length === 0) {
    const why = spans.length === 0 ? say("no treatment recorded") : say("no treatment at these ages")
    return { ...shared, unit: "", height: EMPTY_HEIGHT, marks: (plot) => [emptyNote(frame, plot, why)] }
  }
  const row = rows(
    ribbons.map(({ extent }) => extent),
    { gap: 0 },
  )
  const ribbonsHeight = (Math.max(...row) + 1) * (RIBBON + 3) - 3
  const height = ribbonsHeight + (months.length === 0 ? 0 : CELL + 4)
  return {
    ...shared,
    unit: months.length === 0 ? "" : say("nights covered"),
    height,
    marks: (plot) => [
      ...ribbons.flatMap((ribbon, i) => ribbonMarks(ribbon, frame, plot.y + (row[i] ?? 0) * (RIBBON + 3))),
      ...months.flatMap((month) => coverageCell(month, frame, plot.y + ribbonsHeight + 4)),
    ],
  }
}

interface Ribbon {
  readonly span: TreatmentSpan
  readonly bar: Stretch
  /** Null where the words stand on the ribbon itself. */
  readonly beside: WordsBeside | null
  readonly extent: Stretch
}

/** Words stand on the ribbon where they fit, else beside it. */
function placed(span: TreatmentSpan, frame: Frame): Ribbon {
  const from = frame.x(Math.max(span.fromAge, frame.domain[0]))
  const bar = { from, to: Math.max(from + 3, frame.x(Math.min(span.toAge, frame.domain[1]))) }
  const fits = textWidth(span.words, { size: TEXT.label }) + 16 <= bar.to - bar.from
  const beside = fits ? null : wordsBeside(span.words, { bar, frame })
  return { span, bar, beside, extent: beside?.extent ?? bar }
}

function ribbonMarks({ span, bar, beside }: Ribbon, frame: Frame, top: number): readonly SvgElement[] {
  const { colours } = frame
  const { from, to } = bar
  const bottom = top + RIBBON
  const goesOn = span.ongoing && to - from > 8
  // A point at the end means that it goes on; a straight end means that it was stopped.
  const shoulder = goesOn ? to - 5 : to
  const outline = [
    { x: from, y: top },
    { x: shoulder, y: top },
    { x: to, y: top + RIBBON / 2 },
    { x: shoulder, y: bottom },
    { x: from, y: bottom },
  ]
  const words = beside
    ? label(
        beside.text,
        { x: beside.x, y: top + 13 },
        { fill: colours.ink, anchor: beside.anchor, halo: colours.paper },
      )
    : label(span.words, { x: from + 6, y: top + 13 }, { fill: colours.ink })
  return [
    el("path", {
      d: polygon(outline, { closed: true }),
      fill: span.nothing ? colours.paper : colours.wash,
      stroke: span.nothing ? colours.shadeDark : colours.accent,
      "stroke-dasharray": span.nothing ? "3 3" : undefined,
    }),
    words,
  ]
}

/** Filled from below by the share of nights covered: a full cell is a covered month, a hollow one an uncovered one. */
function coverageCell({ age, share }: MonthOfCoverage, frame: Frame, top: number): readonly SvgElement[] {
  const { accent, warm, paper } = frame.colours
  const [from, to] = [Math.max(frame.x(age), frame.left), Math.min(frame.x(age + MONTH_YEARS), frame.right)]
  const width = Math.max(1, to - from - Math.min(1.5, (to - from) / 4))
  const filled = CELL * Math.max(0, Math.min(1, share))
  const gap = { x: from + 0.5, y: top + 0.5, width: Math.max(0.5, width - 1), height: CELL - 1 }
  return [
    ...(filled === CELL ? [] : [el("rect", { ...gap, fill: paper, stroke: warm })]),
    ...(filled === 0
      ? []
      : [el("rect", { x: from, y: top + CELL - filled, width, height: filled, fill: accent })]),
  ]
}
