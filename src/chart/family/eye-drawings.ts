import type { Colours } from "../colours.js"
import { label, line } from "../marks.js"
import type { SvgElement } from "../svg.js"
import { type Cornea, corneaMark, corneaOf, type EyePlace, globe, spot } from "./eye-outline.js"
import { lengthWords, spanWords } from "./figure-words.js"
import { LARGE } from "./large-text.js"

export interface EyeOfSize {
  readonly lengthMm: number
  /** The range of a length that is expected and not measured. */
  readonly low?: number | undefined
  readonly high?: number | undefined
  readonly title: string
  readonly note: string
  /** A measured or published length has a full outline, one that is only expected a broken one. */
  readonly isMeasured: boolean
}

interface EyesDrawn {
  readonly eyes: readonly EyeOfSize[]
  /** Px per mm. */
  readonly scale: number
  readonly colours: Colours
  readonly placeOf: (i: number) => EyePlace
}

/** The eyes with their figures, and the broken line through the back of the first. */
export function eyeDrawings({ eyes, scale, colours, placeOf }: EyesDrawn): readonly SvgElement[] {
  const first = eyes[0]
  if (first === undefined) return []
  const cornea = corneaOf(first.lengthMm * scale)
  return [
    ...eyes.flatMap((eye, i) => eyeShape(eye, { place: placeOf(i), scale, cornea, colours })),
    ...(eyes.length === 1 ? [] : backLine({ eyes, scale, colours, placeOf })),
    ...eyes.flatMap((eye, i) => [
      ...(i === 0 ? [] : differenceMark(eye, first, { place: placeOf(i), scale, colours })),
      ...figures(eye, { place: placeOf(i), scale, colours }),
    ]),
  ]
}

interface OneEye {
  readonly place: EyePlace
  readonly scale: number
  readonly colours: Colours
}

function eyeShape(
  { lengthMm, low, high, isMeasured }: EyeOfSize,
  { place, scale, cornea, colours }: OneEye & { readonly cornea: Cornea },
): readonly SvgElement[] {
  const length = lengthMm * scale
  const [shortest, longest] = [(low ?? lengthMm) * scale, (high ?? lengthMm) * scale]
  const rim = { stroke: colours.accentMiddle, width: 1 }
  const range =
    longest > shortest
      ? [
          globe(longest, place, cornea, { ...rim, fill: colours.wash }),
          globe(shortest, place, cornea, { ...rim, fill: colours.paper }),
        ]
      : []
  const outline = isMeasured
    ? { stroke: colours.ink, width: 2.2 }
    : { stroke: colours.ink, width: 2, dash: "7 5" }
  return [
    ...range,
    globe(length, place, cornea, outline),
    corneaMark(length, place, cornea, { stroke: colours.accent, width: 4, fill: colours.paper }),
  ]
}

function backLine({ eyes, scale, colours, placeOf }: EyesDrawn): readonly SvgElement[] {
  const depth = (eyes[0]?.lengthMm ?? 0) * scale
  const half = (mm: number) => (mm * scale) / 2
  const last = eyes.length - 1
  const from = spot(-half(eyes[0]?.lengthMm ?? 0), depth, placeOf(0))
  const to = spot(half(eyes[last]?.lengthMm ?? 0), depth, placeOf(last))
  return [line(from, to, { stroke: colours.shadeDark, width: 1.5, dash: "2 4" })]
}

/** A thick stroke from the broken line to the back of this eye. */
function differenceMark(
  { lengthMm }: EyeOfSize,
  first: EyeOfSize,
  { place, scale, colours }: OneEye,
): readonly SvgElement[] {
  const [from, to] = [spot(0, first.lengthMm * scale, place), spot(0, lengthMm * scale, place)]
  return [line(from, to, { stroke: colours.accent, width: 8 })]
}

/** The length along the axis with its figure in the middle, and under it the range of one that is expected. */
function figures(eye: EyeOfSize, { place, scale, colours }: OneEye): readonly SvgElement[] {
  const { lengthMm, low = lengthMm, high = lengthMm } = eye
  const length = lengthMm * scale
  const hasRange = high > low
  const middle = spot(0, length / 2, place)
  const ink = { stroke: colours.shadeDark, width: 1.2 }
  const text = (words: string, y: number, look: { size: number; fill: string; bold?: boolean }) =>
    label(words, { x: middle.x, y }, { ...look, anchor: "middle" })
  const strong = { size: LARGE.strong, fill: colours.ink, bold: true }
  const soft = { size: LARGE.small, fill: colours.soft }
  if (place.direction === "right") {
    return [
      line(spot(0, 6, place), spot(0, length - 5, place), ink),
      text(lengthWords(lengthMm), middle.y - 8, strong),
      ...(hasRange ? [text(spanWords(low, high), middle.y + 21, soft)] : []),
    ]
  }
  // The line stops where the figures stand, since it would cross them.
  const gap = { above: 16, below: hasRange ? 32 : 14 }
  return [
    line(spot(0, 6, place), { x: middle.x, y: middle.y - gap.above }, ink),
    line({ x: middle.x, y: middle.y + gap.below }, spot(0, length - 5, place), ink),
    text(lengthWords(lengthMm), middle.y + 6, strong),
    ...(hasRange ? [text(spanWords(low, high), middle.y + 26, soft)] : []),
  ]
}
