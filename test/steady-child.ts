import { addMonths, ageYears } from "../src/engine/calendar.js"
import type { CalendarDate, Course, Treatment } from "../src/engine/course.js"
import { naturalGrowth } from "../src/engine/growth/natural-growth.js"
import { type Study, study } from "../src/engine/growth/study.js"
import { defaultSettings } from "../src/engine/settings.js"
import { evidence } from "../src/evidence/index.js"

export interface SteadyChild {
  readonly born?: CalendarDate
  readonly start?: CalendarDate
  /** Months from the start at which both eyes are measured. */
  readonly months: readonly number[]
  /** Share of natural growth that the eyes grow before and after the start. */
  readonly shareBefore?: number
  readonly shareAfter: number
  readonly treatments?: readonly Treatment[]
  readonly supplies?: Course["supplies"]
  readonly startMm?: { readonly right: number; readonly left: number }
  readonly method?: "optical-biometry" | "ultrasound"
  readonly sphereD?: number
}

/** An invented child whose eyes grow an exact share of natural growth, without wobble or noise, to a thousandth of a mm. */
export function steadyCourse({
  born = "2016-06-15",
  start = "2024-06-15",
  months,
  shareBefore = 1,
  shareAfter,
  treatments = [{ from: start, kind: "atropine", concentrationPercent: 0.05 }],
  supplies,
  startMm = { right: 24.1, left: 24 },
  method = "optical-biometry",
  sphereD = -2,
}: SteadyChild): Course {
  const child = { born, sex: "female", ancestry: "east-asian" } as const
  const growth = naturalGrowth({ child, parameters: evidence.growth, settingFactor: 1 })
  const at = (date: CalendarDate) => growth.cumulativeMm(ageYears({ born, on: date }))
  return {
    lengthwise: 1,
    child,
    visits: months.map((month) => {
      const date = addMonths(start, month)
      const natural = at(date) - at(start)
      const grown = natural * (month < 0 ? shareBefore : shareAfter)
      const eye = (mm: number) => ({
        axialLength: { mm: Math.round((mm + grown) * 1000) / 1000, method, device: "A" },
        ...(month === 0
          ? { refraction: { sphere: sphereD, method: "autorefraction", cycloplegic: true } as const }
          : {}),
      })
      return { date, right: eye(startMm.right), left: eye(startMm.left) }
    }),
    treatments,
    ...(supplies ? { supplies } : {}),
  }
}

/** The engine's view of a course on the day of its last visit, or another day. */
export function studyOf(course: Course, asOf = lastVisit(course)): Study {
  return study({ course, asOf, evidence, settings: defaultSettings })
}

function lastVisit({ visits }: Course): CalendarDate {
  return visits
    .map(({ date }) => date)
    .sort()
    .at(-1) as CalendarDate
}
