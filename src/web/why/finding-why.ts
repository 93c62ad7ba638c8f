import { dateWords, fixed } from "../../chart/words.js"
import type { Assessment, PracticeSettings } from "../../engine/assessment.js"
import type { Course, Treatment } from "../../engine/course.js"
import { treatmentName } from "../../engine/treatment-name.js"
import type { Evidence, TreatmentEffect } from "../../evidence/types.js"
import { odds, percent } from "../format.js"
import { GROWTH_PARAMETERS } from "./growth-why.js"
import { lengthInputs, refractionInputs } from "./measurements.js"
import { type NamedParameter, namedParameters, type Why } from "./why.js"

interface WhyInput {
  readonly course: Course
  readonly assessment: Assessment
  readonly evidence: Evidence
  readonly settings: PracticeSettings
}

/** Why the treatment is, is not, or cannot yet be said to slow the growth; and how the chances were got. */
export function findingWhy({ course, assessment, evidence, settings }: WhyInput): Why {
  const { finding } = assessment
  const treated = (course.treatments ?? []).filter((treatment) => treatment.kind !== "none")
  return {
    title: "Why this answer about the treatment?",
    inputs: [
      ...treated.map(
        (treatment) =>
          [
            capitalisedTreatment(treatment),
            `from ${dateWords(treatment.from)} to ${end(treatment)}`,
          ] as const,
      ),
      ...lengthInputs(course),
      ...refractionInputs(course),
      ...(finding.likelihoodRatio === null
        ? []
        : [
            [
              "Likelihood ratio",
              `${odds(finding.likelihoodRatio)} ${side(finding.likelihoodRatio)}`,
            ] as const,
          ]),
      ["Said to be slowed at", `${odds(finding.upper)} or more for the treatment`],
      ["Said not to be slowed at", `${odds(finding.lower)} or more against it`],
      ...assessment.beliefs.map(
        ({ what, prior, posterior }) =>
          [
            what,
            `before the measurements ${spread(prior)}, after them ${spread(posterior)} (mean ± SD)`,
          ] as const,
      ),
    ],
    steps: [
      "Two accounts of the same measurements are compared: in one the treatment withholds what the trials report, in the other it withholds nothing. Each allows for the child's own pace, the irregularity of growth, the season and the noise of the instrument.",
      "The likelihood ratio says how many times likelier the measurements are under the first account than under the second (Wald's sequential test).",
      `The limits follow from the accepted error rates, settings of the practice: ${percent(settings.alpha)} to call a treatment effective that does nothing, ${percent(settings.beta)} to call one useless that works.`,
      "Between the limits nothing is claimed. A lean is only mentioned beyond 3 : 1 (Kass and Raftery 1995).",
      "The chances are computed from the same model: how often the ratio would pass a limit by each planned review, if the treatment works and if it does not.",
      "Under atropine, refraction is shown but does not count: the drug changes refraction more than length.",
      ...finding.reasons,
    ],
    parameters: [
      ...treated.flatMap((treatment) => effectOf(treatment, evidence.growth.effects)),
      ...namedParameters(evidence.growth, [
        "withheldSpreadSd",
        "unlistedTreatmentSd",
        "dioptresPerMm",
        "cycloplegicAutorefractionSdD",
        "dryAutorefractionSdD",
        "dryAutorefractionBiasD",
        "subjectiveSdD",
        "retinoscopySdD",
        "refractionSharedShare",
        ...GROWTH_PARAMETERS,
      ]),
    ],
    tables: [],
    method: `method ${assessment.method.version}, parameters ${assessment.method.parameters}`,
  }
}

/** What the trials report of a treatment the child has had; nothing where no trial was read. */
function effectOf(treatment: Treatment, effects: readonly TreatmentEffect[]): readonly NamedParameter[] {
  const effect = effects.find(
    ({ kind, concentrationPercent }) =>
      kind === treatment.kind && concentrationPercent === (treatment.concentrationPercent ?? null),
  )
  if (!effect) return []
  const nil = effect.mayBeNil ? " The effect may be nil." : ""
  return [
    {
      name: `Share of natural growth withheld by ${treatmentName(treatment)}`,
      parameter: {
        value: effect.withheldFraction,
        unit: "1",
        sd: effect.withheldFractionSd,
        source: effect.source,
        note: `${effect.derivation} Confidence: ${effect.confidence}.${nil}`,
      },
    },
  ]
}

function capitalisedTreatment(treatment: Treatment): string {
  const words = treatmentName(treatment)
  return words.charAt(0).toUpperCase() + words.slice(1)
}

const end = (treatment: Treatment): string => (treatment.to ? dateWords(treatment.to) : "now")
const side = (ratio: number): string => (ratio >= 1 ? "for the treatment" : "against the treatment")
const spread = ({ mean, sd }: { mean: number; sd: number }): string => `${fixed(mean, 2)} ± ${fixed(sd, 2)}`
