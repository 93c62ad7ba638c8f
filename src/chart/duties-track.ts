import type { DutyState } from "../engine/assessment.js"
import { ageYears } from "../engine/calendar.js"
import { say } from "../engine/say.js"
import type { CourseFigureInput } from "./course-figure-input.js"
import { EMPTY_HEIGHT, emptyNote, type Frame, type Track } from "./frame.js"
import { rows, type Stretch } from "./label-placement.js"
import { label } from "./marks.js"
import { decimals, el, type SvgElement } from "./svg.js"
import { knownWords } from "./words.js"
import { type WordsBeside, wordsBeside } from "./words-beside.js"

const ROW = 19
const BAR = 13
const TICK = 8

/** What is owed: a tick when done, a bar over its window while it is not; bars of what is due now are filled. */
export function dutiesTrack(input: CourseFigureInput, frame: Frame): Track {
  const shared = { name: "duties", title: say("Duties"), unit: "" } as const
  const marks = dutyMarks(input, frame)
  if (marks.length === 0) {
    const why =
      input.duties.length === 0
        ? say("nothing is owed by the protocol")
        : say("nothing is owed at these ages")
    return { ...shared, height: EMPTY_HEIGHT, marks: (plot) => [emptyNote(frame, plot, why)] }
  }
  const row = rows(
    marks.map(({ extent }) => extent),
    { gap: 0 },
  )
  return {
    ...shared,
    height: (Math.max(...row) + 1) * ROW,
    marks: (plot) => marks.flatMap((mark, i) => drawn(mark, frame, plot.y + ((row[i] ?? 0) + 0.5) * ROW)),
  }
}

type DutyMark =
  | { readonly state: "done" | "missed"; readonly x: number; readonly extent: Stretch }
  | {
      readonly state: "overdue" | "open" | "upcoming"
      readonly bar: Stretch
      readonly words: WordsBeside
      readonly extent: Stretch
    }

/** What presses most is placed first, and so comes to stand highest. */
const ORDER: readonly DutyState[] = ["overdue", "open", "upcoming", "missed", "done"]

function dutyMarks({ duties, course }: CourseFigureInput, frame: Frame): readonly DutyMark[] {
  const { born } = course.child
  const at = (date: string) => frame.x(ageYears({ born, on: date }))
  const inOrder = [...duties].sort(
    (a, b) => ORDER.indexOf(a.state) - ORDER.indexOf(b.state) || (a.due < b.due ? -1 : 1),
  )
  const marks: DutyMark[] = []
  for (const duty of inOrder) {
    const { state } = duty
    if (state === "done" || state === "missed") {
      const x = at(duty.due)
      // What was done on nearly the same day is one tick: several over each other could not be told apart.
      const last = marks.at(-1)
      const same = last?.state === state && x - last.x < TICK
      if (x < frame.left || x > frame.right || same) continue
      marks.push({ state, x, extent: { from: x - TICK / 2, to: x + TICK / 2 } })
    } else {
      const [opens, closes] = [at(duty.opens), at(duty.closes)]
      if (closes < frame.left || opens > frame.right) continue
      const from = Math.min(Math.max(opens, frame.left), frame.right - 6)
      const bar = { from, to: Math.max(from + 6, Math.min(closes, frame.right)) }
      const step = knownWords(duty.step)
      const text = state === "overdue" ? say("overdue: {step}", { step }) : step
      const words = wordsBeside(text, { bar, frame, bold: state !== "upcoming" })
      marks.push({ state, bar, words, extent: words.extent })
    }
  }
  return marks
}

function drawn(mark: DutyMark, frame: Frame, y: number): readonly SvgElement[] {
  const { accent, wash, paper, warm, ink, soft } = frame.colours
  if ("x" in mark) {
    const [x, height] = [decimals(mark.x - 4), decimals(y - 4)]
    return mark.state === "done"
      ? [
          el("path", {
            d: `M${x},${height}m0.5,4l2.5,3.5l5,-7.5`,
            fill: "none",
            stroke: accent,
            "stroke-width": 2,
          }),
        ]
      : [el("path", { d: `M${x},${height}l8,8m0,-8l-8,8`, fill: "none", stroke: soft, "stroke-width": 1.6 })]
  }
  const look = {
    overdue: { fill: paper, stroke: warm, "stroke-width": 2.4 },
    open: { fill: wash, stroke: accent, "stroke-width": 1.4 },
    upcoming: { fill: paper, stroke: accent, "stroke-width": 1 },
  }[mark.state]
  const { bar, words } = mark
  const pressing = mark.state !== "upcoming"
  return [
    el("rect", { x: bar.from, y: y - BAR / 2, width: bar.to - bar.from, height: BAR, ...look }),
    label(
      words.text,
      { x: words.x, y: y + 4 },
      { fill: pressing ? ink : soft, bold: pressing, anchor: words.anchor, halo: paper },
    ),
  ]
}
