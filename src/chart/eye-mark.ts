import type { Eye } from "../engine/course.js"
import type { Colours } from "./colours.js"
import { type Key, label } from "./marks.js"
import { el, type SvgElement } from "./svg.js"
import { TEXT, textWidth } from "./text-size.js"
import { eyeWords } from "./words.js"

/**
 * Right eye: filled circle. Left eye: open square. The shape tells the eye, never the colour.
 * A figure brought from elsewhere (old glasses) is the same shape, smaller and hollow.
 */
export function eyeMark(
  { eye, x, y, earlier = false }: { eye: Eye; x: number; y: number; earlier?: boolean },
  { ink, paper }: Colours,
): SvgElement {
  const hollow = { fill: paper, stroke: ink, "stroke-width": earlier ? 1.1 : 1.5 }
  if (eye === "right") {
    return el("circle", { cx: x, cy: y, r: earlier ? 2.6 : 3.5, ...(earlier ? hollow : { fill: ink }) })
  }
  const side = earlier ? 5 : 6.2
  return el("rect", { x: x - side / 2, y: y - side / 2, width: side, height: side, ...hollow })
}

/** Marks of one visit stand side by side, the right eye on the reader's left as in the record, so both can be seen. */
export const eyeShift = (eye: Eye) => (eye === "right" ? -3.5 : 3.5)

const MARK_WIDTH = 12

/** "● right  □ left" */
export function eyeKey(eyes: readonly Eye[], colours: Colours): Key {
  const step = (eye: Eye) => MARK_WIDTH + textWidth(eyeWords(eye), { size: TEXT.small }) + 8
  const starts = eyes.map((_, i) => eyes.slice(0, i).reduce((sum, eye) => sum + step(eye), 0))
  return {
    width: eyes.reduce((sum, eye) => sum + step(eye), -8),
    marks: eyes.flatMap((eye, i) => [
      eyeMark({ eye, x: (starts[i] as number) + 4, y: -4 }, colours),
      keyWords(eyeWords(eye), (starts[i] as number) + MARK_WIDTH, colours),
    ]),
  }
}

/** "○▫ brought along": the small hollow marks and what they stand for. */
export function earlierKey(words: string, eyes: readonly Eye[], colours: Colours): Key {
  const start = 10 * eyes.length + 2
  return {
    width: start + textWidth(words, { size: TEXT.small }),
    marks: [
      ...eyes.map((eye, i) => eyeMark({ eye, x: 4 + 10 * i, y: -4, earlier: true }, colours)),
      keyWords(words, start, colours),
    ],
  }
}

const keyWords = (words: string, x: number, { soft }: Colours) =>
  label(words, { x, y: 0 }, { fill: soft, size: TEXT.small })
