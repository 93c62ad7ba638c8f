import type { Eye } from "../engine/course.js"
import { say } from "../engine/say.js"
import { courseFacts, type DateFacts } from "./course-facts.js"
import type { CourseFigureInput } from "./course-figure-input.js"
import { dateAtAge, type EyePoint } from "./course-points.js"
import { birthday, fanWords, forecastBirthdays } from "./course-stops.js"
import { drawnForecast, fanAt } from "./forecast-fan.js"
import {
  ageWords,
  dateWords,
  dioptreWords,
  fixed,
  fromWords,
  listed,
  mmWords,
  ofEye,
  rangeWords,
} from "./words.js"

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
    caption: say("Course by date"),
    headers: [
      say("Date"),
      say("Age"),
      say("Length right"),
      say("Length left"),
      say("Growth before"),
      say("Refraction right"),
      say("Refraction left"),
      say("Treatment"),
      say("Pupil in daylight"),
      say("Symptoms"),
      say("Duties"),
    ],
    rows: courseFacts(input).map((facts) => [
      facts.today ? say("{day}, today", { day: dateWords(facts.date) }) : dateWords(facts.date),
      ageWords({ born: input.course.child.born, on: facts.date }),
      cell(facts.lengths, "right", mmWords),
      cell(facts.lengths, "left", mmWords),
      growthCell(facts),
      cell(facts.refractions, "right", dioptreWords),
      cell(facts.refractions, "left", dioptreWords),
      listed(facts.treatments),
      listed(facts.pupils.map(({ eye, value }) => ofEye(eye, `${fixed(value, 1)} mm`))),
      listed(facts.symptoms),
      facts.duties.join("; "),
    ]),
  }
}

function cell(points: readonly EyePoint[], eye: Eye, words: (value: number) => string): string {
  const point = points.find((candidate) => candidate.eye === eye)
  if (point === undefined) return ""
  const half = point.half95 === null ? "" : ` ± ${fixed(point.half95, 2)}`
  return `${words(point.value)}${half}${point.from === null ? "" : ` (${fromWords(point.from)})`}`
}

function growthCell({ growth }: DateFacts): string {
  if (growth === null) return ""
  const range = rangeWords({ low: growth.low95, high: growth.high95, digits: 2 })
  return say("{mm} mm a year ({range})", { mm: fixed(growth.mmPerYear, 2), range })
}

function forecastByBirthday(input: CourseFigureInput): FigureTable {
  const forecast = drawnForecast(input.forecast, [0, 18])
  const { born } = input.course.child
  const headers = [
    say("Date"),
    say("Age"),
    say("Untreated"),
    ...(forecast?.asTreated ? [say("As treated")] : []),
  ]
  if (forecast === null) return { caption: say("Forecast"), headers, rows: [] }
  return {
    caption: say(
      "{eye, select, right {Forecast of the length of the right eye} other {Forecast of the length of the left eye}}: median and range from 5 to 95 %",
      { eye: forecast.eye },
    ),
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
    caption: say("Nights covered by the bottles supplied"),
    headers: [say("Month from"), say("Age"), say("Nights covered")],
    rows: months.map(({ age, share }) => {
      const date = dateAtAge({ born, age })
      return [dateWords(date), ageWords({ born, on: date }), `${fixed(100 * share, 0)} %`]
    }),
  }
}
