import { type CourseFigureInput, courseFigure } from "../../chart/index.js"
import { courseCurves } from "../../engine/course-curves.js"
import { dayInWords, say } from "../../engine/say.js"
import { evidence } from "../../evidence/index.js"
import type { Block } from "../document.js"
import { growthSaid } from "../letter/growth-said.js"
import { forecastOf, type Reading } from "./reading.js"

/** Widths tried, the first with the largest words: paper sets a figure full width that is no taller than this share of it. */
const WIDTHS = [720, 800, 880, 960, 1040, 1120]
const TALLEST = 0.9

function drawn(curves: CourseFigureInput): string {
  for (const width of WIDTHS) {
    const { svg, layout } = courseFigure(curves, { colours: "plain", width })
    if (layout.height <= TALLEST * layout.width) return svg
  }
  return courseFigure(curves, { colours: "plain", width: WIDTHS.at(-1) }).svg
}

/** The whole course on one age axis, in inks that need no page around them. */
export function figureBlocks(reading: Reading): readonly Block[] {
  const { course, today, assessment, duties, input } = reading
  const curves = courseCurves({
    course,
    today,
    evidence,
    settings: input.settings,
    assessment,
    forecast: forecastOf(reading),
    duties,
  })
  const svg = drawn(curves)
  return [
    { kind: "heading", level: 1, text: say("The course on one axis of age") },
    {
      kind: "figure",
      svg,
      alt: say(
        "Length, growth, refraction, treatment, safety and duties under one axis of age, as of {day}. {growth}",
        { day: dayInWords(today), growth: growthSaid(reading) },
      ),
    },
  ]
}
