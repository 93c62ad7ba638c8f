import * as fc from "fast-check"
import { addDays } from "../../src/engine/calendar.js"
import {
  ACCOMMODATION_METHODS,
  ACUITY_CORRECTIONS,
  ANCESTRIES,
  ANSWERS,
  ASSENTS,
  type CalendarDate,
  CONSENT_FORMS,
  type Course,
  DECISION_KINDS,
  EYE_DROPS,
  LENGTH_METHODS,
  LENS_STATUSES,
  REFRACTION_METHODS,
  RELATEDNESS,
  SERIOUSNESS,
  SEXES,
  SOURCE_KINDS,
  SYMPTOM_KINDS,
  TREATMENT_KINDS,
} from "../../src/engine/course.js"
import { type Limit, limits } from "../../src/interop/course/limits.js"
import { courseFrom } from "../../src/interop/course/read-course.js"

/**
 * Any course that the course file allows, each of its fields filled in some of them, with texts and figures that other
 * formats have trouble with. For round trips; the engine may find such a child absurd. `full-course-arbitrary.test.ts`
 * holds it against the schema, so that a field that is added there is made here.
 */

/** Texts that are lost or changed somewhere: blanks, none at all, half a pair, names of an object's own. */
const AWKWARD = [
  "",
  " ",
  " x ",
  "a\u00a0b",
  "眼　科",
  "\ud83d",
  "\u0000",
  "two\n\tlines",
  "__proto__",
  "1.0",
  "😀",
]
const text = (maxLength = 200): fc.Arbitrary<string> =>
  fc
    .oneof(
      { weight: 4, arbitrary: fc.stringMatching(/^[A-Za-zäß眼0-9-]{1,12}( [A-Za-z]{1,8})?$/) },
      { weight: 1, arbitrary: fc.constantFrom(...AWKWARD) },
      { weight: 1, arbitrary: fc.string({ unit: "binary", maxLength: Math.min(maxLength, 40) }) },
    )
    .map((each) => each.slice(0, maxLength))
const words = text(2000).map((each) => (each.trim() === "" ? `x${each}` : each))

const figure = (limit: Limit): fc.Arbitrary<number> => {
  const { low, high, whole, aboveLow } = limit
  if (whole) return fc.integer({ min: low, max: high })
  const steps = fc.integer({ min: Math.ceil(low * 100), max: Math.floor(high * 100) }).map((n) => n / 100)
  const any = fc.double({ min: low, max: high, noNaN: true })
  // Adding 0 turns -0 into 0, which JSON cannot tell apart.
  return fc
    .oneof(steps, any)
    .filter((n) => !aboveLow || n > low)
    .map((n) => n + 0)
}
/** 0 is read as 180. */
const axis = fc.oneof(fc.integer({ min: 1, max: 180 }), fc.constantFrom(12.5, 0.25, 179.999))
const percent = figure(limits.concentrationPercent)

/** Each key that is not required may be absent; it is never undefined. */
const some = <T, K extends keyof T>(
  arbitraries: { [Key in keyof T]: fc.Arbitrary<T[Key]> },
  ...requiredKeys: readonly K[]
) => fc.record(arbitraries, { requiredKeys: [...requiredKeys] as never, noNullPrototype: true })

const listOf = <T>(item: fc.Arbitrary<T>, maxLength = 3) => fc.array(item, { maxLength })
const oneOf = <const T extends readonly unknown[]>(values: T) =>
  fc.constantFrom(...(values as readonly T[number][]))

const lens = { sphere: figure(limits.sphereD), cylinder: figure(limits.cylinderD), axis }
/** A cylinder has an axis. */
const withAxis = <T extends { cylinder?: number; axis?: number }>(made: T): T =>
  made.cylinder !== undefined && made.axis === undefined ? { ...made, axis: 90 } : made

const refraction = some(
  {
    ...lens,
    cycloplegic: fc.boolean(),
    method: oneOf(REFRACTION_METHODS),
    vertexDistanceMm: figure(limits.vertexDistanceMm),
    device: text(),
  },
  "sphere",
).map(withAxis)

