import type { Evidence } from "../../evidence/types.js"
import type { Assessment, KnownGrowthState, PracticeSettings } from "../assessment.js"
import type { Course } from "../course.js"
import { msg, say } from "../say.js"
import { fixed, inDigits, percent } from "../words.js"
import { lengthInputs, refractionInput } from "./course-inputs.js"
import { methodInput, modelParameters } from "./model-parameters.js"
import { type SourceOf, tableOf, type Why, type WhyInput, whyOf } from "./why.js"

/** What an assessment was made of, for the two questions it answers. */
export interface AssessedCourse {
  readonly course: Course
  readonly assessment: Assessment
  readonly evidence: Evidence
  readonly settings: PracticeSettings
  readonly sourceOf: SourceOf
}

/** Why the growth state is what it is. */
export function growthWhy({ course, assessment, evidence, settings, sourceOf }: AssessedCourse): Why {
  const { growth, asOf } = assessment
  const { nearNormal, slowed, asUntreated } = settings.cuts
  return whyOf(
    {
      title: say("Why this growth state?"),
      inputs: [
        ...lengthInputs({ course, asOf }),
        refractionInput({ course, asOf }),
        [
          say("Judged over"),
          growth.from && growth.to
            ? say("{from} to {to}", { from: growth.from, to: growth.to })
            : say("no interval yet"),
        ],
        ...rate(say("Growth"), growth.mmPerYear),
        ...(growth.low95 === undefined || growth.high95 === undefined
          ? []
          : [
              [
                say("95 % interval"),
                say("{low} to {high} mm per year", {
                  low: fixed(growth.low95),
                  high: fixed(growth.high95),
                }),
              ] as const,
            ]),
        ...rate(say("Natural growth, same dates"), growth.naturalMmPerYear),
        ...rate(say("Emmetropic growth, same dates"), growth.emmetropicMmPerYear),
        ...Object.entries(growth.probabilities ?? {}).map(
          ([state, share]) => [say(PROBABILITIES[state as KnownGrowthState]), percent(share)] as const,
        ),
        [say("Setting factor of the practice"), inDigits(settings.settingFactor)],
        methodInput(evidence.growth),
      ],
      formula: [
        say(
          "Growth is not the difference of two readings: it is what all lengths of both eyes, and refractions from before treatment, say together once the noise of the instrument, the season, the child's own pace and its irregularity are allowed for.",
        ),
        say(
          "It is placed between two published lines over the same dates: f is the growth less emmetropic growth, divided by natural growth less emmetropic growth; 0 is an eye without myopia, 1 an untreated myopic eye.",
        ),
        say(
          "Near-normal is f below {nearNormal}, slowed growth below {slowed}, as untreated below {asUntreated}, faster above. These cuts are this program's own and a setting of the practice.",
          { nearNormal, slowed, asUntreated },
        ),
        say(
          "A state is said when its probability reaches {certainty}; otherwise, or when the two lines are closer than the detectable change, the growth is called unclear.",
          { certainty: percent(settings.certainty) },
        ),
        ...growth.reasons,
      ],
      parameters: modelParameters({ course, asOf, parameters: evidence.growth }),
      tables: [tableOf(evidence.emmetropic)],
    },
    sourceOf,
  )
}

const PROBABILITIES: Readonly<Record<KnownGrowthState, string>> = {
  "near-normal": msg("Probability: near normal"),
  "slowed-growth": msg("Probability: slowed growth"),
  "as-untreated": msg("Probability: as untreated"),
  faster: msg("Probability: faster"),
}

const rate = (label: string, mmPerYear: number | null | undefined): readonly WhyInput[] =>
  mmPerYear === null || mmPerYear === undefined
    ? []
    : [[label, say("{mm} mm per year", { mm: fixed(mmPerYear) })]]
