import type { Evidence } from "../evidence/types.js"
import type { Assessment, Duty, Forecast, PracticeSettings } from "./assessment.js"
import { ageYears } from "./calendar.js"
import type { CalendarDate, Course, Eye } from "./course.js"
import { EYES } from "./course.js"
import { naturalGrowth } from "./growth/natural-growth.js"
import { lengthSdMm } from "./growth/observations.js"
import { emmetropicLength } from "./reference/emmetropic.js"
import { referenceBand } from "./reference/reference-band.js"
import { coverageByMonth } from "./supply/coverage-by-month.js"

export interface CourseCurvesInput {
  readonly course: Course
  readonly today: CalendarDate
  readonly evidence: Evidence
  readonly settings: PracticeSettings
  readonly assessment?: Assessment | undefined
  readonly forecast?: Forecast | undefined
  readonly duties: readonly Duty[]
}

const STEP_YEARS = 0.25

/**
 * Everything the course figure shows, worked out: growth of each interval with its 95 % interval of measurement,
 * the published lines at this child's ages, and nights covered by month. Ages in years, lengths in mm.
 */
export function courseCurves(input: CourseCurvesInput) {
  const { course, today, evidence, settings, assessment, forecast, duties } = input
  const parameters = evidence.growth
  const { youngestAgeYears, oldestAgeYears } = parameters.values
  const ages = steps(youngestAgeYears.value, oldestAgeYears.value)
  // Shown without the season: a smooth line to compare a year with; the answers themselves do count it.
  const natural = naturalGrowth({ child: course.child, parameters, settingFactor: settings.settingFactor })
  const emmetropic = ages.flatMap((age) => {
    const found = emmetropicLength({ ageYears: age, curve: evidence.emmetropic })
    return "refused" in found ? [] : [{ age, mm: found.mm }]
  })
  const coverage = coverageByMonth(course, today)
  const band = referenceBand({ child: course.child, ages, evidence })
  return {
    course,
    today,
    lengthSd: course.visits.flatMap((visit) =>
      EYES.flatMap((eye) => {
        const length = visit[eye]?.axialLength
        return length ? [{ date: visit.date, eye, mm: lengthSdMm(length, parameters) }] : []
      }),
    ),
    growthIntervals: growthIntervals(input),
    naturalRate: ages.map((age) => ({ age, mmPerYear: natural.rateMmPerYear(age) })),
    emmetropicRate: ages.map((age) => ({
      age,
      mmPerYear:
        evidence.emmetropic.spanMm *
        evidence.emmetropic.ratePerYear *
        Math.exp(-evidence.emmetropic.ratePerYear * age),
    })),
    emmetropicLength: emmetropic,
    ...(band ? { referenceBand: band } : {}),
    ...(assessment ? { assessment } : {}),
    ...(forecast ? { forecast } : {}),
    duties,
    ...(coverage ? { coverageByMonth: coverage } : {}),
  }
}

/** Difference of two lengths of the same eye, mean of the eyes measured at both ends, by noise of measurement alone. */
function growthIntervals({ course, evidence }: CourseCurvesInput) {
  const measured = course.visits
    .filter((visit) => EYES.some((eye) => visit[eye]?.axialLength))
    .toSorted((a, b) => (a.date < b.date ? -1 : 1))
  return measured.slice(1).flatMap((visit, i) => {
    const before = measured[i] as (typeof measured)[number]
    const [fromAge, toAge] = [before, visit].map(({ date }) =>
      ageYears({ born: course.child.born, on: date }),
    ) as [number, number]
    const both = EYES.flatMap((eye: Eye) => {
      const [a, b] = [before[eye]?.axialLength, visit[eye]?.axialLength]
      if (!a || !b) return []
      const variance = lengthSdMm(a, evidence.growth) ** 2 + lengthSdMm(b, evidence.growth) ** 2
      return [{ mm: b.mm - a.mm, variance }]
    })
    if (both.length === 0 || toAge <= fromAge) return []
    const years = toAge - fromAge
    const mmPerYear = both.reduce((sum, eye) => sum + eye.mm, 0) / both.length / years
    const sd = Math.sqrt(both.reduce((sum, eye) => sum + eye.variance, 0)) / both.length / years
    return [{ fromAge, toAge, mmPerYear, low95: mmPerYear - 1.96 * sd, high95: mmPerYear + 1.96 * sd }]
  })
}

function steps(from: number, to: number): number[] {
  const count = Math.max(0, Math.floor((to - from) / STEP_YEARS + 1e-9))
  return Array.from({ length: count + 1 }, (_, i) => from + i * STEP_YEARS)
}
