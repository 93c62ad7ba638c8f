import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { addDays, ageYears, dayNumber } from "../../src/engine/calendar.js"
import type { Course, EyeExamination, Visit } from "../../src/engine/course.js"
import { distributionOf } from "../../src/engine/growth/posterior.js"
import type { Study } from "../../src/engine/growth/study.js"
import { mixtureMean, mixtureQuantile } from "../../src/engine/numeric/mixture.js"
import { weighing } from "../../src/engine/response/finding.js"
import { growthState } from "../../src/engine/response/growth-state.js"
import { growthWindow } from "../../src/engine/response/growth-window.js"
import { measurementPlan } from "../../src/engine/simulate/plan.js"
import { randomFrom } from "../../src/engine/simulate/random.js"
import { virtualChild } from "../../src/engine/simulate/virtual-child.js"
import { evidence } from "../../src/evidence/index.js"
import { studyOf } from "../steady-child.js"

/** Virtual children of all kinds: age, ancestry, place, instruments, old glasses, missing eyes, irregular visits. */
const child = fc
  .record({
    seed: fc.integer({ min: 0, max: 1e6 }),
    sex: fc.constantFrom("female", "male"),
    ancestry: fc.constantFrom("east-asian", "european", "other"),
    startAgeYears: fc.double({ min: 8, max: 13, noNaN: true }),
    start: fc.constantFrom("2024-01-15", "2024-06-15", "2024-09-30"),
    latitude: fc.constantFrom(51.5, -33.9, 0),
    concentrationPercent: fc.constantFrom(0.01, 0.05, 0.03),
    method: fc.constantFrom("optical-biometry", "ultrasound"),
    visitMonths: fc.constantFrom([0, 6], [0, 6, 12, 18, 24], [0, 3, 11, 20, 36]),
    earlierGlasses: fc.subarray([-24, -18, -12, -6]),
    earlierLengths: fc.subarray([-24, -12]),
    secondInstrument: fc.boolean(),
    missing: fc.array(fc.tuple(fc.nat(8), fc.constantFrom("right", "left")), { maxLength: 2 }),
  })
  .map(({ seed, concentrationPercent, secondInstrument, missing, ...plan }) => {
    const planned = measurementPlan({
      ...plan,
      treatment: { kind: "atropine", concentrationPercent },
      jitterDays: (i) => ((seed + 7 * i) % 31) - 15,
    } as Parameters<typeof measurementPlan>[0])
    const half = Math.floor(planned.visits.length / 2)
    const visits = planned.visits.map((visit, i): Visit => {
      const device = secondInstrument && i > half ? "B" : "A"
      const named = (eye: EyeExamination | undefined): EyeExamination =>
        eye?.axialLength ? { ...eye, axialLength: { ...eye.axialLength, device } } : { ...eye }
      const { right, left, ...rest } = visit
      const gone = missing.filter(([place]) => place === i && i > 0).map(([, eye]) => eye)
      return {
        ...rest,
        ...(gone.includes("right") ? {} : { right: named(right) }),
        ...(gone.includes("left") ? {} : { left: named(left) }),
      }
    })
    return virtualChild({ plan: { ...planned, visits }, evidence, random: randomFrom(seed) }).course
  })

/** Every number that is read from the growth model: rates with their intervals, states, the likelihood ratio. */
function answers(study: Study) {
  const window = growthWindow(study)
  const born = study.course.child.born
  const rates = ([0, 1] as const).map((eye) => {
    const measured = study.lengths.some((figure) => figure.eye === eye)
    if (!window || !measured) return null
    const [from, to] = [window.from, window.to].map((date) => ageYears({ born, on: date })) as [
      number,
      number,
    ]
    const grown = distributionOf(study.posterior, [
      { eye, ageYears: to, coefficient: 1 / (to - from) },
      { eye, ageYears: from, coefficient: -1 / (to - from) },
    ])
    return [mixtureMean(grown), mixtureQuantile(grown, 0.025), mixtureQuantile(grown, 0.975)]
  })
  const { probabilities, mmPerYear } = growthState(study)
  return { rates, probabilities, mmPerYear, logRatio: weighing(study)?.logRatio ?? null }
}

/** Same shape and the same numbers, give or take. */
function expectSame(a: unknown, b: unknown, by: number): void {
  if (typeof a === "number" && typeof b === "number") {
    expect(Math.abs(a - b)).toBeLessThan(by)
  } else if (a === null || b === null || typeof a !== "object" || typeof b !== "object") {
    expect(a).toBe(b)
  } else {
    expect(Object.keys(a)).toEqual(Object.keys(b))
    for (const [key, value] of Object.entries(a)) expectSame(value, (b as Record<string, unknown>)[key], by)
  }
}

function expectShifted(a: Course, b: Course) {
  const [{ logRatio, ...shown }, { logRatio: before, ...shownBefore }] = [
    answers(studyOf(a)),
    answers(studyOf(b)),
  ]
  expectSame(shown, shownBefore, 0.003)
  expectSame(logRatio, before, 0.02)
}

const everyEye = (course: Course, change: (eye: EyeExamination) => EyeExamination): Course => ({
  ...course,
  visits: course.visits.map(({ right, left, ...visit }) => ({
    ...visit,
    ...(right ? { right: change(right) } : {}),
    ...(left ? { left: change(left) } : {}),
  })),
})
const RUNS = { numRuns: 60 }

