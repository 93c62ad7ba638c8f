import { assess } from "../engine/assess.js"
import type { Assessment, Duty, Forecast, PracticeSettings } from "../engine/assessment.js"
import type { CalendarDate, Course, Visit } from "../engine/course.js"
import { forecast } from "../engine/forecast.js"
import type { PracticeRules } from "../engine/practice-rules.js"
import { protocolFor } from "../engine/protocol/choose-protocol.js"
import { duties } from "../engine/protocol/duties.js"
import type { Protocol } from "../engine/protocol/protocol.js"
import { evidence } from "../evidence/index.js"
import type { PracticeAnswer } from "../server/contract/practice.js"

/** Everything a page says of one child on one day, worked out in the browser by the same engine as on the server. */
export interface CourseReading {
  readonly course: Course
  readonly today: CalendarDate
  readonly settings: PracticeSettings
  readonly rules: PracticeRules
  /** The protocol this child follows. */
  readonly protocol: Protocol
  readonly assessment: Assessment
  readonly forecast: Forecast
  readonly duties: readonly Duty[]
}

/** Forecasts are drawn to the end of the natural curve at most. */
export const FORECAST_TO_AGE = 18

export function readCourse(
  course: Course,
  { today, settings, rules }: Pick<PracticeAnswer, "today" | "settings" | "rules">,
): CourseReading {
  const protocol = protocolFor({ course, today, rules })
  const input = { course, asOf: today, evidence, settings, protocol }
  return {
    course,
    today,
    settings,
    rules,
    protocol,
    assessment: assess(input),
    forecast: forecast({ ...input, toAgeYears: FORECAST_TO_AGE }),
    duties: duties({
      course,
      protocol,
      today,
      wordings: rules.consentWordings,
      pharmacies: rules.pharmacies,
    }),
  }
}

/** The course with a visit put in at its date, in place of the one that stood there. */
export function withVisit(course: Course, visit: Visit): Course {
  const others = course.visits.filter((other) => other.date !== visit.date)
  return { ...course, visits: [...others, visit].sort((a, b) => a.date.localeCompare(b.date)) }
}

/** The visit of a date as its place in the list, for paths such as `visits[3].right`; -1 when there is none. */
export function visitIndex(course: Course, date: CalendarDate): number {
  return course.visits.findIndex((visit) => visit.date === date)
}
