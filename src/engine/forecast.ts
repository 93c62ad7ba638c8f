import type { Evidence } from "../evidence/types.js"
import type { EyeForecast, Fan, Forecast, PracticeSettings } from "./assessment.js"
import { ageYears } from "./calendar.js"
import type { CalendarDate, Course } from "./course.js"
import { EYES } from "./course.js"
import type { LengthTerm } from "./growth/child-model.js"
import { eyeIndex, type Observation } from "./growth/observations.js"
import { distributionOf, type Scenario } from "./growth/posterior.js"
import { refusal, type Study, type StudyInput, study } from "./growth/study.js"
import type { TreatmentColumn } from "./growth/treatment-columns.js"
import { type Mixture, mixtureCdf, mixtureQuantile } from "./numeric/mixture.js"
import { normalCdf } from "./numeric/normal.js"
import { sphericalEquivalent } from "./optics/spherical-equivalent.js"
import { doubtfulFigures, inDoubt } from "./response/doubtful-figures.js"
import { say } from "./say.js"
import { defaultSettings } from "./settings.js"

export interface ForecastInput {
  readonly course: Course
  readonly asOf: CalendarDate
  readonly evidence: Evidence
  readonly toAgeYears: number
  readonly settings?: PracticeSettings
}

const STEP_YEARS = 0.25
/** The marks of the question "how long, how myopic, by 18?" (design, section 4). */
const LONG_EYE_MM = 26
const HIGH_MYOPIA_D = -6
const BY_AGE_YEARS = 18

/**
 * Where the eyes go, from the last length to an age: without treatment from `asOf` on, and with the treatment of
 * that day carried on as it is. Quantiles in mm at quarter years. The fan holds what this child may do: pace,
 * effect, wobble; not the doubt about the natural curve itself, which the notes name.
 */
export function forecast({
  course,
  asOf,
  evidence,
  toAgeYears,
  settings = defaultSettings,
}: ForecastInput): Forecast {
  const input = { course, asOf, evidence, settings }
  const nothing = { asOf, eyes: {}, chance26mmBy18: null, chanceMinus6DBy18: null }
  const refused = refusal(input) ?? ageRefusal(input, toAgeYears)
  if (refused !== null) return { ...nothing, refused, notes: [] }
  const child = study(input)
  if (child.myopia === "not-myopic") {
    return {
      ...nothing,
      refused: say("this child is not myopic: no forecast from untreated myopia is made"),
      notes: [],
    }
  }
  if (child.lengths.length === 0) {
    return {
      ...nothing,
      refused: say("no length has been measured, so there is nothing to start from"),
      notes: [],
    }
  }
  const stopped: Scenario = { treatmentEndsAge: child.ageYears }
  const eyes = Object.fromEntries(
    EYES.flatMap((eye): [string, EyeForecast][] => {
      const last = child.lengths.findLast((figure) => figure.eye === eyeIndex(eye))
      if (!last) return []
      const ages = gridOf(Math.max(last.ageYears, child.ageYears), toAgeYears)
      return [
        [eye, { ages, untreated: fan(child, last, ages, stopped), asTreated: fan(child, last, ages, {}) }],
      ]
    }),
  )
  return {
    asOf,
    eyes,
    chance26mmBy18: {
      untreated: longEyeChance(child, stopped),
      asTreated: longEyeChance(child, {}),
    },
    chanceMinus6DBy18: highMyopiaChances(child, stopped),
    notes: notesOf(child),
  }
}

function ageRefusal({ course, asOf, evidence }: StudyInput, toAgeYears: number): string | null {
  const oldest = evidence.growth.values.oldestAgeYears.value
  if (toAgeYears > oldest)
    return say("forecasts end at {oldest} years; {asked} was asked for", { oldest, asked: toAgeYears })
  const age = ageYears({ born: course.child.born, on: asOf })
  // On the day of the oldest age there is nothing left to forecast, and nothing wrong with asking.
  return toAgeYears >= Math.min(age, oldest)
    ? null
    : say("a forecast looks ahead: this child is past {years} years on {asOf}", { years: toAgeYears, asOf })
}

