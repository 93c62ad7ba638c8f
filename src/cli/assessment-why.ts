import type { Assessment } from "../engine/assessment.js"
import { type Course, EYES } from "../engine/course.js"
import { defaultSettings } from "../engine/settings.js"
import { treatmentName } from "../engine/treatment-name.js"
import type { Evidence } from "../evidence/types.js"
import { growthParameters, tableOf, type Why, withSources } from "./why.js"
import { fixed, percent } from "./words.js"

/** Why the growth is called what it is, and, apart from it, why the treatment is. Two questions, two explanations. */
export async function assessmentWhys({
  course,
  assessment,
  evidence,
}: {
  readonly course: Course
  readonly assessment: Assessment
  readonly evidence: Evidence
}): Promise<readonly Why[]> {
  const { growth, finding, beliefs, eyes } = assessment
  const { cuts, certainty, alpha, beta, settingFactor } = defaultSettings
  const lengths = lengthInputs(course, assessment.asOf)
  const used = evidence.references.filter((reference) =>
    EYES.some((eye) => eyes[eye].position.reference === reference.id),
  )
  return [
    await withSources({
      title: "Why this growth?",
      inputs: [
        ...lengths,
        ["Judged over", growth.from && growth.to ? `${growth.from} to ${growth.to}` : "no interval yet"],
        ["Setting factor of the practice", String(settingFactor)],
      ],
      formula: [
        "Growth is not the difference of two readings: it is what all lengths of both eyes, and refractions from before treatment, say together once the noise of the instrument, the season, the child's own pace and its irregularity are allowed for.",
        "It is set between two published lines over the same dates: f is the growth less emmetropic growth, divided by natural growth less emmetropic growth; 0 is an eye without myopia, 1 an untreated myopic eye.",
        `Near normal is f below ${cuts.nearNormal}, slowed below ${cuts.slowed}, as untreated below ${cuts.asUntreated}, faster above. The cuts are our own and a setting of the practice.`,
        `A state is said when it is ${percent(certainty)} certain; otherwise, and when the two lines are closer than the detectable change, the growth is unclear.`,
      ],
      parameters: growthParameters(evidence),
      tables: [evidence.emmetropic, ...used].map(tableOf),
    }),
    await withSources({
      title: "Why this about the treatment?",
      inputs: [
        ...(course.treatments ?? []).map(
          (treatment) =>
            [treatmentName(treatment), `from ${treatment.from} to ${treatment.to ?? "now"}`] as const,
        ),
        ...lengths,
        ["Earlier refractions that count", refractionsBeforeTreatment(course)],
        [
          "Likelihood ratio",
          finding.likelihoodRatio === null ? "none" : String(Number(finding.likelihoodRatio.toPrecision(4))),
        ],
        ...beliefs.map(
          ({ what, prior, posterior }) =>
            [
              what,
              `before the measurements ${fixed(prior.mean)} (SD ${fixed(prior.sd)}), after them ${fixed(posterior.mean)} (SD ${fixed(posterior.sd)})`,
            ] as const,
        ),
      ],
      formula: [
        "Two accounts of the same figures are compared: in one the treatment withholds what the trials report, in the other nothing. Each allows for the child's own pace, irregular growth, the season and the noise of the instrument. The likelihood ratio says how many times likelier the figures are under the first.",
        `The limits are Wald's: (1 - beta) / alpha = ${fixed(finding.upper, 1)} to call it slowed, beta / (1 - alpha) = ${fixed(finding.lower, 3)} to call it not slowed, with error rates of ${alpha} and ${beta} as the practice sets them. Between them nothing is claimed; a lean is named beyond 3 to 1 (Kass and Raftery 1995).`,
        "A chance is how often, by the same model, the ratio would pass a limit by that review.",
        "Under atropine refraction does not count: the drug changes it more than it changes length.",
      ],
      parameters: growthParameters(evidence, course.treatments).slice(
        Object.keys(evidence.growth.values).length,
      ),
      tables: [],
    }),
  ]
}

/** One line a visit: "2025-01-10": "right 24.12 mm (5 readings, optical-biometry), left ...". */
export function lengthInputs(course: Course, asOf: string): readonly (readonly [string, string])[] {
  return course.visits
    .filter(({ date }) => date <= asOf)
    .flatMap((visit) => {
      const lengths = EYES.flatMap((eye) => {
        const length = visit[eye]?.axialLength
        if (!length) return []
        const details = [
          ...(length.readings === undefined ? [] : [`${length.readings} readings`]),
          length.method ?? "method not stated",
        ].join(", ")
        return [`${eye} ${fixed(length.mm)} mm (${details})`]
      })
      return lengths.length === 0 ? [] : [[`Length on ${visit.date}`, lengths.join("; ")] as const]
    })
}

function refractionsBeforeTreatment(course: Course): string {
  const start = (course.treatments ?? [])
    .filter(({ kind }) => kind !== "none")
    .map(({ from }) => from)
    .toSorted()[0]
  const dates = course.visits
    .filter(
      (visit) => EYES.some((eye) => visit[eye]?.refraction) && (start === undefined || visit.date <= start),
    )
    .map(({ date }) => date)
  return dates.length === 0 ? "none" : dates.join(", ")
}
