import { ageYears, dayNumber } from "../calendar.js"
import type { CalendarDate, Course, Visit } from "../course.js"
import { EYES } from "../course.js"
import { sphericalEquivalent } from "../optics/spherical-equivalent.js"
import { say } from "../say.js"
import { fixed, inDigits } from "../words.js"
import type { Option } from "./option-list.js"

/**
 * The regulator's criterion for starting the authorised product of 0.1 mg/mL, which is 0.01 % (evidence CD-036, source
 * clinical/EMA-2025-POS): at least 0.50 D a year, -0.5 to -6.0 D, 3 to 14 years.
 */
const AUTHORISED = {
  concentrationPercent: 0.01,
  progressionD: 0.5,
  leastMyopicD: -0.5,
  mostMyopicD: -6,
  youngestYears: 3,
  oldestYears: 14,
}
export const AUTHORISED_SOURCE = "clinical/EMA-2025-POS"
/** Common practice, no source: the strengths were studied for two years at these ages. */
const STUDIED = { youngestYears: 5, oldestYears: 12 }
/** Two refractions this far apart, in days, tell a yearly change (a choice of ours). */
const ABOUT_A_YEAR = { least: 270, most: 550 }
const DAYS_PER_YEAR = 365.25

/** What should be known of an option before anyone starts it in this child. Remarks, never a bar. */
export function startRemarks({
  option,
  course,
  asOf,
}: {
  readonly option: Option
  readonly course: Course
  readonly asOf: CalendarDate
}): readonly string[] {
  if (option.kind === "as-now") return []
  const drops = option.parts.find(({ kind }) => kind === "atropine")
  const age = ageYears({ born: course.child.born, on: asOf })
  const completed = Math.floor(age)
  return [
    ...(drops && (age < STUDIED.youngestYears || completed > STUDIED.oldestYears)
      ? [
          say(
            "the strengths were studied at {youngest} to {oldest} years of age (common practice, no source); this child is {age}",
            { youngest: STUDIED.youngestYears, oldest: STUDIED.oldestYears, age: completed },
          ),
        ]
      : []),
    ...(isHeldToRegulator(option) ? [authorisedRemark(course, asOf, completed)] : []),
    ...(option.parts.length > 1 && option.effect !== null
      ? [say("drops with an optical treatment: the evidence is promising but limited")]
      : []),
  ]
}

/** Whether what the regulator asks for is said beside an option. */
export const isHeldToRegulator = ({ kind, parts }: Pick<Option, "kind" | "parts">): boolean =>
  kind !== "as-now" &&
  parts.find((part) => part.kind === "atropine")?.concentrationPercent === AUTHORISED.concentrationPercent

function authorisedRemark(course: Course, asOf: CalendarDate, completed: number): string {
  const refracted = refractions(course, asOf)
  const last = refracted.at(-1)
  const yearly = yearlyChange(refracted)
  const misses = [
    ...(completed < AUTHORISED.youngestYears || completed > AUTHORISED.oldestYears
      ? [say("this child is {age}", { age: completed })]
      : []),
    ...(last === undefined
      ? [say("no refraction is recorded")]
      : last.d > AUTHORISED.leastMyopicD || last.d < AUTHORISED.mostMyopicD
        ? [say("this child has {power} D", { power: fixed(last.d) })]
        : []),
    ...(yearly === null
      ? [say("no two refractions about a year apart are recorded")]
      : -yearly < AUTHORISED.progressionD
        ? [say("this child changed by {power} D a year", { power: fixed(yearly) })]
        : []),
  ]
  return say(
    "a European regulator's criterion for starting its authorised {percent} % product: at least {progression} D a year, {least} to {most} D, {youngest} to {oldest} years; {answer}",
    {
      percent: inDigits(AUTHORISED.concentrationPercent),
      progression: fixed(AUTHORISED.progressionD),
      least: fixed(AUTHORISED.leastMyopicD),
      most: fixed(AUTHORISED.mostMyopicD),
      youngest: AUTHORISED.youngestYears,
      oldest: AUTHORISED.oldestYears,
      answer: misses.length === 0 ? say("met|criterion") : misses.join(", "),
    },
  )
}

interface Refracted {
  readonly date: CalendarDate
  /** Mean spherical equivalent of the eyes refracted. */
  readonly d: number
}

function refractions({ visits }: Pick<Course, "visits">, asOf: CalendarDate): readonly Refracted[] {
  return visits
    .filter(({ date }) => date <= asOf)
    .flatMap((visit: Visit) => {
      const values = EYES.flatMap((eye) => {
        const refraction = visit[eye]?.refraction
        return refraction ? [sphericalEquivalent(refraction)] : []
      })
      return values.length === 0
        ? []
        : [{ date: visit.date, d: values.reduce((sum, value) => sum + value, 0) / values.length }]
    })
    .toSorted((a, b) => (a.date < b.date ? -1 : 1))
}

function yearlyChange(refracted: readonly Refracted[]): number | null {
  const last = refracted.at(-1)
  if (!last) return null
  const before = refracted.findLast(({ date }) => {
    const days = dayNumber(last.date) - dayNumber(date)
    return days >= ABOUT_A_YEAR.least && days <= ABOUT_A_YEAR.most
  })
  if (!before) return null
  return ((last.d - before.d) * DAYS_PER_YEAR) / (dayNumber(last.date) - dayNumber(before.date))
}
