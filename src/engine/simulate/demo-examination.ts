import { ageYears as ageYearsOn } from "../calendar.js"
import type { CalendarDate, Eye, EyeExamination, Symptom, Treatment, Visit } from "../course.js"
import { EYES } from "../course.js"
import type { Scenario } from "./demo-scenarios.js"
import type { Random } from "./random.js"

/** A visit of the plan: months since the first full examination, and what it is for. */
export interface PlannedVisit {
  readonly month: number
  readonly date: CalendarDate
  readonly kind: "glasses" | "review" | "check"
}

/** What stays with a child from visit to visit. */
export interface Habits {
  readonly photopicMm: number
  /** How much wider in dim light. */
  readonly widerInDimLightMm: number
  readonly accommodationD: number
  readonly feelsLight: boolean
}

export const habitsOf = (random: Random): Habits => ({
  photopicMm: 3.6 + 0.4 * random.normal(),
  widerInDimLightMm: 1.9 + 0.2 * random.normal(),
  accommodationD: random.normal(),
  feelsLight: random.uniform() < 0.3,
})

/** What is looked at on a visit. Lengths and refractions are left at zero for the growth model to fill. */
export function examination({
  visit: { date, kind, month },
  born,
  scenario,
  treatments,
  habits,
  random,
}: {
  visit: PlannedVisit
  born: CalendarDate
  scenario: Scenario
  treatments: readonly Treatment[]
  habits: Habits
  random: Random
}): Visit {
  if (kind === "glasses") {
    const refraction = { sphere: 0, cycloplegic: false, method: "subjective" } as const
    return { date, right: { refraction }, left: { refraction }, from: "old glasses" }
  }
  const drops = treatments.find((t) => t.kind === "atropine" && t.from <= date && (!t.to || date < t.to))
  const strength = drops?.concentrationPercent ?? 0
  const sensitive = scenario.story === "light-sensitivity" && strength > 0
  const everDrops = treatments.some((treatment) => treatment.kind === "atropine")
  const ageYears = ageYearsOn({ born, on: date })
  const grows = kind !== "check"
  const eyes = EYES.map((eye): readonly [Eye, EyeExamination] => [
    eye,
    {
      ...(grows && !(eye === "left" && scenario.noLeftLength)
        ? { axialLength: { mm: 0, readings: 5, ...instrument(scenario, month) } }
        : {}),
      ...(grows ? { refraction: { sphere: 0, cycloplegic: true, method: "autorefraction" as const } } : {}),
      ...(everDrops || month === 0 ? comfort({ strength, sensitive, ageYears, habits, random }) : {}),
      acuity: {
        distanceLogMAR: hundredths(Math.max(-0.1, 0.02 * Math.round(1.5 * random.normal()))),
        nearLogMAR: hundredths(0.02 * Math.round(1.5 + random.normal() + 15 * strength)),
      },
    },
  ])
  return { date, ...Object.fromEntries(eyes), symptoms: symptoms({ strength, sensitive, habits, random }) }
}

function instrument(scenario: Scenario, month: number) {
  const { firstInstrument, otherInstrumentFromMonth } = scenario
  const other = firstInstrument === "Biometer A" ? "Biometer B" : "Biometer A"
  const now = month < otherInstrumentFromMonth ? firstInstrument : other
  return now === "ultrasound"
    ? ({ method: "ultrasound" } as const)
    : ({ method: "optical-biometry", device: now } as const)
}

/** Invented, and only plausible: a wider pupil and less accommodation the stronger the drop. */
function comfort({
  strength,
  sensitive,
  ageYears,
  habits,
  random,
}: {
  strength: number
  sensitive: boolean
  ageYears: number
  habits: Habits
  random: Random
}): Pick<EyeExamination, "pupil" | "accommodation"> {
  const share = Math.sqrt(strength / 0.05)
  const wider = (sensitive ? 2 : 0.9) * share
  const lost = (sensitive ? 4 : 1.6) * share
  const dioptres = 15.5 - 0.3 * ageYears + habits.accommodationD - lost + 0.3 * random.normal()
  return {
    pupil: {
      photopic: tenths(habits.photopicMm + wider + 0.1 * random.normal()),
      mesopic: tenths(habits.photopicMm + habits.widerInDimLightMm + 0.6 * wider + 0.1 * random.normal()),
    },
    accommodation: { dioptres: Math.round(4 * dioptres) / 4, method: "push-up" },
  }
}

function symptoms({
  strength,
  sensitive,
  habits,
  random,
}: {
  strength: number
  sensitive: boolean
  habits: Habits
  random: Random
}): readonly Symptom[] {
  if (sensitive) {
    return [
      { kind: "light-sensitivity", grade: 2 },
      { kind: "near-blur", grade: 1 },
    ]
  }
  if (strength >= 0.02 && habits.feelsLight) return [{ kind: "light-sensitivity", grade: 1 }]
  return strength > 0 && random.uniform() < 0.06 ? [{ kind: "stinging", grade: 1 }] : []
}

const tenths = (value: number): number => Math.round(10 * value) / 10
const hundredths = (value: number): number => Math.round(100 * value) / 100