describe("growth of any child", () => {
  // Starts are left open by SDs of 10 mm and 20 dioptres, so a shift is not quite nothing: 1.5 mm moved no rate by more than
  // 0.001 mm a year and no ratio by more than 0.9 per cent in 800 children.
  it("does not change in rate or ratio when a constant is added to all lengths", () => {
    fc.assert(
      fc.property(child, fc.double({ min: -1.5, max: 1.5, noNaN: true }), (course, mm) => {
        const longer = everyEye(course, (eye) =>
          eye.axialLength
            ? { ...eye, axialLength: { ...eye.axialLength, mm: eye.axialLength.mm + mm } }
            : eye,
        )
        expectShifted(longer, course)
      }),
      RUNS,
    )
  })

  it("does not change when a constant is added to all refractions of a myopic child", () => {
    fc.assert(
      fc.property(child, (course) => {
        const stronger = everyEye(course, (eye) =>
          eye.refraction
            ? { ...eye, refraction: { ...eye.refraction, sphere: eye.refraction.sphere - 1 } }
            : eye,
        )
        fc.pre(studyOf(course).myopia === "myopic")
        expectShifted(stronger, course)
      }),
      RUNS,
    )
  })

  it("mirrors when right and left are exchanged throughout", () => {
    fc.assert(
      fc.property(child, (course) => {
        const mirrored: Course = {
          ...course,
          visits: course.visits.map(({ right, left, ...visit }) => ({
            ...visit,
            ...(left ? { right: left } : {}),
            ...(right ? { left: right } : {}),
          })),
        }
        const [as, other] = [answers(studyOf(course)), answers(studyOf(mirrored))]
        expectSame({ ...other, rates: other.rates.toReversed() }, as, 1e-7)
      }),
      RUNS,
    )
  })

  it("does not depend on the order of the visits in the file", () => {
    fc.assert(
      fc.property(child, fc.infiniteStream(fc.nat(1000)), (course, keys) => {
        const shuffled = course.visits
          .map((visit) => ({ visit, key: keys.next().value as number }))
          .sort((a, b) => a.key - b.key)
          .map(({ visit }) => visit)
        expectSame(answers(studyOf({ ...course, visits: shuffled })), answers(studyOf(course)), 1e-9)
      }),
      RUNS,
    )
  })

  it("is the same with a treatment of each eye as with one of both", () => {
    fc.assert(
      fc.property(child, (course) => {
        const ofEach = (course.treatments ?? []).flatMap((treatment) => [
          { ...treatment, eye: "right" as const },
          { ...treatment, eye: "left" as const },
        ])
        expect(answers(studyOf({ ...course, treatments: ofEach }))).toEqual(answers(studyOf(course)))
      }),
      RUNS,
    )
  })

  it("mirrors with a treatment of one eye when right and left are exchanged throughout", () => {
    fc.assert(
      fc.property(child, (course) => {
        const one = (eye: "right" | "left"): Course => ({
          ...course,
          treatments: (course.treatments ?? []).map((treatment) => ({ ...treatment, eye })),
        })
        const mirrored: Course = {
          ...one("left"),
          visits: course.visits.map(({ right, left, ...visit }) => ({
            ...visit,
            ...(left ? { right: left } : {}),
            ...(right ? { left: right } : {}),
          })),
        }
        const [as, other] = [answers(studyOf(one("right"))), answers(studyOf(mirrored))]
        expectSame({ ...other, rates: other.rates.toReversed() }, as, 1e-7)
      }),
      RUNS,
    )
  })

  it("says nothing of drops that were missed every night, and the same of some missed as of a taper with as many", () => {
    fc.assert(
      fc.property(child, fc.integer({ min: 1, max: 6 }), (course, nightsPerWeek) => {
        const last = course.visits
          .map(({ date }) => date)
          .toSorted()
          .at(-1) as string
        const from = course.treatments?.[0]?.from as string
        fc.pre(from < last)
        const to = addDays(last, -1)
        const days = dayNumber(last) - dayNumber(from)
        const missed = (nights: number) => ({ ...course, missedNights: [{ from, to, nights }] })
        const { logRatio } = answers(studyOf(missed(days)))
        expectSame(logRatio, logRatio === null ? null : 0, 1e-9)
        const tapered = (course.treatments ?? []).map((treatment) => ({ ...treatment, nightsPerWeek }))
        const seen = answers(studyOf({ ...course, treatments: tapered }))
        expectSame(answers(studyOf(missed(days * (1 - nightsPerWeek / 7)))), seen, 1e-7)
      }),
      RUNS,
    )
  })

  it("is better known on the day of a visit with the visit than without it, by optical biometry", () => {
    fc.assert(
      fc.property(child, (course) => {
        const last = course.visits.at(-1) as Visit
        fc.pre(last.right?.axialLength?.method === "optical-biometry")
        const at = ageYears({ born: course.child.born, on: last.date })
        const width = (visits: readonly Visit[]) => {
          const study = studyOf({ ...course, visits }, last.date)
          fc.pre(study.lengths.some(({ eye }) => eye === 0))
          const length = distributionOf(study.posterior, [{ eye: 0, ageYears: at, coefficient: 1 }])
          return mixtureQuantile(length, 0.975) - mixtureQuantile(length, 0.025)
        }
        expect(width(course.visits)).toBeLessThan(width(course.visits.slice(0, -1)))
      }),
      RUNS,
    )
  })
})