function gridOf(from: number, to: number): number[] {
  const steps = Math.max(1, Math.ceil((to - from) / STEP_YEARS - 1e-9))
  return Array.from({ length: steps + 1 }, (_, i) =>
    i === steps ? Math.max(to, from) : from + i * STEP_YEARS,
  )
}

function lengthAt(child: Study, eye: 0 | 1, age: number, scenario: Scenario): Mixture {
  return distributionOf(child.posterior, [{ eye, ageYears: age, coefficient: 1 }], { scenario })
}

function fan(child: Study, last: Observation, ages: readonly number[], scenario: Scenario): Fan {
  const at = ages.map((age) => lengthAt(child, last.eye, age, scenario))
  const line = (p: number) => at.map((mixture) => mixtureQuantile(mixture, p))
  return { p5: line(0.05), p25: line(0.25), p50: line(0.5), p75: line(0.75), p95: line(0.95) }
}

/** The chance of the likelier eye, usually the longer one. */
function longEyeChance(child: Study, scenario: Scenario): number {
  const eyes = [...new Set(child.lengths.map((figure) => figure.eye))]
  return Math.max(
    ...eyes.map((eye) => 1 - mixtureCdf(lengthAt(child, eye, BY_AGE_YEARS, scenario), LONG_EYE_MM)),
  )
}

/** From the last refraction of the more myopic eye, by growth still to come times dioptres per mm. */
function highMyopiaChances(child: Study, stopped: Scenario): Forecast["chanceMinus6DBy18"] {
  const { course, asOf, evidence } = child
  const { dioptresPerMm, subjectiveSdD } = evidence.growth.values
  const seen = course.visits
    .filter((visit) => visit.date <= asOf)
    .toSorted((a, b) => (a.date < b.date ? -1 : 1))
  const eyes = EYES.flatMap((eye) => {
    const visit = seen.findLast((v) => v[eye]?.refraction)
    const measured = child.lengths.some((figure) => figure.eye === eyeIndex(eye))
    if (!visit?.[eye]?.refraction || !measured) return []
    const fromAge = Math.max(ageYears({ born: course.child.born, on: visit.date }), child.model.originAge)
    return [{ eye: eyeIndex(eye), fromAge, d: sphericalEquivalent(visit[eye].refraction) }]
  }).sort((a, b) => a.d - b.d)
  const worst = eyes[0]
  if (!worst) return null
  const chance = (scenario: Scenario): number => {
    const terms: LengthTerm[] = [
      { eye: worst.eye, ageYears: BY_AGE_YEARS, coefficient: 1 },
      { eye: worst.eye, ageYears: worst.fromAge, coefficient: -1 },
    ]
    const { weights, means, sds } = distributionOf(child.posterior, terms, { scenario })
    return weights.reduce((sum, weight, i) => {
      const mean = worst.d - dioptresPerMm.value * (means[i] as number)
      const sd = Math.hypot(
        subjectiveSdD.value,
        dioptresPerMm.value * (sds[i] as number),
        (dioptresPerMm.sd ?? 0) * (means[i] as number),
      )
      return sum + weight * normalCdf((HIGH_MYOPIA_D - mean) / sd)
    }, 0)
  }
  return { untreated: chance(stopped), asTreated: chance({}) }
}

function notesOf(child: Study): string[] {
  const { oldestFittedAgeYears } = child.evidence.growth.values
  const doubt = inDoubt(child, doubtfulFigures(child))
  const notes = [
    ...(doubt === null ? [] : [say("{doubt}: check it before this forecast is used", { doubt })]),
    say("beyond {years} years the natural curve is run on from younger ages", {
      years: oldestFittedAgeYears.value,
    }),
    say("the fan holds what this child may do, not the doubt about the average curve"),
  ]
  if (child.tested && child.tested.endAge > child.ageYears) {
    notes.push(
      say(
        "as treated: the same treatment {nights, select, every {every night} other {on as many nights as so far}} to that age; no trial lasted so long, and effects tend to fade",
        { nights: everyNight(child.tested) ? "every" : "some" },
      ),
    )
  }
  return notes
}

const everyNight = ({ exposures }: TreatmentColumn): boolean =>
  exposures.every(({ toAge, share }) => toAge !== Number.POSITIVE_INFINITY || share === 1)
