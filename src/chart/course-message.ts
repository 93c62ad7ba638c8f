import type { FindingState, GrowthState } from "../engine/assessment.js"
import type { CourseFigureInput } from "./course-figure-input.js"
import { lengthPoints, treatmentSpans } from "./course-points.js"
import { fanWords } from "./course-stops.js"
import { drawnForecast } from "./forecast-fan.js"
import { ageWords, axisAge, dateWords, fixed, mmWords, rangeWords } from "./words.js"

const GROWTH_WORDS: Readonly<Record<GrowthState, string>> = {
  "near-normal": "near-normal growth",
  "slowed-growth": "slowed growth",
  "as-untreated": "growth as untreated",
  faster: "growth faster than untreated",
  unclear: "growth unclear",
}

const FINDING_WORDS: Readonly<Record<FindingState, string>> = {
  slowed: "slowed by the treatment",
  "not-slowed": "not slowed by the treatment",
  "cannot-tell-yet": "cannot tell yet whether it is the treatment",
  "no-treatment": "no treatment to judge",
}

/** The message of the course figure in sentences, for those who hear it instead of seeing it. */
export function courseMessage(input: CourseFigureInput, domain: readonly [number, number]): string {
  return [
    lengthSentence(input),
    growthSentence(input),
    treatmentSentence(input),
    findingSentence(input),
    forecastSentence(input, domain),
    dutySentence(input),
  ]
    .filter((sentence) => sentence !== "")
    .join(" ")
}

export function courseTitle({ course }: CourseFigureInput, [from, to]: readonly [number, number]): string {
  const who = course.child.sex === "female" ? "girl" : "boy"
  return `Course of a ${who} from age ${fixed(from, 0)} to ${fixed(to, 0)}`
}

function lengthSentence(input: CourseFigureInput): string {
  const points = lengthPoints(input)
  const last = points.at(-1)
  if (last === undefined) return "No axial length recorded yet."
  const eyes = points
    .filter(({ date }) => date === last.date)
    .map(({ eye, value }) => `${eye} ${mmWords(value)}`)
  return `Last axial length ${dateWords(last.date)}, ${ageWords({ born: input.course.child.born, on: last.date })}: ${eyes.join(", ")}.`
}

function growthSentence({ assessment }: CourseFigureInput): string {
  const growth = assessment?.growth
  if (growth === undefined || growth.mmPerYear === null) return ""
  const { low95, high95, naturalMmPerYear: natural, emmetropicMmPerYear: emmetropic } = growth
  const interval =
    low95 === undefined || high95 === undefined
      ? ""
      : ` (${rangeWords({ low: low95, high: high95, digits: 2 })})`
  const against = [
    natural === undefined ? "" : `an untreated myope ${fixed(natural, 2)}`,
    emmetropic === undefined ? "" : `an emmetrope ${fixed(emmetropic, 2)}`,
  ].filter((text) => text !== "")
  const expected = against.length === 0 ? "" : `, expected of ${against.join(", of ")}`
  return `Growth ${fixed(growth.mmPerYear, 2)} mm a year${interval}${expected}: ${GROWTH_WORDS[growth.state]}.`
}

function treatmentSentence(input: CourseFigureInput): string {
  const last = treatmentSpans(input)
    .filter(({ nothing }) => !nothing)
    .at(-1)
  if (last === undefined) return "No treatment recorded."
  const end = last.to === null ? "" : ` to ${dateWords(last.to)}`
  return `Treatment: ${last.words} from ${dateWords(last.from)}${end}.`
}

function findingSentence({ assessment }: CourseFigureInput): string {
  if (assessment === undefined || assessment.finding.state === "no-treatment") return ""
  return `Finding: ${FINDING_WORDS[assessment.finding.state]}.`
}

function forecastSentence(input: CourseFigureInput, domain: readonly [number, number]): string {
  const forecast = drawnForecast(input.forecast, domain)
  const end = forecast?.untreated.at(-1)
  if (forecast === null || end === undefined) return ""
  const treated = forecast.asTreated?.at(-1)
  const asTreated = treated === undefined ? "" : `, as treated ${fanWords(treated)}`
  return `Forecast of the ${forecast.eye} eye at age ${axisAge(end.age)}: untreated ${fanWords(end)}${asTreated}.`
}

function dutySentence({ duties }: CourseFigureInput): string {
  const next = duties
    .filter(({ state }) => state === "overdue" || state === "open" || state === "upcoming")
    .sort((a, b) => (a.due < b.due ? -1 : 1))[0]
  return next === undefined ? "" : `Next: ${next.step}, ${next.state}, due ${dateWords(next.due)}.`
}
