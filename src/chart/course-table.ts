import type { Eye } from "../engine/course.js"
import { courseFacts, type DateFacts } from "./course-facts.js"
import type { CourseFigureInput } from "./course-figure-input.js"
import { dateAtAge, type EyePoint } from "./course-points.js"
import { birthday, fanWords, forecastBirthdays } from "./course-stops.js"
import { drawnForecast, fanAt } from "./forecast-fan.js"
import { ageWords, dateWords, dioptreWords, fixed, listed, mmWords, rangeWords } from "./words.js"

/** Text in rows; each row has a cell for each header. */
export interface FigureTable {
  readonly caption: string
  readonly headers: readonly string[]
  readonly rows: readonly (readonly string[])[]
}

/**
 * The whole course figure as tables: what happened by date, then the forecast by birthday, then nights covered by
 * month, each left out when it would be empty.
 *
 * @example
 * courseTable(input)[0]?.headers // => ["Date", "Age", "Length right", "Length left", "Growth before", ...]
 */
export function courseTable(input: CourseFigureInput): readonly FigureTable[] {
  return [courseByDate(input), forecastByBirthday(input), coverageByMonth(input)].filter(
    ({ rows }) => rows.length > 0,
  )
}

function courseByDate(input: CourseFigureInput): FigureTable {
  return {
    caption: "Course by date",
    headers: [
      "Date",
      "Age",
      "Length right",
      "Length left",
      "Growth before",
      "Refraction right",
      "Refraction left",
      "Treatment",
      "Pupil in daylight",
      "Symptoms",
      "Duties",
    ],
    rows: courseFacts(input).map((facts) => [
      dateWords(facts.date) + (facts.today ? ", today" : ""),
      ageWords({ born: input.course.child.born, on: facts.date }),
      cell(facts.lengths, "right", mmWords),
      cell(facts.lengths, "left", mmWords),
      growthCell(facts),
      cell(facts.refractions, "right", dioptreWords),
      cell(facts.refractions, "left", dioptreWords),
      listed(facts.treatments),
      listed(facts.pupils.map(({ eye, value }) => `${eye} ${fixed(value, 1)} mm`)),
      listed(facts.symptoms),
      facts.duties.join("; "),
    ]),
  }
}

function cell(points: readonly EyePoint[], eye: Eye, words: (value: number) => string): string {
  const point = points.find((candidate) => candidate.eye === eye)
  if (point === undefined) return ""
  const half = point.half95 === null ? "" : ` ± ${fixed(point.half95, 2)}`
  return `${words(point.value)}${half}${point.from === null ? "" : ` (${point.from})`}`
}

function growthCell({ growth }: DateFacts): string {
  if (growth === null) return ""
  const range = rangeWords({ low: growth.low95, high: growth.high95, digits: 2 })
  return `${fixed(growth.mmPerYear, 2)} mm a year (${range})`
}

function forecastByBirthday(input: CourseFigureInput): FigureTable {
  const forecast = drawnForecast(input.forecast, [0, 18])
  const { born } = input.course.child
  const headers = ["Date", "Age", "Untreated", ...(forecast?.asTreated ? ["As treated"] : [])]
  if (forecast === null) return { caption: "Forecast", headers, rows: [] }
  return {
    caption: `Forecast of the length of the ${forecast.eye} eye: median and range from 5 to 95 %`,
    headers,
    rows: forecastBirthdays(forecast).map(({ age }) => {
      const cells = [forecast.untreated, ...(forecast.asTreated ? [forecast.asTreated] : [])].map((rows) => {
        const row = fanAt(rows, age)
        return row === null ? "" : fanWords(row)
      })
      const date = birthday({ born, age })
      return [dateWords(date), ageWords({ born, on: date }), ...cells]
    }),
  }
}

function coverageByMonth({ coverageByMonth: months = [], course }: CourseFigureInput): FigureTable {
  const { born } = course.child
  return {
    caption: "Nights covered by the bottles supplied",
    headers: ["Month from", "Age", "Nights covered"],
    rows: months.map(({ age, share }) => {
      const date = dateAtAge({ born, age })
      return [dateWords(date), ageWords({ born, on: date }), `${fixed(100 * share, 0)} %`]
    }),
  }
}
