import { dateWords, fixed } from "../../chart/words.js"
import type { Assessment, PracticeSettings } from "../../engine/assessment.js"
import type { Course } from "../../engine/course.js"
import type { Evidence, GrowthParameterName } from "../../evidence/types.js"
import { percent } from "../format.js"
import { growthInWords } from "../words.js"
import { lengthInputs, refractionInputs } from "./measurements.js"
import { namedParameters, type Why } from "./why.js"

export const GROWTH_PARAMETERS: readonly GrowthParameterName[] = [
  "rateAt10MmPerYear",
  "eastAsianFactor",
  "girlFactor",
  "boyFactor",
  "declineBefore13PerYear",
  "declineAfter13PerYear",
  "kneeAgeYears",
  "seasonAmplitude",
  "settingFactor",
  "logPaceSd",
  "wobbleMmPerSqrtYear",
  "wobbleCorrelationBetweenEyes",
  "eyeDifferenceSd",
  "opticalSessionSdMm",
  "opticalReadingSdMm",
  "ultrasoundSessionSdMm",
  "deviceChangeSdMm",
]

interface WhyInput {
  readonly course: Course
  readonly assessment: Assessment
  readonly evidence: Evidence
  readonly settings: PracticeSettings
}

/** Why the growth state is what it is. */
export function growthWhy({ course, assessment, evidence, settings }: WhyInput): Why {
  const { growth } = assessment
  const between = growth.from && growth.to ? { from: growth.from, to: growth.to } : undefined
  const { nearNormal, slowed, asUntreated } = settings.cuts
  return {
    title: "Why this growth state?",
    inputs: [
      ...lengthInputs(course),
      ...refractionInputs(course),
      ["Judged over", between ? `${dateWords(between.from)} to ${dateWords(between.to)}` : "no interval yet"],
      ...figure("Growth", growth.mmPerYear, "mm per year"),
      ...(growth.low95 === undefined || growth.high95 === undefined
        ? []
        : [
            ["95 % interval", `${fixed(growth.low95, 2)} to ${fixed(growth.high95, 2)} mm per year`] as const,
          ]),
      ...figure("Natural growth, same dates", growth.naturalMmPerYear, "mm per year"),
      ...figure("Emmetropic growth, same dates", growth.emmetropicMmPerYear, "mm per year"),
      ...Object.entries(growth.probabilities ?? {}).map(
        ([state, share]) =>
          [`Probability: ${growthInWords(state as never).toLowerCase()}`, percent(share)] as const,
      ),
    ],
    steps: [
      "Growth is not the difference of two readings: it is what all lengths of both eyes, and the earlier glasses, say together once the noise of the instrument, the season, the child's own pace and its irregularity are allowed for.",
      "It is placed between two published lines over the same dates: f = (growth − emmetropic growth) / (natural growth − emmetropic growth), so 0 is an eye without myopia and 1 an untreated myopic eye.",
      `Near-normal is f below ${nearNormal}, slowed growth below ${slowed}, as untreated below ${asUntreated}, faster above. These cuts are this program's own and a setting of the practice.`,
      `A state is said when its probability reaches ${percent(settings.certainty)}; otherwise, or when the two lines are closer than the detectable change, the growth is called unclear.`,
      ...growth.reasons,
    ],
    parameters: namedParameters(evidence.growth, GROWTH_PARAMETERS),
    tables: [{ provenance: evidence.emmetropic.provenance, grade: evidence.emmetropic.grade }],
    method: `method ${assessment.method.version}, parameters ${assessment.method.parameters}`,
  }
}

function figure(
  label: string,
  value: number | null | undefined,
  unit: string,
): readonly (readonly [string, string])[] {
  return value === null || value === undefined ? [] : [[label, `${fixed(value, 2)} ${unit}`]]
}
