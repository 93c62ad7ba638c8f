import type { SymptomKind } from "../engine/course.js"
import { say } from "../engine/say.js"
import type { CourseFigureInput } from "./course-figure-input.js"
import { type EyePoint, pupilPoints, type SymptomPoint, symptomPoints } from "./course-points.js"
import { EMPTY_HEIGHT, emptyNote, type Frame, type Track, within } from "./frame.js"
import { spreadWithin } from "./label-placement.js"
import { label, line } from "./marks.js"
import { el, type SvgElement } from "./svg.js"
import { TEXT, textWidth } from "./text-size.js"
import { fixed, rangeWords, symptomWords } from "./words.js"

const ROW = 19
const DISC = 7

/** A row for the pupil in daylight and one for each symptom that was ever reported. */
export function safetyTrack(input: CourseFigureInput, frame: Frame): Track {
  const shared = { name: "safety", title: say("Safety") } as const
  const pupils = byVisit(pupilPoints(input)).filter(({ age }) => within(frame.domain, age))
  const asked = symptomPoints(input).filter(({ age }) => within(frame.domain, age))
  const kinds = [...new Set(asked.filter(({ grade }) => grade > 0).map(({ kind }) => kind))]
  const rows = [
    ...(pupils.length === 0 ? [] : [(y: number) => pupilRow(pupils, frame, y)]),
    ...kinds.map((kind) => (y: number) => symptomRow(kind, { asked, frame, y })),
    ...(kinds.length === 0 && asked.length > 0 ? [(y: number) => noneRow(asked, frame, y)] : []),
  ]
  if (rows.length === 0) {
    const why = say("no pupil or symptom recorded")
    return { ...shared, unit: "", height: EMPTY_HEIGHT, marks: (plot) => [emptyNote(frame, plot, why)] }
  }
  return {
    ...shared,
    unit: kinds.length === 0 ? "" : say("grade 0 to 3"),
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

/** Each figure in mm at its visit; where they stand too close, dots at the visits and the range in words. */
function pupilRow(pupils: readonly VisitPupil[], frame: Frame, y: number): readonly SvgElement[] {
  const { ink, paper } = frame.colours
  const size = textWidth("0.0", { size: TEXT.small })
  const wishes = pupils.map(({ age }) => ({ at: frame.x(age), size }))
  const middles = spreadWithin(wishes, { low: 0, high: frame.width, gap: 3, reach: 12 })
  const widths = pupils.map(({ widest }) => widest)
  const range = rangeWords({ low: Math.min(...widths), high: Math.max(...widths), digits: 1 })
  const marks = pupils.map(({ age, widest }, i) =>
    middles === null
      ? el("circle", { cx: frame.x(age), cy: y, r: 2, fill: ink })
      : label(
          fixed(widest, 1),
          { x: middles[i] as number, y: y + 4 },
          { fill: ink, size: TEXT.small, anchor: "middle", halo: paper },
        ),
  )
  const end = Math.max(...(middles ?? wishes.map(({ at }) => at))) + size / 2 + 10
  return [
    ...marks,
    rowName(middles === null ? say("pupil {range} mm", { range }) : say("pupil, mm"), { x: end, y, frame }),
  ]
}

/** The grade in a disc, an open ring at 0; where they stand too close, dots and rings with the highest grade in words. */
function symptomRow(
  kind: SymptomKind,
  { asked, frame, y }: { readonly asked: readonly SymptomPoint[]; readonly frame: Frame; readonly y: number },
): readonly SvgElement[] {
  const { warm, paper, soft } = frame.colours
  const ofKind = asked.filter((point) => point.kind === kind)
  const shown = ofKind.slice(ofKind.findIndex(({ grade }) => grade > 0))
  const wishes = shown.map(({ age }) => ({ at: frame.x(age), size: 2 * DISC }))
  const middles = spreadWithin(wishes, { low: 0, high: frame.width, reach: 12 })
  const places = middles ?? wishes.map(({ at }) => at)
  const marks = shown.flatMap(({ grade }, i) => {
    const x = places[i] as number
    const [fill, ink] = grade > 0 ? [warm, paper] : [paper, soft]
    const disc = {
      cx: x,
      cy: y,
      r: middles === null ? 2.5 : DISC,
      fill,
      stroke: grade > 0 ? undefined : soft,
    }
    const style = { fill: ink, size: TEXT.small, anchor: "middle", bold: grade > 0 } as const
    return [el("circle", disc), ...(middles === null ? [] : [label(String(grade), { x, y: y + 4 }, style)])]
  })
  const highest = Math.max(...shown.map(({ grade }) => grade))
  const symptom = symptomWords(kind)
  const name = middles === null ? say("{symptom}, up to {highest}", { symptom, highest }) : symptom
  return [...marks, rowName(name, { x: Math.max(...places) + 14, y, frame })]
}

function noneRow(asked: readonly SymptomPoint[], frame: Frame, y: number): readonly SvgElement[] {
  const ages = [...new Set(asked.map(({ age }) => age))]
  const marks = ages.map((age) => {
    const x = frame.x(age)
    return line({ x: x - 4, y }, { x: x + 4, y }, { stroke: frame.colours.soft, width: 1.4 })
  })
  return [...marks, rowName(say("asked, no symptom"), { x: frame.x(ages.at(-1) ?? 0) + 14, y, frame })]
}

/** What a row shows: after its last mark, or in the right gutter when there is no room before the edge. */
function rowName(
  text: string,
  { x, y, frame }: { readonly x: number; readonly y: number; readonly frame: Frame },
): SvgElement {
  const width = textWidth(text, { size: TEXT.label })
  const latest = frame.width - width
  return label(
    text,
    { x: Math.min(x, latest), y: y + 4 },
    { fill: frame.colours.soft, halo: frame.colours.paper },
  )
}
