import { assess } from "../engine/assess.js"
import type { Assessment, Duty, Forecast, PracticeSettings } from "../engine/assessment.js"
import type { CalendarDate, Course, Visit } from "../engine/course.js"
import { forecast } from "../engine/forecast.js"
import { duties } from "../engine/protocol/duties.js"
import { standardProtocol } from "../engine/protocol/standard.js"
import { evidence } from "../evidence/index.js"
import type { PracticeAnswer } from "../server/contract/practice.js"

/** Everything a page says of one child on one day, worked out in the browser by the same engine as on the server. */
export interface CourseReading {
  readonly course: Course
  readonly today: CalendarDate
  readonly settings: PracticeSettings
  readonly assessment: Assessment
  readonly forecast: Forecast
  readonly duties: readonly Duty[]
}

/** Forecasts are drawn to the end of the natural curve at most. */
export const FORECAST_TO_AGE = 18

export function readCourse(
  course: Course,
  { today, settings }: Pick<PracticeAnswer, "today" | "settings">,
): CourseReading {
  const input = { course, asOf: today, evidence, settings }
  return {
    course,
    today,
    settings,
    assessment: assess(input),
    forecast: forecast({ ...input, toAgeYears: FORECAST_TO_AGE }),
    duties: duties({ course, protocol: standardProtocol, today }),
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