const eye = some({
  axialLength: some(
    {
      mm: figure(limits.axialLengthMm),
      readings: figure(limits.readings),
      method: oneOf(LENGTH_METHODS),
      device: text(),
      signalToNoise: figure(limits.signalToNoise),
      sdMm: figure(limits.sdMm),
      each: listOf(
        some(
          {
            mm: figure(limits.axialLengthMm),
            signalToNoise: figure(limits.signalToNoise),
            byHand: fc.boolean(),
          },
          "mm",
        ),
      ),
    },
    "mm",
  ),
  refraction,
  otherRefractions: listOf(refraction),
  spectaclesWorn: some({ ...lens, addD: figure(limits.addD), prism: text() }, "sphere").map(withAxis),
  lensStatus: oneOf(LENS_STATUSES),
  dilation: some(
    {
      dilated: fc.boolean(),
      pupilMm: figure(limits.dilatedPupilMm),
      drops: listOf(
        some({ drop: oneOf(EYE_DROPS), concentrationPercent: figure(limits.dropPercent) }, "drop"),
      ),
    },
    "dilated",
  ),
  corneaRadius: some(
    {
      flat: figure(limits.corneaRadiusMm),
      steep: figure(limits.corneaRadiusMm),
      flatAxis: axis,
      steepAxis: axis,
      flatD: figure(limits.corneaPowerD),
      steepD: figure(limits.corneaPowerD),
      device: text(),
    },
    "flat",
    "steep",
  ),
  pupil: some({ photopic: figure(limits.pupilMm), mesopic: figure(limits.pupilMm) }),
  accommodation: some(
    { dioptres: figure(limits.accommodationD), method: oneOf(ACCOMMODATION_METHODS) },
    "dioptres",
  ),
  acuity: some({
    distanceLogMAR: figure(limits.acuityLogMAR),
    distanceCorrection: oneOf(ACUITY_CORRECTIONS),
    nearLogMAR: figure(limits.acuityLogMAR),
  }),
  intraocularPressure: fc.record({ mmHg: figure(limits.intraocularPressureMmHg) }, { noNullPrototype: true }),
})

const LIFE = { min: 0, max: 6500 }

const visits = (born: CalendarDate) =>
  fc
    .uniqueArray(
      fc.tuple(
        fc.integer(LIFE),
        some({
          right: eye,
          left: eye,
          symptoms: listOf(some({ kind: oneOf(SYMPTOM_KINDS), grade: oneOf([0, 1, 2, 3]) }, "kind", "grade")),
          answers: fc.uniqueArray(
            some(
              {
                question: words.map((each) => each.slice(0, 60)),
                answer: oneOf(ANSWERS),
                value: figure(limits.answerValue),
                note: text(2000),
              },
              "question",
              "answer",
            ),
            { maxLength: 3, selector: ({ question }) => question },
          ),
          from: fc.oneof(text(), fc.constant("old glasses")),
          sources: listOf(some({ kind: oneOf(SOURCE_KINDS), id: text(), device: text() }, "kind", "id")),
        }),
      ),
      { maxLength: 4, selector: ([day]) => day },
    )
    .map((made) =>
      made.toSorted(([a], [b]) => a - b).map(([day, visit]) => ({ date: addDays(born, day), ...visit })),
    )

/** A span of days from a birth; `to` is after `from`. */
const span = (born: CalendarDate) =>
  fc
    .tuple(fc.integer(LIFE), fc.integer({ min: 1, max: 400 }))
    .map(([day, length]) => ({ from: addDays(born, day), to: addDays(born, day + length), length }))

const day = (born: CalendarDate) => fc.integer(LIFE).map((days) => addDays(born, days))

/** One of each kind at most, so that none overlaps another of its kind. */
const treatments = (born: CalendarDate) =>
  fc.uniqueArray(
    fc
      .tuple(
        oneOf(TREATMENT_KINDS),
        span(born),
        fc.boolean(),
        percent,
        some({ eye: oneOf(["right", "left"]), nightsPerWeek: figure(limits.nightsPerWeek) }),
        fc.boolean(),
      )
      .map(([kind, { from, to }, ends, concentrationPercent, { eye: one, nightsPerWeek }, hasStrength]) => ({
        from,
        ...(ends ? { to } : {}),
        kind,
        ...(kind === "atropine" || hasStrength ? { concentrationPercent } : {}),
        ...(one === undefined ? {} : { eye: one }),
        ...(kind === "atropine" && nightsPerWeek !== undefined ? { nightsPerWeek } : {}),
      })),
    { maxLength: 4, selector: ({ kind }) => kind },
  )

const supplies = (born: CalendarDate) =>
  listOf(
    fc.tuple(
      span(born),
      some({
        dispensed: fc.constant(true),
        opened: fc.constant(true),
        beyondUse: day(born),
        concentrationPercent: percent,
        volumeMl: figure(limits.volumeMl),
        lot: text(190),
        pharmacy: text(),
        preserved: fc.boolean(),
      }),
    ),
  ).map((bottles) =>
    bottles.map(([{ from, to }, { dispensed, opened, lot, ...rest }], index) => ({
      ...(dispensed ? { dispensed: from } : {}),
      ...(opened ? { opened: to } : {}),
      // A lot has one strength.
      ...(lot === undefined ? {} : { lot: `${lot}${index}` }),
      ...rest,
    })),
  )

