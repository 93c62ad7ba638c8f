import { evidence } from "../../evidence/index.js"
import { percent } from "../format.js"
import type { CourseReading } from "../reading.js"
import { GROWTH_PARAMETERS } from "./growth-why.js"
import { lengthInputs } from "./measurements.js"
import { namedParameters, type Why } from "./why.js"

/** Why the forecast is what it is. */
export function forecastWhy({ course, assessment, forecast }: CourseReading): Why {
  const chances = [
    ["Chance of 26 mm by 18", forecast.chance26mmBy18],
    ["Chance of −6 D by 18", forecast.chanceMinus6DBy18],
  ] as const
  return {
    title: "Why this forecast?",
    inputs: [
      ...lengthInputs(course),
      ...chances.flatMap(([label, chance]) =>
        chance
          ? [
              [
                label,
                `${percent(chance.untreated)} untreated, ${percent(chance.asTreated)} as treated now`,
              ] as const,
            ]
          : [],
      ),
      ...assessment.beliefs.map(
        ({ what, posterior }) =>
          [what, `${posterior.mean.toFixed(2)} ± ${posterior.sd.toFixed(2)} (mean ± SD)`] as const,
      ),
    ],
    steps: [
      "The eye is carried forward from its last length along the natural growth of an untreated myope of this age, sex and population, times the child's own pace; under treatment, less the share withheld.",
      "Pace and share withheld are what all of the child's measurements say, not an average alone. The irregularity of growth is added for every year ahead.",
      "The chance of 26 mm is that of the eye more likely to reach it. The chance of −6 D starts from the last refraction of the more myopic eye, with dioptres per mm of growth.",
      ...forecast.notes.map((note) => `${note.charAt(0).toUpperCase()}${note.slice(1)}.`),
      ...(forecast.refused ? [forecast.refused] : []),
    ],
    parameters: namedParameters(evidence.growth, [
      "dioptresPerMm",
      "oldestFittedAgeYears",
      "oldestAgeYears",
      ...GROWTH_PARAMETERS,
    ]),
    tables: [],
    method: `method ${assessment.method.version}, parameters ${assessment.method.parameters}`,
  }
}
