import { assess } from "../../engine/assess.js"
import type { EyeForecast, Fan, Forecast } from "../../engine/assessment.js"
import { ageYears } from "../../engine/calendar.js"
import { type CalendarDate, EYES } from "../../engine/course.js"
import { forecast } from "../../engine/forecast.js"
import { forecastWhy } from "../../engine/why/forecast.js"
import { fixed, inDigits, percent, sentence } from "../../engine/words.js"
import { evidence } from "../../evidence/index.js"
import { problem } from "../../interop/course/problem.js"
import { courseInput } from "../course-input.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { sourceRegister, whyText } from "../why-text.js"
import { CAUTION, dateInWords, paragraph, section } from "../words.js"

export interface ForecastArguments {
  readonly file: string
  readonly toAge: number
  readonly asOf?: CalendarDate | undefined
  readonly json?: boolean | undefined
  readonly why?: boolean | undefined
}

/** Where the eyes go to an age: without treatment from this day on, and as treated now. */
export async function run(args: ForecastArguments, io: Io): Promise<ExitCode> {
  const { json = false, toAge } = args
  const input = await courseInput(args, io)
  if ("problems" in input) return toldProblems(input.problems, { io, json })
  const { course, asOf, notes } = input
  const ageNow = ageYears({ born: course.child.born, on: asOf })
  if (!(toAge > ageNow)) {
    const allowed = `an age above the child's own, which is ${inDigits(ageNow)} years`
    return toldProblems([problem({ path: "--to-age", value: toAge, allowed })], { io, json })
  }
  const ahead = forecast({ course, asOf, evidence, toAgeYears: toAge })
  const why = args.why
    ? forecastWhy({
        course,
        forecast: ahead,
        toAgeYears: toAge,
        beliefs: assess({ course, asOf, evidence }).beliefs,
        evidence,
        sourceOf: await sourceRegister(),
      })
    : undefined
  if (json) return toldJson({ ...ahead, checks: notes, ...(why && { why }) }, io)
  io.out(
    forecastText(
      ahead,
      notes.map(({ path, why: words }) => `${path}: ${sentence(words)}`),
    ),
  )
  if (why) io.out(whyText(why))
  return 0
}

function forecastText(ahead: Forecast, checks: readonly string[]): string {
  const { asOf, eyes, chance26mmBy18, chanceMinus6DBy18, refused, notes } = ahead
  if (refused !== undefined) {
    return paragraph(`No forecast is made: ${sentence(refused)}`, 0) + section("\nChecks", checks)
  }
  return [
    paragraph(`Forecast from ${dateInWords(asOf)}: median length and, in brackets, where 90 % fall.`, 0),
    "\n",
    ...EYES.map((eye) => {
      const lines = eyes[eye]
      if (lines === undefined) return ""
      const { ages, untreated, asTreated } = lines
      const line = (index: number) =>
        isTreated(lines)
          ? `untreated ${at(untreated, index)}, as treated ${at(asTreated, index)}`
          : at(untreated, index)
      return section(
        eye === "right" ? "Right eye" : "Left eye",
        wholeYears(ages).map((index) => `At ${fixed(ages[index] ?? 0, 1)} years: ${line(index)}.`),
      )
    }),
    Object.values(eyes).some(isTreated)
      ? ""
      : section("Treatment", ["No treatment is in use on this day, so there is one line and not two."]),
    section("By 18 years", [
      ...(chance26mmBy18 === null
        ? []
        : [`Chance that the longer eye reaches 26 mm: ${both(chance26mmBy18)}.`]),
      ...(chanceMinus6DBy18 === null
        ? ["Chance of -6 D: not given, since no refraction of a measured eye is recorded."]
        : [`Chance that the more myopic eye reaches -6 D: ${both(chanceMinus6DBy18)}.`]),
    ]),
    section("Notes", notes.map(sentence)),
    section("Checks", checks),
    paragraph(CAUTION, 0),
  ].join("")
}

/** Without a treatment in use the two fans are one. */
const isTreated = ({ untreated, asTreated }: EyeForecast): boolean =>
  untreated.p50.some((mm, index) => mm !== asTreated.p50[index])

/** A line a year is enough to read: the quarter nearest to each birthday, and the last age. */
function wholeYears(ages: readonly number[]): readonly number[] {
  return ages.flatMap((age, index) => {
    const next = ages[index + 1]
    if (next === undefined) return [index]
    return Math.floor(next) > Math.floor(age) && (ages.at(-1) ?? age) - age > 0.5 ? [index] : []
  })
}

function at({ p5, p50, p95 }: Fan, index: number): string {
  return `${fixed(p50[index] ?? Number.NaN)} mm (${fixed(p5[index] ?? Number.NaN)} to ${fixed(p95[index] ?? Number.NaN)})`
}

const both = ({
  untreated,
  asTreated,
}: {
  readonly untreated: number
  readonly asTreated: number
}): string =>
  untreated === asTreated
    ? percent(untreated)
    : `${percent(untreated)} untreated, ${percent(asTreated)} as treated`