const choice = some({ kind: oneOf(TREATMENT_KINDS), concentrationPercent: percent }, "kind")

const consents = (born: CalendarDate) =>
  listOf(
    fc
      .tuple(
        span(born),
        fc.constantFrom(null, 0, 1),
        some(
          {
            covers: choice,
            by: some({ name: text(), relation: text() }),
            form: oneOf(CONSENT_FORMS),
            wording: some(
              {
                id: text(),
                version: text(),
                language: text(),
                sha256: fc.string({
                  unit: fc.constantFrom(..."0123456789abcdef"),
                  minLength: 64,
                  maxLength: 64,
                }),
              },
              "id",
              "version",
            ),
            assent: oneOf(ASSENTS),
          },
          "covers",
        ),
      )
      .map(([{ from, to }, until, rest]) => ({
        date: from,
        ...rest,
        // Withdrawn on the day it was given, too.
        ...(until === null ? {} : { until: until === 0 ? from : to }),
      })),
  )

const programme = (born: CalendarDate) => ({
  missedNights: listOf(
    fc
      .tuple(span(born), fc.nat())
      .map(([{ from, to, length }, n]) => ({ from, to, nights: 1 + (n % (length + 1)) })),
  ),
  decisions: listOf(
    some(
      {
        date: day(born),
        kind: oneOf(DECISION_KINDS),
        reason: words,
        treatment: choice,
        offered: listOf(text()),
        figures: listOf(fc.record({ label: text(), value: text() }, { noNullPrototype: true })),
      },
      "date",
      "kind",
      "reason",
    ),
  ),
  concerns: listOf(
    fc
      .tuple(
        span(born),
        fc.boolean(),
        some(
          {
            kind: words.map((each) => each.slice(0, 200)),
            what: words,
            owner: text(),
            seriousness: oneOf(SERIOUSNESS),
            relatedness: oneOf(RELATEDNESS),
            adverseEvent: fc.boolean(),
            outcome: words,
          },
          "kind",
          "what",
        ),
      )
      .map(([{ from, to }, isClosed, rest]) => ({
        opened: from,
        ...rest,
        ...(isClosed && rest.outcome !== undefined ? { closed: to } : {}),
      })),
  ),
  orders: listOf(
    fc
      .tuple(
        span(born),
        fc.constantFrom("received" as const, "cancelled" as const, null),
        some(
          {
            concentrationPercent: percent,
            bottles: figure(limits.bottles),
            volumeMl: figure(limits.volumeMl),
            stockPercent: figure(limits.stockPercent),
            pharmacy: text(),
            preserved: fc.boolean(),
            confirmed: fc.constant(true),
            override: text(2000),
          },
          "concentrationPercent",
          "bottles",
          "volumeMl",
        ),
      )
      .map(([{ from, to }, end, { confirmed, ...rest }]) => ({
        date: from,
        ...rest,
        ...(confirmed ? { confirmed: from } : {}),
        ...(end === null ? {} : { [end]: to }),
      })),
  ),
  explanations: listOf(some({ date: day(born), to: text() }, "date")),
  payments: listOf(
    some(
      {
        date: day(born),
        cents: figure(limits.cents),
        currency: fc.constantFrom("EUR", "JPY", "KWD"),
        what: text(),
      },
      "date",
      "cents",
      "currency",
    ),
  ),
})

const courseOfBirth = (born: CalendarDate) =>
  some(
    {
      lengthwise: fc.constant(1 as const),
      child: some(
        {
          id: text(),
          born: fc.constant(born),
          sex: oneOf(SEXES),
          ancestry: oneOf(ANCESTRIES),
          myopicParents: oneOf([0, 1, 2]),
          protocol: text(),
        },
        "born",
        "sex",
      ),
      practice: some({ latitude: figure(limits.latitudeDegrees) }),
      visits: visits(born),
      treatments: treatments(born),
      supplies: supplies(born),
      consents: consents(born),
      ...programme(born),
    },
    "lengthwise",
    "child",
    "visits",
  )

/** In the form in which `readCourse` gives it. */
export const fullCourseArbitrary: fc.Arbitrary<Course> = fc
  // Few births, since the arbitraries of a birth take long to make.
  .oneof(...["2004-02-29", "2009-12-31", "2012-07-01"].map(courseOfBirth))
  .map((made) => {
    const read = courseFrom(made)
    if ("problems" in read) throw new RangeError(`an unsound course was made: ${read.problems[0]?.message}`)
    return read.course
  })
