import { type Colours, colours as coloursOf } from "../colours.js"
import type { Point, SvgElement } from "../svg.js"
import { svgDocument } from "../svg-document.js"
import { type EyeOfSize, eyeDrawings } from "./eye-drawings.js"
import type { EyePlace } from "./eye-outline.js"
import { differenceWords } from "./figure-words.js"
import {
  block,
  blockMarks,
  checkedWidth,
  FAMILY_WIDTH,
  type FamilyFigure,
  type FamilyFigureOptions,
  LARGE,
  stacked,
  type TextBlock,
} from "./large-text.js"

export interface EyeSizesInput {
  /** One to three; the others are read against the first. */
  readonly eyes: readonly EyeOfSize[]
  readonly caption: string
  readonly title: string
  readonly description: string
}

const GAP = 16
const MARGIN = 10
/** One eye alone is not blown up further than this, px per mm. */
const LARGEST_SCALE = 9
/** Below this width the eyes stand under one another with their words beside them. */
const NARROW = 560

/**
 * Eyes to scale from their lengths. All corneas stand on one line and a broken line goes through the back of the first
 * eye, so that a difference of one millimetre is seen; it is written as well.
 *
 * Their widths follow their lengths: only the length of an eye is measured here.
 */
export function eyeSizesFigure(
  input: EyeSizesInput,
  { width = FAMILY_WIDTH, colours = "plain" }: FamilyFigureOptions = {},
): FamilyFigure {
  const { eyes, title, description } = input
  checkEyes(eyes)
  const drawing = { ...input, width: checkedWidth(width), colours: coloursOf(colours) }
  const { content, height } = width < NARROW ? underOneAnother(drawing) : sideBySide(drawing)
  return { svg: svgDocument({ width, height, title, description, content }), description }
}

type Drawing = EyeSizesInput & { readonly width: number; readonly colours: Colours }

function sideBySide({ eyes, caption, width, colours }: Drawing) {
  const column = (width - GAP * (eyes.length - 1)) / eyes.length
  const scale = Math.min(LARGEST_SCALE, (0.84 * Math.min(column, 280)) / longestMm(eyes))
  const placeOf = (i: number): EyePlace => ({
    x: column / 2 + i * (column + GAP),
    y: MARGIN,
    direction: "down",
  })
  const room = { width: column, colours }
  const differences = eyes.map((eye) => differenceBlock(eye, eyes, room))
  const names = eyes.map((eye) => nameBlock(eye, room))
  const differenceTop = MARGIN + scale * longestMm(eyes) + 10
  const nameTop = differenceTop + tallest(differences)
  const middle = (block: TextBlock, i: number, top: number) =>
    blockMarks(block, { x: placeOf(i).x, top, anchor: "middle" })
  return withCaption({
    caption,
    at: { x: width / 2, y: nameTop + tallest(names) + 10 },
    room: { width, colours },
    content: [
      ...eyeDrawings({ eyes, scale, colours, placeOf }),
      ...differences.flatMap((block, i) => middle(block, i, differenceTop)),
      ...names.flatMap((block, i) => middle(block, i, nameTop)),
    ],
  })
}

function underOneAnother({ eyes, caption, width, colours }: Drawing) {
  const scale = (0.42 * width) / longestMm(eyes)
  const textLeft = MARGIN + scale * longestMm(eyes) + 18
  const room = { width: width - textLeft - 4, colours }
  const texts = eyes.map((eye) => stacked(differenceBlock(eye, eyes, room), nameBlock(eye, room)))
  const heights = eyes.map((eye, i) => Math.max(scale * (eye.high ?? eye.lengthMm), texts[i]?.height ?? 0))
  const middles = heights.map(
    (own, i) => MARGIN + heights.slice(0, i).reduce((sum, each) => sum + each + GAP, 0) + own / 2,
  )
  const placeOf = (i: number): EyePlace => ({ x: MARGIN, y: middles[i] ?? 0, direction: "right" })
  return withCaption({
    caption,
    at: { x: width / 2, y: (middles.at(-1) ?? 0) + (heights.at(-1) ?? 0) / 2 + 14 },
    room: { width, colours },
    content: [
      ...eyeDrawings({ eyes, scale, colours, placeOf }),
      ...texts.flatMap((text, i) => blockMarks(text, { x: textLeft, top: placeOf(i).y - text.height / 2 })),
    ],
  })
}

interface Room {
  readonly width: number
  readonly colours: Colours
}

function withCaption({
  caption,
  at,
  room: { width, colours },
  content,
}: {
  readonly caption: string
  readonly at: Point
  readonly room: Room
  readonly content: readonly SvgElement[]
}): { readonly content: readonly SvgElement[]; readonly height: number } {
  const text = block(caption, { width: width - 20, size: LARGE.small, fill: colours.soft })
  return {
    content: [...content, ...blockMarks(text, { x: at.x, top: at.y, anchor: "middle" })],
    height: Math.ceil(at.y + text.height + 4),
  }
}

/** How much longer or shorter than the first eye. */
function differenceBlock(eye: EyeOfSize, eyes: readonly EyeOfSize[], { width, colours }: Room): TextBlock {
  const first = eyes[0]
  const words = first === undefined || eye === first ? "" : differenceWords(eye.lengthMm, first.lengthMm)
  return block(words, { width, size: LARGE.strong, bold: true, fill: colours.accent })
}

const nameBlock = ({ title, note }: EyeOfSize, { width, colours }: Room): TextBlock =>
  stacked(
    block(title, { width, size: LARGE.text, bold: true, fill: colours.ink }),
    block(note, { width, size: LARGE.small, fill: colours.soft }),
  )

const longestMm = (eyes: readonly EyeOfSize[]): number =>
  Math.max(...eyes.map(({ lengthMm, high }) => Math.max(lengthMm, high ?? 0)))

const tallest = (blocks: readonly TextBlock[]): number => Math.max(...blocks.map(({ height }) => height))

function checkEyes(eyes: readonly EyeOfSize[]): void {
  if (eyes.length < 1 || eyes.length > 3) {
    throw new RangeError(`one to three eyes can be drawn: ${eyes.length}`)
  }
  for (const { lengthMm, low = lengthMm, high = lengthMm } of eyes) {
    if (!(low > 0 && low <= lengthMm && lengthMm <= high && high < 100)) {
      throw new RangeError(`an eye's length and range must rise and be in mm: ${low}, ${lengthMm}, ${high}`)
    }
  }
}
