import type { SymptomKind } from "../engine/course.js"
import type { CourseFigureInput } from "./course-figure-input.js"
import { type EyePoint, pupilPoints, type SymptomPoint, symptomPoints } from "./course-points.js"
import { EMPTY_HEIGHT, emptyNote, type Frame, type Track, within } from "./frame.js"
import { label, line } from "./marks.js"
import { el, type SvgElement } from "./svg.js"
import { TEXT, textWidth } from "./text-size.js"
import { fixed, symptomWords } from "./words.js"

const ROW = 19

/** A row for the pupil in daylight and one for each symptom that was ever reported. */
export function safetyTrack(input: CourseFigureInput, frame: Frame): Track {
  const shared = { name: "safety", title: "Safety" } as const
  const pupils = byVisit(pupilPoints(input)).filter(({ age }) => within(frame.domain, age))
  const asked = symptomPoints(input).filter(({ age }) => within(frame.domain, age))
  const kinds = [...new Set(asked.filter(({ grade }) => grade > 0).map(({ kind }) => kind))]
  const rows = [
    ...(pupils.length === 0 ? [] : [(y: number) => pupilRow(pupils, frame, y)]),
    ...kinds.map((kind) => (y: number) => symptomRow(kind, { asked, frame, y })),
    ...(kinds.length === 0 && asked.length > 0 ? [(y: number) => noneRow(asked, frame, y)] : []),
  ]
  if (rows.length === 0) {
    const why = "no pupil or symptom recorded"
    return { ...shared, unit: "", height: EMPTY_HEIGHT, marks: (plot) => [emptyNote(frame, plot, why)] }
  }
  return {
    ...shared,
    unit: kinds.length === 0 ? "" : "grade 0 to 3",
    height: rows.length * ROW,
    marks: (plot) => rows.flatMap((row, i) => row(plot.y + (i + 0.5) * ROW)),
  }
}

interface VisitPupil {
  readonly age: number
  readonly widest: number
}

/** The wider pupil of each visit: the one that lets the light in. */
function byVisit(points: readonly EyePoint[]): readonly VisitPupil[] {
  const dates = [...new Set(points.map(({ date }) => date))]
  return dates.map((date) => {
    const here = points.filter((point) => point.date === date)
    return { age: here[0]?.age ?? 0, widest: Math.max(...here.map(({ value }) => value)) }
  })
}

/** Each figure in mm at its visit; one that would touch the figure before it is a small ring instead. */
function pupilRow(pupils: readonly VisitPupil[], frame: Frame, y: number): readonly SvgElement[] {
  const { ink, soft } = frame.colours
  let end = Number.NEGATIVE_INFINITY
  const marks = pupils.map(({ age, widest }) => {
    const text = fixed(widest, 1)
    const half = textWidth(text, { size: TEXT.small }) / 2
    const x = frame.x(age)
    if (x - half < end + 5) {
      end = Math.max(end, x + 3)
      return el("circle", { cx: x, cy: y, r: 2.5, fill: "none", stroke: soft })
    }
    end = x + half
    return label(text, { x, y: y + 4 }, { fill: ink, size: TEXT.small, anchor: "middle" })
  })
  return [...marks, rowName("pupil, mm", { x: end + 10, y, frame })]
}

/** The grade in a disc; back at 0 after having been there: an open ring. */
function symptomRow(
  kind: SymptomKind,
  { asked, frame, y }: { readonly asked: readonly SymptomPoint[]; readonly frame: Frame; readonly y: number },
): readonly SvgElement[] {
  const { warm, paper, soft } = frame.colours
  const ofKind = asked.filter((point) => point.kind === kind)
  const first = ofKind.findIndex(({ grade }) => grade > 0)
  const shown = ofKind.slice(first)
  const marks = shown.flatMap(({ age, grade }) => {
    const x = frame.x(age)
    const reported = grade > 0
    return [
      el("circle", {
        cx: x,
        cy: y,
        r: 7,
        fill: reported ? warm : paper,
        stroke: reported ? paper : soft,
      }),
      label(
        String(grade),
        { x, y: y + 4 },
        { fill: reported ? paper : soft, size: TEXT.small, anchor: "middle", bold: reported },
      ),
    ]
  })
  const x = frame.x(shown.at(-1)?.age ?? frame.domain[0]) + 14
  return [...marks, rowName(symptomWords(kind), { x, y, frame })]
}

function noneRow(asked: readonly SymptomPoint[], frame: Frame, y: number): readonly SvgElement[] {
  const ages = [...new Set(asked.map(({ age }) => age))]
  const marks = ages.map((age) => {
    const x = frame.x(age)
    return line({ x: x - 4, y }, { x: x + 4, y }, { stroke: frame.colours.soft, width: 1.4 })
  })
  return [...marks, rowName("asked, no symptom", { x: frame.x(ages.at(-1) ?? 0) + 14, y, frame })]
}

/** What a row shows: after its last mark, or in the right gutter when there is no room before the edge. */
function rowName(
  text: string,
  { x, y, frame }: { readonly x: number; readonly y: number; readonly frame: Frame },
): SvgElement {
  const width = textWidth(text, { size: TEXT.label })
  const latest = frame.width - width
  return label(text, { x: Math.min(x, latest), y: y + 4 }, { fill: frame.colours.soft })
}
