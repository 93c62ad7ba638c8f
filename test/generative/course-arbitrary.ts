import * as fc from "fast-check"
import { addDays } from "../../src/engine/calendar.js"
import type {
  CalendarDate,
  Consent,
  Course,
  EyeExamination,
  Supply,
  Treatment,
  Visit,
} from "../../src/engine/course.js"

/**
 * Any sound course, in the form `readCourse` gives it: visits by date, no nulls, axes above 0 and up to 180.
 * Figures keep to what a child could have, so the engine may be asked about every course made here.
 */

const stepped = ({ low, high, step }: { low: number; high: number; step: number }): fc.Arbitrary<number> =>
  fc
    .integer({ min: Math.round(low / step), max: Math.round(high / step) })
    // Adding 0 turns -0 into 0, which JSON cannot tell apart.
    .map((count) => Number((count * step).toFixed(4)) + 0)

/** Keys that happen to be absent are left out and never undefined. */
const maybe = <T>(arbitraries: { [Key in keyof T]: fc.Arbitrary<T[Key]> }): fc.Arbitrary<Partial<T>> =>
  fc.record(arbitraries, { requiredKeys: [] }) as fc.Arbitrary<Partial<T>>

const name = fc.stringMatching(/^[A-Za-z0-9 äß眼-]{1,20}$/)

const axialLength = fc.record(
  {
    mm: stepped({ low: 20, high: 29, step: 0.01 }),
    readings: fc.integer({ min: 1, max: 20 }),
    method: fc.constantFrom("optical-biometry" as const, "ultrasound" as const),
    device: name,
    signalToNoise: stepped({ low: 1, high: 400, step: 0.1 }),
    sdMm: stepped({ low: 0, high: 0.2, step: 0.001 }),
    each: fc.array(
      fc.record(
        {
          mm: stepped({ low: 20, high: 29, step: 0.01 }),
          signalToNoise: stepped({ low: 1, high: 400, step: 0.1 }),
          byHand: fc.boolean(),
        },
        { requiredKeys: ["mm"] },
      ),
      { minLength: 1, maxLength: 4 },
    ),
  },
  { requiredKeys: ["mm"] },
)

const sphere = stepped({ low: -9, high: 4, step: 0.25 })
const refractionDetails = {
  cycloplegic: fc.boolean(),
  method: fc.constantFrom("autorefraction" as const, "subjective" as const, "retinoscopy" as const),
  vertexDistanceMm: stepped({ low: 0, high: 15, step: 0.5 }),
  device: name,
}
const refraction = fc.oneof(
  fc.record({ sphere, ...refractionDetails }, { requiredKeys: ["sphere"] }),
  fc.record(
    {
      sphere,
      cylinder: stepped({ low: -4, high: 0, step: 0.25 }),
      axis: fc.integer({ min: 1, max: 180 }),
      ...refractionDetails,
    },
    { requiredKeys: ["sphere", "cylinder", "axis"] },
  ),
)

const eyeExamination: fc.Arbitrary<EyeExamination> = maybe({
  axialLength,
  refraction,
  otherRefractions: fc.array(refraction, { minLength: 1, maxLength: 2 }),
  spectaclesWorn: fc.record(
    { sphere, addD: stepped({ low: 0, high: 3, step: 0.25 }), prism: name },
    { requiredKeys: ["sphere"] },
  ),
  lensStatus: fc.constantFrom("phakic" as const, "pseudophakic" as const),
  dilation: fc.record(
    {
      dilated: fc.boolean(),
      pupilMm: stepped({ low: 2, high: 9, step: 0.5 }),
      drops: fc.array(
        fc.record(
          {
            drop: fc.constantFrom("cyclopentolate" as const, "tropicamide" as const, "other" as const),
            concentrationPercent: fc.constantFrom(0.5, 1, 2.5),
          },
          { requiredKeys: ["drop"] },
        ),
        { minLength: 1, maxLength: 2 },
      ),
    },
    { requiredKeys: ["dilated"] },
  ),
  corneaRadius: fc
    .tuple(
      stepped({ low: 7.2, high: 8.6, step: 0.01 }),
      stepped({ low: 0, high: 0.4, step: 0.01 }),
      maybe({
        flatAxis: fc.integer({ min: 1, max: 180 }),
        steepAxis: fc.integer({ min: 1, max: 180 }),
        flatD: stepped({ low: 39, high: 47, step: 0.01 }),
        steepD: stepped({ low: 39, high: 47, step: 0.01 }),
        device: name,
      }),
    )
    .map(([flat, difference, details]) => ({
      flat,
      steep: Number((flat - difference).toFixed(2)),
      ...details,
    })),
  pupil: maybe({
    photopic: stepped({ low: 2, high: 6, step: 0.1 }),
    mesopic: stepped({ low: 4, high: 8, step: 0.1 }),
  }),
  accommodation: fc.record(
    {
      dioptres: stepped({ low: 2, high: 18, step: 0.5 }),
      method: fc.constantFrom("push-up" as const, "retinoscopy" as const),
    },
    { requiredKeys: ["dioptres"] },
  ),
  acuity: maybe({
    distanceLogMAR: stepped({ low: -0.2, high: 0.8, step: 0.02 }),
    distanceCorrection: fc.constantFrom("uncorrected" as const, "worn" as const, "best" as const),
    nearLogMAR: stepped({ low: -0.2, high: 0.8, step: 0.02 }),
  }),
  intraocularPressure: fc.record({ mmHg: fc.integer({ min: 8, max: 24 }) }),
})

