import { say, withDecimalSign } from "../engine/say.js"
import { colours as coloursOf } from "./colours.js"
import type { CourseFigureOptions } from "./course-figure-input.js"
import { linearScale } from "./linear-scale.js"
import { label, line } from "./marks.js"
import { decimals, el, type SvgElement } from "./svg.js"
import { svgDocument } from "./svg-document.js"
import { TEXT, textWidth } from "./text-size.js"

export interface AnswerScaleInput {
  /** How many times likelier the lengths are if the treatment works than if it does nothing; null before any length. */
  readonly likelihoodRatio: number | null
  readonly upper: number
  readonly lower: number
}

type Options = Pick<CourseFigureOptions, "width" | "colours">

const HEIGHT = 62
const SIDE = 18
const AXIS = 30

/**
 * The odds of the test between the two limits at which it gives an answer, on a logarithmic axis.
 *
 * @example
 * answerScale({ likelihoodRatio: 2.3, upper: 9, lower: 1 / 9 })
 */
export function answerScale(
  { likelihoodRatio, upper, lower }: AnswerScaleInput,
  options: Options = {},
): string {
  if (!(lower > 0 && lower < 1 && upper > 1)) {
    throw new RangeError(`limits must lie below and above 1: ${lower}, ${upper}`)
  }
  const { width = 340, colours: kind = "themed" } = options
  const colours = coloursOf(kind)
  const along = linearScale([Math.log(lower), Math.log(upper)], [SIDE, width - SIDE])
  const x = (odds: number) => along(Math.log(odds))
  const ends = { fill: colours.soft, size: TEXT.label }
  return svgDocument({
    width,
    height: HEIGHT,
    title: say("Odds between the two limits"),
    description: message({ likelihoodRatio, upper, lower }),
    content: [
      line({ x: SIDE, y: AXIS }, { x: width - SIDE, y: AXIS }, { stroke: colours.shadeDark, width: 1.2 }),
      ...[lower, 1, upper].map((odds) => {
        const [at, reach] = [x(odds), odds === 1 ? 5 : 8]
        return line(
          { x: at, y: AXIS - reach },
          { x: at, y: AXIS + reach },
          { stroke: colours.soft, width: 1.2 },
        )
      }),
      ...childMark(likelihoodRatio, { x, width, upper, lower, colours }),
      label(say("does nothing {odds}", { odds: odds(1 / lower) }), { x: 4, y: AXIS + 26 }, ends),
      label(say("even|odds"), { x: x(1), y: AXIS + 26 }, { ...ends, size: TEXT.small, anchor: "middle" }),
      label(
        say("works {odds}", { odds: odds(upper) }),
        { x: width - 4, y: AXIS + 26 },
        { ...ends, anchor: "end" },
      ),
    ],
  })
}

/** @example odds(2.3) // => "2.3 : 1" */
function odds(ratio: number): string {
  if (ratio >= 100) return say("over 100 : 1")
  return `${withDecimalSign(String(Number(ratio.toFixed(ratio < 10 ? 1 : 0))))} : 1`
}

/** Odds with the side they are for, since "2.3 : 1" alone does not say of what. */
function sidedOdds(ratio: number): string {
  const words = odds(Math.max(ratio, 1 / ratio))
  if (words === "1 : 1") return words
  return ratio > 1 ? say("works {odds}", { odds: words }) : say("does nothing {odds}", { odds: words })
}

/** A dot at the odds; past a limit a point at the end of the axis that says it lies beyond. */
function childMark(
  ratio: number | null,
  {
    x,
    width,
    upper,
    lower,
    colours,
  }: {
    readonly x: (odds: number) => number
    readonly width: number
    readonly upper: number
    readonly lower: number
    readonly colours: ReturnType<typeof coloursOf>
  },
): readonly SvgElement[] {
  if (ratio === null) {
    const style = { fill: colours.soft, anchor: "middle" } as const
    return [label(say("nothing measured yet"), { x: width / 2, y: 14 }, style)]
  }
  const at = x(Math.max(lower, Math.min(ratio, upper)))
  const text = sidedOdds(ratio)
  const half = textWidth(text, { size: TEXT.label, bold: true }) / 2
  const style = { fill: colours.ink, anchor: "middle", bold: true } as const
  const beyond = ratio > upper ? 1 : ratio < lower ? -1 : 0
  const point = `M${decimals(at + 3 * beyond)},${AXIS - 7}l${12 * beyond},7l${-12 * beyond},7Z`
  return [
    beyond === 0
      ? el("circle", { cx: at, cy: AXIS, r: 6, fill: colours.accent })
      : el("path", { d: point, fill: colours.accent }),
    label(text, { x: Math.max(half, Math.min(at, width - half)), y: 14 }, style),
  ]
}

function message({ likelihoodRatio, upper, lower }: AnswerScaleInput): string {
  const limits = say("An answer is given at works {upper} or does nothing {lower}.", {
    upper: odds(upper),
    lower: odds(1 / lower),
  })
  if (likelihoodRatio === null) return `${say("Nothing measured yet.")} ${limits}`
  return `${say("The lengths so far: {odds}.", { odds: sidedOdds(likelihoodRatio) })} ${limits}`
}
