import { dutiesWhy } from "../../engine/why/duties.js"
import { findingWhy } from "../../engine/why/finding.js"
import { forecastWhy } from "../../engine/why/forecast.js"
import { growthWhy } from "../../engine/why/growth.js"
import { eyesPositionWhy } from "../../engine/why/position.js"
import type { Why } from "../../engine/why/why.js"
import { citationOf } from "../../evidence/citations.js"
import { evidence } from "../../evidence/index.js"
import { type CourseReading, FORECAST_TO_AGE } from "../reading.js"

export type Question = "growth" | "finding" | "forecast" | "position" | "duties"

/** The answer to each "why?" of a child's page. */
export const answers: Readonly<Record<Question, (reading: CourseReading) => Why>> = {
  growth: (reading) => growthWhy({ ...reading, evidence, sourceOf: citationOf }),
  finding: (reading) => findingWhy({ ...reading, evidence, sourceOf: citationOf }),
  forecast: (reading) =>
    forecastWhy({
      ...reading,
      toAgeYears: FORECAST_TO_AGE,
      beliefs: reading.assessment.beliefs,
      evidence,
      sourceOf: citationOf,
    }),
  position: (reading) => eyesPositionWhy({ ...reading, evidence, sourceOf: citationOf }),
  duties: ({ duties, protocol, today }) => dutiesWhy({ duties, protocol, asOf: today }),
}
