import type { FindingState, GrowthState } from "../engine/assessment.js"
import { msg, say } from "../engine/say.js"
import type { CourseFigureInput } from "./course-figure-input.js"
import { lengthPoints, treatmentSpans } from "./course-points.js"
import { fanWords } from "./course-stops.js"
import { dutyStateWords } from "./duty-state-words.js"
import { drawnForecast } from "./forecast-fan.js"
import { ageWords, axisAge, dateWords, fixed, knownWords, mmWords, ofEye, rangeWords } from "./words.js"

const GROWTH_WORDS: Readonly<Record<GrowthState, string>> = {
  "near-normal": msg("near-normal growth"),
  "slowed-growth": msg("slowed growth"),
  "as-untreated": msg("growth as untreated"),
  faster: msg("growth faster than untreated"),
  unclear: msg("growth unclear"),
}

const FINDING_WORDS: Readonly<Record<FindingState, string>> = {
  slowed: msg("slowed by the treatment"),
  "not-slowed": msg("not slowed by the treatment"),
  "cannot-tell-yet": msg("cannot tell yet whether it is the treatment"),
  "no-treatment": msg("no treatment to judge"),
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
  return say("{sex, select, female {Course of a girl} other {Course of a boy}} from age {from} to {to}", {
    sex: course.child.sex,
    from: fixed(from, 0),
    to: fixed(to, 0),
  })
}

function lengthSentence(input: CourseFigureInput): string {
  const points = lengthPoints(input)
  const last = points.at(-1)
  if (last === undefined) return say("No axial length recorded yet.")
  const eyes = points
    .filter(({ date }) => date === last.date)
    .map(({ eye, value }) => ofEye(eye, mmWords(value)))
  return say("Last axial length {day}, {age}: {eyes}.", {
    day: dateWords(last.date),
    age: ageWords({ born: input.course.child.born, on: last.date }),
    eyes: eyes.join(", "),
  })
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
    natural === undefined ? "" : say("of an untreated myope {mm}", { mm: fixed(natural, 2) }),
    emmetropic === undefined ? "" : say("of an emmetrope {mm}", { mm: fixed(emmetropic, 2) }),
  ].filter((text) => text !== "")
  const told = { mm: `${fixed(growth.mmPerYear, 2)}`, interval, state: say(GROWTH_WORDS[growth.state]) }
  return against.length === 0
    ? say("Growth {mm} mm a year{interval}: {state}.", told)
    : say("Growth {mm} mm a year{interval}, expected {expected}: {state}.", {
        ...told,
        expected: against.join(", "),
      })
}

function treatmentSentence(input: CourseFigureInput): string {
  const last = treatmentSpans(input)
    .filter(({ nothing }) => !nothing)
    .at(-1)
  if (last === undefined) return say("No treatment recorded.")
  const told = { treatment: last.words, from: dateWords(last.from) }
  return last.to === null
    ? say("Treatment: {treatment} from {from}.", told)
    : say("Treatment: {treatment} from {from} to {to}.", { ...told, to: dateWords(last.to) })
}

function findingSentence({ assessment }: CourseFigureInput): string {
  if (assessment === undefined || assessment.finding.state === "no-treatment") return ""
  return say("Finding: {finding}.", { finding: say(FINDING_WORDS[assessment.finding.state]) })
}

function forecastSentence(input: CourseFigureInput, domain: readonly [number, number]): string {
  const forecast = drawnForecast(input.forecast, domain)
  const end = forecast?.untreated.at(-1)
  if (forecast === null || end === undefined) return ""
  const treated = forecast.asTreated?.at(-1)
  const told = { eye: forecast.eye, age: axisAge(end.age), untreated: fanWords(end) }
  return treated === undefined
    ? say(
        "{eye, select, right {Forecast of the right eye} other {Forecast of the left eye}} at age {age}: untreated {untreated}.",
        told,
      )
    : say(
        "{eye, select, right {Forecast of the right eye} other {Forecast of the left eye}} at age {age}: untreated {untreated}, as treated {asTreated}.",
        { ...told, asTreated: fanWords(treated) },
      )
}

function dutySentence({ duties }: CourseFigureInput): string {
  const next = duties
    .filter(({ state }) => state === "overdue" || state === "open" || state === "upcoming")
    .sort((a, b) => (a.due < b.due ? -1 : 1))[0]
  if (next === undefined) return ""
  return say("Next: {step}, {state}, due {day}.", {
    step: knownWords(next.step),
    state: dutyStateWords(next.state),
    day: dateWords(next.due),
  })
}
