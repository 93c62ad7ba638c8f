import type { Duty, DutyState } from "../engine/assessment.js"
import { ageYears } from "../engine/calendar.js"
import type { CourseFigureInput } from "./course-figure-input.js"
import { EMPTY_HEIGHT, emptyNote, type Frame, type Track } from "./frame.js"
import { rows } from "./label-placement.js"
import { label } from "./marks.js"
import { el, type SvgElement } from "./svg.js"
import { TEXT, textWidth } from "./text-size.js"
import { plainWords } from "./words.js"

const ROW = 19
const BAR = 13

/** What is owed: a tick when done, a bar over its window while it is not; bars of what is due now are filled. */
export function dutiesTrack(input: CourseFigureInput, frame: Frame): Track {
  const shared = { name: "duties", title: "Duties", unit: "" } as const
  const { born } = input.course.child
  const [oldest, youngest] = [frame.domain[1], frame.domain[0]]
  const steps = dutySteps(input.duties)
    .filter(({ opens, due, closes, state }) => {
      const [from, to] = state === "done" || state === "missed" ? [due, due] : [opens, closes]
      return ageYears({ born, on: to }) >= youngest && ageYears({ born, on: from }) <= oldest
    })
    .map((step) => placed(step, { born, frame }))
  if (steps.length === 0) {
    const why =
      input.duties.length === 0 ? "nothing is owed by the protocol" : "nothing is owed at these ages"
    return { ...shared, height: EMPTY_HEIGHT, marks: (plot) => [emptyNote(frame, plot, why)] }
  }
  const row = rows(
    steps.map(({ extent }) => extent),
    { gap: 4 },
  )
  return {
    ...shared,
    height: (Math.max(...row) + 1) * ROW,
    marks: (plot) => steps.flatMap((step, i) => stepMarks(step, frame, plot.y + ((row[i] ?? 0) + 0.5) * ROW)),
  }
}

/** The duties of one step that fall due together, under the state that presses most. */
export interface DutyStep {
  readonly step: string
  readonly opens: string
  readonly due: string
  readonly closes: string
  readonly state: DutyState
  readonly duties: readonly Duty[]
}

const MOST_PRESSING: readonly DutyState[] = ["overdue", "open", "missed", "upcoming", "done"]

export function dutySteps(duties: readonly Duty[]): readonly DutyStep[] {
  const groups = new Map<string, Duty[]>()
  for (const duty of duties) {
    const key = `${duty.due} ${duty.step}`
    groups.set(key, [...(groups.get(key) ?? []), duty])
  }
  return [...groups.values()].map((group) => {
    const [first] = group as [Duty]
    const state =
      MOST_PRESSING.find((candidate) => group.some((duty) => duty.state === candidate)) ?? first.state
    const opens = group.map((duty) => duty.opens).sort()[0] ?? first.opens
    const closes =
      group
        .map((duty) => duty.closes)
        .sort()
        .at(-1) ?? first.closes
    return { step: first.step, opens, due: first.due, closes, state, duties: group }
  })
}

interface PlacedStep {
  readonly state: DutyState
  readonly middle: number
  readonly from: number
  readonly to: number
  readonly words: { readonly text: string; readonly x: number; readonly anchor: "start" | "end" } | null
  readonly extent: { readonly from: number; readonly to: number }
}

function placed(
  step: DutyStep,
  { born, frame }: { readonly born: string; readonly frame: Frame },
): PlacedStep {
  const at = (date: string) => frame.x(ageYears({ born, on: date }))
  const clamped = (x: number) => Math.max(frame.left, Math.min(x, frame.right))
  const middle = at(step.due)
  if (step.state === "done" || step.state === "missed") {
    const [from, to] = [middle - 6, middle + 6]
    return { state: step.state, middle, from, to, words: null, extent: { from, to } }
  }
  const [opens, closes] = [at(step.opens), at(step.closes)]
  const [from, to] = [clamped(Math.min(opens, middle - 3)), clamped(Math.max(closes, middle + 3))]
  const bar = { state: step.state, middle, from, to }
  const text = step.state === "overdue" ? `overdue: ${plainWords(step.step)}` : plainWords(step.step)
  const width = textWidth(text, { size: TEXT.label, bold: step.state !== "upcoming" })
  if (to + 6 + width <= frame.width) {
    return { ...bar, words: { text, x: to + 6, anchor: "start" }, extent: { from, to: to + 6 + width } }
  }
  return { ...bar, words: { text, x: from - 6, anchor: "end" }, extent: { from: from - 6 - width, to } }
}

function stepMarks(
  { state, middle, from, to, words }: PlacedStep,
  frame: Frame,
  y: number,
): readonly SvgElement[] {
  const { accent, wash, paper, warm, ink, soft } = frame.colours
  if (state === "done") {
    const d = `M${tenth(middle - 4)},${tenth(y)}l3,4l6,-8`
    return [el("path", { d, fill: "none", stroke: accent, "stroke-width": 2 })]
  }
  if (state === "missed") {
    const d = `M${tenth(middle - 4)},${tenth(y - 4)}l8,8m0,-8l-8,8`
    return [el("path", { d, fill: "none", stroke: soft, "stroke-width": 1.6 })]
  }
  const look = {
    overdue: { fill: paper, stroke: warm, "stroke-width": 2.4 },
    open: { fill: wash, stroke: accent, "stroke-width": 1.4 },
    upcoming: { fill: paper, stroke: accent, "stroke-width": 1 },
  }[state]
  const bar = el("rect", { x: from, y: y - BAR / 2, width: Math.max(4, to - from), height: BAR, ...look })
  if (words === null) return [bar]
  const pressing = state !== "upcoming"
  return [
    bar,
    label(
      words.text,
      { x: words.x, y: y + 4 },
      { fill: pressing ? ink : soft, bold: pressing, anchor: words.anchor },
    ),
  ]
}

const tenth = (value: number) => Math.round(value * 10) / 10
