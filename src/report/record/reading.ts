import { assess } from "../../engine/assess.js"
import type { Assessment, Duty, Forecast } from "../../engine/assessment.js"
import type { CalendarDate, Course, Treatment } from "../../engine/course.js"
import { forecast } from "../../engine/forecast.js"
import { protocolFor } from "../../engine/protocol/choose-protocol.js"
import { duties } from "../../engine/protocol/duties.js"
import { plannedReviews } from "../../engine/protocol/planned-reviews.js"
import type { Protocol } from "../../engine/protocol/protocol.js"
import { isInUse, realTreatments } from "../../engine/protocol/treatment-course.js"
import { inDoubt } from "../../engine/response/doubtful-figures.js"
import { type OpenConcern, openConcerns } from "../../engine/safety/open-concerns.js"
import { evidence } from "../../evidence/index.js"
import type { DocumentInput } from "../document-input.js"

/** Everything a letter or a record says of one child on its day, worked out once by the engine. */
export interface Reading {
  readonly input: DocumentInput
  readonly course: Course
  readonly today: CalendarDate
  readonly protocol: Protocol
  readonly assessment: Assessment
  readonly duties: readonly Duty[]
  readonly concerns: readonly OpenConcern[]
  /** In use today, in order of their start. */
  readonly inUse: readonly Treatment[]
  /** First day without treatment as recorded or planned. */
  readonly plannedStop: CalendarDate | null
  /** A figure that the answers rest on waits to be measured again. */
  readonly isInDoubt: boolean
}

const DOUBTFUL = ["eyes-exchanged", "implausible-change"]

export function readingOf(input: DocumentInput): Reading {
  const { settings, rules, today } = input
  const course = withLatitude(input)
  const protocol = protocolFor({ course, today, rules })
  const assessment = assess({ course, asOf: today, evidence, settings, protocol })
  const asked = {
    course,
    protocol,
    today,
    wordings: rules.consentWordings,
    pharmacies: rules.pharmacies,
  }
  const doubts = assessment.checks.filter(({ kind }) => DOUBTFUL.includes(kind))
  return {
    input,
    course,
    today,
    protocol,
    assessment,
    duties: duties(asked),
    concerns: openConcerns({ course, today, protocol, switches: rules.examinationSwitches }),
    inUse: realTreatments(course).filter((treatment) => isInUse(treatment, today)),
    plannedStop: plannedReviews(asked).plannedStop,
    isInDoubt: inDoubt({ course }, doubts) !== null,
  }
}

/** Forecasts are drawn to the end of the natural curve. */
const FORECAST_TO_AGE_YEARS = 18

export const forecastOf = ({ input: { settings }, course, today }: Reading): Forecast =>
  forecast({ course, asOf: today, evidence, settings, toAgeYears: FORECAST_TO_AGE_YEARS })

/** The practice's latitude says which season it was; the course's own comes first. */
function withLatitude({ course, practice: { latitude } }: DocumentInput): Course {
  if (course.practice?.latitude !== undefined || latitude === undefined) return course
  return { ...course, practice: { latitude } }
}
