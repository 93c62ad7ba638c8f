import type { CourseFigureInput, MonthOfCoverage } from "./course-figure-input.js"
import { type TreatmentSpan, treatmentSpans } from "./course-points.js"
import { EMPTY_HEIGHT, emptyNote, type Frame, type Track } from "./frame.js"
import { rows } from "./label-placement.js"
import { label } from "./marks.js"
import { el, type Point, polygon, type SvgElement } from "./svg.js"
import { TEXT, textWidth } from "./text-size.js"

const RIBBON = 18
const CELL = 8
const MONTH_YEARS = 1 / 12

/** What was given when, in words on ribbons, and under it the nights covered by the bottles supplied. */
export function treatmentTrack(input: CourseFigureInput, frame: Frame): Track {
  const { domain } = frame
  const shared = { name: "treatment", title: "Treatment" } as const
  const spans = treatmentSpans(input)
  const ribbons = spans
    .filter(({ fromAge, toAge }) => toAge >= domain[0] && fromAge <= domain[1])
    .map((span) => placed(span, frame))
  const months = (input.coverageByMonth ?? []).filter(
    ({ age }) => age + MONTH_YEARS > domain[0] && age < domain[1],
  )
  if (ribbons.length === 0) {
    const why = spans.length === 0 ? "no treatment recorded" : "no treatment at these ages"
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
    unit: months.length === 0 ? "" : "nights covered",
    height,
    marks: (plot) => [
      ...ribbons.flatMap((ribbon, i) => ribbonMarks(ribbon, frame, plot.y + (row[i] ?? 0) * (RIBBON + 3))),
      ...months.flatMap((month) => coverageCell(month, frame, plot.y + ribbonsHeight + 4)),
    ],
  }
}

interface Ribbon {
  readonly span: TreatmentSpan
  readonly from: number
  readonly to: number
  /** Start of the words, and whether they end or begin there. */
  readonly words: { readonly x: number; readonly anchor: "start" | "end" }
  readonly extent: { readonly from: number; readonly to: number }
}

/** Words stand on the ribbon where they fit, else right of it, else left of it. */
function placed(span: TreatmentSpan, frame: Frame): Ribbon {
  const from = frame.x(Math.max(span.fromAge, frame.domain[0]))
  const to = Math.max(from + 3, frame.x(Math.min(span.toAge, frame.domain[1])))
  const width = textWidth(span.words, { size: TEXT.label })
  const ribbon = { span, from, to }
  if (width + 16 <= to - from) {
    return { ...ribbon, words: { x: from + 6, anchor: "start" }, extent: { from, to } }
  }
  if (to + 6 + width <= frame.right) {
    return { ...ribbon, words: { x: to + 6, anchor: "start" }, extent: { from, to: to + 12 + width } }
  }
  return { ...ribbon, words: { x: from - 6, anchor: "end" }, extent: { from: from - 12 - width, to } }
}

function ribbonMarks({ span, from, to, words }: Ribbon, frame: Frame, top: number): readonly SvgElement[] {
  const { colours } = frame
  const bottom = top + RIBBON
  const goesOn = span.ongoing && to - from > 8
  // A point at the end means that it goes on; a straight end means that it was stopped.
  const end: readonly Point[] = goesOn
    ? [
        { x: to - 5, y: top },
        { x: to, y: top + RIBBON / 2 },
        { x: to - 5, y: bottom },
      ]
    : [
        { x: to, y: top },
        { x: to, y: bottom },
      ]
  return [
    el("path", {
      d: polygon([{ x: from, y: top }, ...end, { x: from, y: bottom }], { closed: true }),
      fill: span.nothing ? colours.paper : colours.wash,
      stroke: span.nothing ? colours.shadeDark : colours.accent,
      "stroke-dasharray": span.nothing ? "3 3" : undefined,
    }),
    label(span.words, { x: words.x, y: top + 13 }, { fill: colours.ink, anchor: words.anchor }),
  ]
}

/** Filled from below by the share of nights covered: a full cell is a covered month, a hollow one an uncovered one. */
function coverageCell({ age, share }: MonthOfCoverage, frame: Frame, top: number): readonly SvgElement[] {
  const { accent, warm, paper } = frame.colours
  const [from, to] = [Math.max(frame.x(age), frame.left), Math.min(frame.x(age + MONTH_YEARS), frame.right)]
  const width = Math.max(1, to - from - 1.5)
  const filled = CELL * Math.max(0, Math.min(1, share))
  const gap = { x: from + 0.5, y: top + 0.5, width: Math.max(0.5, width - 1), height: CELL - 1 }
  return [
    ...(filled === CELL ? [] : [el("rect", { ...gap, fill: paper, stroke: warm })]),
    ...(filled === 0
      ? []
      : [el("rect", { x: from, y: top + CELL - filled, width, height: filled, fill: accent })]),
  ]
}
