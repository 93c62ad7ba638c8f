import { addMonths, ageYears } from "../engine/calendar.js"
import type { CalendarDate } from "../engine/course.js"
import { say } from "../engine/say.js"
import { courseFacts, type DateFacts } from "./course-facts.js"
import type { CourseFigureInput, CourseStop } from "./course-figure-input.js"
import type { EyePoint } from "./course-points.js"
import { type DrawnForecast, drawnForecast, type FanRow, fanAt } from "./forecast-fan.js"
import { within } from "./frame.js"
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

/** What can be read at each date of the figure, and at each birthday of the forecast. */
export function courseStops(
  input: CourseFigureInput,
  { domain, x }: { readonly domain: readonly [number, number]; readonly x: (age: number) => number },
): readonly CourseStop[] {
  const { born } = input.course.child
  const past = courseFacts(input)
    .filter(({ age }) => within(domain, age))
    .map((facts) => ({ date: facts.date, lines: factLines(facts) }))
  const stops = new Map(past.map((stop) => [stop.date, stop.lines]))
  const forecast = drawnForecast(input.forecast, domain)
  for (const { age, lines } of forecast === null ? [] : forecastBirthdays(forecast)) {
    const date = birthday({ born, age })
    stops.set(date, [...(stops.get(date) ?? []), ...lines])
  }
  return [...stops]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([date, lines]) => {
      const age = ageYears({ born, on: date })
      const told = { age: ageWords({ born, on: date }), day: dateWords(date) }
      return {
        ageYears: age,
        date,
        x: x(age),
        lines: [
          date === input.today ? say("{age} · {day} · today", told) : `${told.age} · ${told.day}`,
          ...lines,
        ],
      }
    })
}

/** The date at which a child turns `age`, years. */
export const birthday = ({ born, age }: { readonly born: CalendarDate; readonly age: number }) =>
  addMonths(born, 12 * age)

/** The forecast at each whole year of age. */
export function forecastBirthdays(
  forecast: DrawnForecast,
): readonly { readonly age: number; readonly lines: readonly string[] }[] {
  const first = Math.ceil(forecast.untreated[0]?.age ?? 0)
  const last = Math.floor(forecast.untreated.at(-1)?.age ?? -1)
  const ages = Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i)
  return ages.map((age) => {
    const untreated = fanAt(forecast.untreated, age)
    const asTreated = forecast.asTreated && fanAt(forecast.asTreated, age)
    const { eye } = forecast
    return {
      age,
      lines: [
        ...(untreated
          ? [
              say("Forecast, {eye, select, right {right eye} other {left eye}}, untreated: {length}", {
                eye,
                length: fanWords(untreated),
              }),
            ]
          : []),
        ...(asTreated
          ? [
              say("Forecast, {eye, select, right {right eye} other {left eye}}, as treated: {length}", {
                eye,
                length: fanWords(asTreated),
              }),
            ]
          : []),
      ],
    }
  })
}

/** Median with the range from 5 to 95 %. */
export const fanWords = ({ p5, p50, p95 }: FanRow) =>
  `${fixed(p50, 1)} mm (${rangeWords({ low: p5, high: p95, digits: 1 })})`

function factLines(facts: DateFacts): readonly string[] {
  const { lengths, refractions, pupils, growth, treatments, symptoms, duties } = facts
  return [
    lengths.length === 0 ? "" : say("Length: {eyes}", { eyes: eyesInWords(lengths, mmWords) }),
    growth === null
      ? ""
      : say("Growth before: {mm} mm a year ({range})", {
          mm: fixed(growth.mmPerYear, 2),
          range: rangeWords({ low: growth.low95, high: growth.high95, digits: 2 }),
        }),
    refractions.length === 0
      ? ""
      : say("Refraction: {eyes}", { eyes: eyesInWords(refractions, dioptreWords) }),
    ...treatments.map((what) => say("Treatment: {what}", { what })),
    pupils.length === 0
      ? ""
      : say("Pupil in daylight: {eyes}", { eyes: eyesInWords(pupils, (mm) => `${fixed(mm, 1)} mm`) }),
    symptoms.length === 0 ? "" : say("Symptoms: {symptoms}", { symptoms: listed(symptoms) }),
    ...duties.map((duty) => say("Duty: {duty}", { duty })),
  ].filter((text) => text !== "")
}

function eyesInWords(points: readonly EyePoint[], words: (value: number) => string): string {
  const from = points.find((point) => point.from !== null)?.from
  return `${points.map((point) => pointWords(point, words)).join(", ")}${from ? ` (${fromWords(from)})` : ""}`
}

function pointWords({ eye, value, half95 }: EyePoint, words: (value: number) => string): string {
  return ofEye(eye, `${words(value)}${half95 === null ? "" : ` ± ${fixed(half95, 2)}`}`)
}
