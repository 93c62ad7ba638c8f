import type { Evidence } from "../../evidence/types.js"
import type { Belief, Forecast } from "../assessment.js"
import type { Course } from "../course.js"
import { say } from "../say.js"
import { percent } from "../words.js"
import { beliefInputs, lengthInputs, treatmentInputs } from "./course-inputs.js"
import { methodInput, modelParameters } from "./model-parameters.js"
import { type SourceOf, type Why, type WhyInput, whyOf } from "./why.js"

interface Forecasted {
  readonly course: Course
  readonly forecast: Forecast
  readonly toAgeYears: number
  /** What the assessment of the same day believes of the child's pace and treatments. */
  readonly beliefs: readonly Belief[]
  readonly evidence: Evidence
  readonly sourceOf: SourceOf
}

/** Why the forecast is what it is. */
export function forecastWhy({ course, forecast, toAgeYears, beliefs, evidence, sourceOf }: Forecasted): Why {
  const { asOf, chance26mmBy18, chanceMinus6DBy18, notes, refused } = forecast
  return whyOf(
    {
      title: say("Why this forecast?"),
      inputs: [
        ...lengthInputs({ course, asOf }),
        ...treatmentInputs({ course }),
        [say("To age"), say("{years, plural, one {# year} other {# years}}", { years: toAgeYears })],
        ...chance(say("Chance of 26 mm by 18"), chance26mmBy18),
        ...chance(say("Chance of -6 D by 18"), chanceMinus6DBy18),
        ...beliefInputs(beliefs),
        methodInput(evidence.growth),
      ],
      formula: [
        say(
          "The eye is carried forward from its last length along the natural growth of an untreated myope of this age, sex and population, with its season, times the child's own pace.",
        ),
        say(
          "Untreated: no treatment from this day on. As treated: the treatment of this day goes on and withholds its share of natural growth.",
        ),
        say(
          "Pace and share withheld are what all of the child's measurements say, not an average alone. The irregularity of growth is added for every year ahead.",
        ),
        say("Each line of the fan is the length that the stated share of such children stays below."),
        say(
          "The chance of 26 mm is that of the eye more likely to reach it. The chance of -6 D starts from the last refraction of the more myopic eye, with dioptres per mm of growth.",
        ),
        ...notes,
        ...(refused === undefined ? [] : [refused]),
      ],
      parameters: modelParameters({ course, asOf, parameters: evidence.growth }),
    },
    sourceOf,
  )
}

const chance = (label: string, by18: Forecast["chance26mmBy18"]): readonly WhyInput[] =>
  by18 === null
    ? []
    : [
        [
          label,
          say("{untreated} untreated, {asTreated} as treated now", {
            untreated: percent(by18.untreated),
            asTreated: percent(by18.asTreated),
          }),
        ],
      ]
