import { courseFigure } from "../../chart/index.js"
import { courseCurves } from "../../engine/course-curves.js"
import { dayInWords, say } from "../../engine/say.js"
import { evidence } from "../../evidence/index.js"
import type { Block } from "../document.js"
import { growthSaid } from "../letter/growth-said.js"
import { forecastOf, type Reading } from "./reading.js"

/** Drawn this wide, the words of the figure are some 8 points tall on paper. */
const WIDTH = 720

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
  const { svg } = courseFigure(curves, { colours: "plain", width: WIDTH })
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
