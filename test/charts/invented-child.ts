import type { CourseFigureInput } from "../../src/chart/course-figure-input.js"
import type { Duty, EyeForecast, Fan } from "../../src/engine/assessment.js"
import { addMonths, ageYears } from "../../src/engine/calendar.js"
import type { Course, EyeExamination, Visit } from "../../src/engine/course.js"

/**
 * Invented children for the figures. The lines behind them follow the published curves (emmetropic: yii2023-curve;
 * natural: the fit of the progression evidence for a girl of other than East Asian ancestry); forecasts and intervals
 * are made up to look as the engine's do, and nothing is tested against them but the drawing.
 */
export const BORN = "2016-03-14"
export const TODAY = "2026-09-14"

const emmetropicMm = (age: number) => 23.598968 - 5.598103 * Math.exp(-0.298611 * age)
const emmetropicRate = (age: number) => 0.298611 * 5.598103 * Math.exp(-0.298611 * age)
const naturalRate = (age: number) =>
  0.272 * 1.03 * Math.exp(-0.125 * (Math.min(age, 13) - 10)) * Math.exp(-0.3 * Math.max(0, age - 13))

export const ages = (from: number, to: number, step: number) =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step)

export const curves = {
  naturalRate: ages(6, 18, 0.5).map((age) => ({ age, mmPerYear: naturalRate(age) })),
  emmetropicRate: ages(6, 18, 0.5).map((age) => ({ age, mmPerYear: emmetropicRate(age) })),
  emmetropicLength: ages(6, 18, 0.5).map((age) => ({ age, mm: emmetropicMm(age) })),
}

export const at = (on: string) => ageYears({ born: BORN, on })

export function eye(mm: number, sphere: number, pupil?: number): EyeExamination {
  return {
    axialLength: { mm, readings: 5, method: "optical-biometry", device: "A" },
    refraction: { sphere, cylinder: -0.5, axis: 180, cycloplegic: true, method: "autorefraction" },
    ...(pupil === undefined ? {} : { pupil: { photopic: pupil } }),
  }
}

export const oldGlasses = (date: string, right: number, left: number): Visit => ({
  date,
  right: { refraction: { sphere: right, method: "subjective" } },
  left: { refraction: { sphere: left, method: "subjective" } },
  from: "old glasses",
})

export const duty = (step: string, due: string, state: Duty["state"]): Duty => ({
  kind: "review",
  step,
  opens: addMonths(due, -1),
  due,
  closes: addMonths(due, 1),
  state,
  needs: [],
})

/** A forecast from a length: natural growth times `multiple`, spread as a child's pace and wobble would. */
export function forecastOf(startAge: number, startMm: number, withheld: number): EyeForecast {
  const list = [startAge, ...ages(Math.ceil(startAge * 2) / 2, 18, 0.5)]
  const fan = (share: number): Fan => {
    const median = list.map((age) => {
      const steps = 60
      const width = (age - startAge) / steps
      return Array.from(
        { length: steps },
        (_, i) => naturalRate(startAge + (i + 0.5) * width) * width,
      ).reduce((sum, part) => sum + part * share, startMm)
    })
    const quantile = (z: number) =>
      median.map((mm, i) => {
        const years = (list[i] as number) - startAge
        return mm + z * Math.hypot(0.02, 0.31 * (mm - startMm), 0.09 * Math.sqrt(years))
      })
    return {
      p5: quantile(-1.645),
      p25: quantile(-0.674),
      p50: median,
      p75: quantile(0.674),
      p95: quantile(1.645),
    }
  }
  return { ages: list, untreated: fan(1), asTreated: fan(1 - withheld) }
}

export const course = (visits: readonly Visit[], rest: Partial<Course> = {}): Course => ({
  lengthwise: 1,
  child: { id: "invented", born: BORN, sex: "female" },
  visits,
  ...rest,
})

/** Growth between the lengths of the visits, mean of the eyes both have, with the error of one session at each end. */
export function intervals(visits: readonly Visit[], sd: number): CourseFigureInput["growthIntervals"] {
  const measured = visits.filter((visit) => visit.right?.axialLength ?? visit.left?.axialLength)
  return measured.slice(1).map((visit, i) => {
    const before = measured[i] as Visit
    const grown = (["right", "left"] as const).flatMap((side) => {
      const [from, to] = [before[side]?.axialLength?.mm, visit[side]?.axialLength?.mm]
      return from === undefined || to === undefined ? [] : [to - from]
    })
    const years = at(visit.date) - at(before.date)
    const mmPerYear = grown.reduce((sum, mm) => sum + mm, 0) / grown.length / years
    const half = (1.96 * sd * Math.SQRT2) / Math.sqrt(grown.length) / years
    return {
      fromAge: at(before.date),
      toAge: at(visit.date),
      mmPerYear,
      low95: mmPerYear - half,
      high95: mmPerYear + half,
    }
  })
}

export const lengthSd = (visits: readonly Visit[], mm: number) =>
  visits.flatMap((visit) =>
    (["right", "left"] as const).flatMap((side) =>
      visit[side]?.axialLength ? [{ date: visit.date, eye: side, mm }] : [],
    ),
  )

export const coverage = (from: string, shares: readonly number[]) =>
  shares.map((share, i) => ({ age: at(addMonths(from, i)), share }))