const symptom = fc.record({
  kind: fc.constantFrom(
    ...(["light-sensitivity", "near-blur", "stinging", "redness", "itching", "headache", "other"] as const),
  ),
  grade: fc.constantFrom(0 as const, 1 as const, 2 as const, 3 as const),
})

const visitWithoutDate = maybe({
  right: eyeExamination,
  left: eyeExamination,
  symptoms: fc.array(symptom, { maxLength: 3 }),
  from: fc.constantFrom("old glasses", "referring practice"),
  sources: fc.array(
    fc.record(
      {
        kind: fc.constantFrom("dicom" as const, "fhir" as const, "table" as const, "course-file" as const),
        id: name,
        device: name,
      },
      { requiredKeys: ["kind", "id"] },
    ),
    { minLength: 1, maxLength: 2 },
  ),
})

const DAYS_OF_CHILDHOOD = { min: Math.round(5 * 365.25), max: Math.round(16 * 365.25) }
const concentrationPercent = fc.constantFrom(0.01, 0.025, 0.05, 0.1)

function visits(born: CalendarDate): fc.Arbitrary<Visit[]> {
  return fc
    .uniqueArray(fc.tuple(fc.integer(DAYS_OF_CHILDHOOD), visitWithoutDate), {
      maxLength: 12,
      selector: ([days]) => days,
    })
    .map((list) =>
      list
        .toSorted(([a], [b]) => a - b)
        .map(([days, visit]) => ({ date: addDays(born, days), ...visit }) as Visit),
    )
}

/** Atropine in strengths one after the other, the last perhaps still going on, and perhaps glasses beside it. */
function treatments(born: CalendarDate): fc.Arbitrary<Treatment[]> {
  const days = fc.uniqueArray(fc.integer(DAYS_OF_CHILDHOOD), { minLength: 2, maxLength: 5 })
  const strengths = fc.array(concentrationPercent, { minLength: 4, maxLength: 4 })
  return fc
    .tuple(days, strengths, fc.boolean(), fc.option(fc.integer(DAYS_OF_CHILDHOOD), { nil: null }))
    .map(([unsorted, strength, goesOn, glassesFrom]) => {
      const bounds = unsorted.toSorted((a, b) => a - b)
      const drops = bounds.slice(0, -1).map((from, index): Treatment => {
        const last = index === bounds.length - 2
        return {
          from: addDays(born, from),
          ...(last && goesOn ? {} : { to: addDays(born, bounds[index + 1]!) }),
          kind: "atropine",
          concentrationPercent: strength[index]!,
        }
      })
      const glasses: Treatment[] =
        glassesFrom === null ? [] : [{ from: addDays(born, glassesFrom), kind: "lenslet-spectacles" }]
      return [...drops, ...glasses]
    })
}

function supplies(born: CalendarDate): fc.Arbitrary<Supply[]> {
  const bottle = fc
    .record({
      day: fc.integer(DAYS_OF_CHILDHOOD),
      wait: fc.integer({ min: 0, max: 20 }),
      details: maybe({
        concentrationPercent,
        volumeMl: fc.constantFrom(2.5, 5, 10),
        lot: name,
      }),
    })
    .map(
      ({ day, wait, details }): Supply => ({
        dispensed: addDays(born, day),
        opened: addDays(born, day + wait),
        beyondUse: addDays(born, day + wait + 30),
        ...details,
      }),
    )
  // A lot has one strength, so that no two bottles here share one.
  return fc
    .array(bottle, { maxLength: 6 })
    .map((bottles) =>
      bottles.map((supply, index) =>
        "lot" in supply ? { ...supply, lot: `${supply.lot} ${index}` } : supply,
      ),
    )
}

function consents(born: CalendarDate): fc.Arbitrary<Consent[]> {
  return fc.array(
    fc.tuple(fc.integer(DAYS_OF_CHILDHOOD), concentrationPercent).map(([days, strength]) => ({
      date: addDays(born, days),
      covers: { kind: "atropine" as const, concentrationPercent: strength },
    })),
    { maxLength: 3 },
  )
}

/** A sound course of an invented child. */
export const courseArbitrary: fc.Arbitrary<Course> = fc
  .integer({ min: 0, max: 4500 })
  .map((days) => addDays("2006-01-01", days))
  .chain((born) =>
    fc.record(
      {
        lengthwise: fc.constant(1 as const),
        child: fc.record(
          {
            id: name,
            born: fc.constant(born),
            sex: fc.constantFrom("female" as const, "male" as const),
            ancestry: fc.constantFrom(
              ...(["east-asian", "european", "south-asian", "african", "other", "unstated"] as const),
            ),
            myopicParents: fc.constantFrom(0 as const, 1 as const, 2 as const),
          },
          { requiredKeys: ["born", "sex"] },
        ),
        practice: maybe({ latitude: stepped({ low: -60, high: 65, step: 0.5 }) }),
        visits: visits(born),
        treatments: treatments(born),
        supplies: supplies(born),
        consents: consents(born),
      },
      { requiredKeys: ["lengthwise", "child", "visits"] },
    ),
  )
  // Records come without a prototype; a course is made of plain objects.
  .map((course) => structuredClone(course) as Course)
