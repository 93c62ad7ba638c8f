import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { addDays } from "../../src/engine/calendar.js"
import type { Course, EyeExamination } from "../../src/engine/course.js"
import { duties, nextDuty } from "../../src/engine/protocol/duties.js"
import { plannedReviews } from "../../src/engine/protocol/planned-reviews.js"
import { standardProtocol } from "../../src/engine/protocol/standard.js"

const date = fc.integer({ min: 0, max: 2200 }).map((days) => addDays("2022-01-31", days))
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined })
const strength = fc.constantFrom(0.01, 0.025, 0.05)
const eye: fc.Arbitrary<EyeExamination> = fc.record({
  axialLength: maybe(fc.constant({ mm: 24 })),
  refraction: maybe(fc.boolean().map((cycloplegic) => ({ sphere: -2, cycloplegic }))),
  pupil: maybe(fc.constant({ photopic: 4 })),
  accommodation: maybe(fc.constant({ dioptres: 12 })),
  acuity: maybe(fc.constant({ nearLogMAR: 0 })),
})
const visit = fc.record({
  date,
  right: maybe(eye),
  left: maybe(eye),
  symptoms: maybe(fc.constant([])),
  from: maybe(fc.constant("old glasses")),
})
const treatment = fc
  .record({
    from: date,
    days: maybe(fc.integer({ min: 1, max: 900 })),
    kind: fc.constantFrom(
      "atropine" as const,
      "atropine" as const,
      "orthokeratology" as const,
      "none" as const,
    ),
    concentrationPercent: strength,
  })
  .map(({ days, ...rest }) => ({ ...rest, to: days === undefined ? null : addDays(rest.from, days) }))
const course: fc.Arbitrary<Course> = fc.record({
  lengthwise: fc.constant(1 as const),
  child: fc.constant({ born: "2014-02-28", sex: "male" as const }),
  visits: fc.array(visit, { maxLength: 12 }),
  treatments: fc.array(treatment, { maxLength: 4 }),
  supplies: fc.array(
    fc.record({ opened: maybe(date), beyondUse: maybe(date), concentrationPercent: maybe(strength) }),
    {
      maxLength: 4,
    },
  ),
  consents: fc.array(
    fc.record({
      date,
      covers: fc.record({ kind: fc.constant("atropine" as const), concentrationPercent: maybe(strength) }),
    }),
    { maxLength: 3 },
  ),
})

const everyCourse = (holds: (course: Course, today: string) => void) =>
  fc.assert(
    fc.property(course, date, (child, today) => {
      holds(child, today)
    }),
    { seed: 5, numRuns: 1500 },
  )
const owed = (child: Course, today: string) => duties({ course: child, protocol: standardProtocol, today })

describe("whatever the course", () => {
  it("duties come in order of their due date, each opening no later than due and closing no earlier", () => {
    everyCourse((child, today) => {
      const all = owed(child, today)
      expect(all.map(({ due }) => due)).toEqual(all.map(({ due }) => due).toSorted())
      for (const { opens, due, closes } of all) {
        expect(opens <= due && due <= closes).toBe(true)
      }
    })
  })

  it("what is done needs nothing, and what is not done says what it needs", () => {
    everyCourse((child, today) => {
      for (const { state, needs } of owed(child, today)) expect(needs.length === 0).toBe(state === "done")
    })
  })

  it("upcoming is before the window, open is not, overdue is after the due date", () => {
    everyCourse((child, today) => {
      for (const { state, opens, due } of owed(child, today)) {
        if (state === "upcoming") expect(today < opens).toBe(true)
        if (state === "open") expect(opens <= today).toBe(true)
        if (state === "overdue") expect(due < today).toBe(true)
      }
    })
  })

  it("every child has a next examination: nobody drops out of sight", () => {
    everyCourse((child, today) => {
      const ahead = owed(child, today).filter(
        ({ kind, state }) => kind === "examination" && state !== "done" && state !== "missed",
      )
      expect(ahead.length).toBeGreaterThan(0)
      expect(nextDuty(owed(child, today))).not.toBeNull()
    })
  })

  it("what is dated after the day of the question, treatments apart, changes nothing", () => {
    everyCourse((child, today) => {
      const known: Course = {
        ...child,
        visits: child.visits.filter((entry) => entry.date <= today),
        consents: child.consents?.filter((entry) => entry.date <= today),
        supplies: child.supplies?.filter(({ opened }) => opened === undefined || opened <= today),
      }
      expect(owed(child, today)).toEqual(owed(known, today))
    })
  })

  it("planned reviews lie ahead, in order, and none is treated after the planned stop", () => {
    everyCourse((child, today) => {
      const { reviews, plannedStop } = plannedReviews({ course: child, protocol: standardProtocol, today })
      expect(reviews.map((review) => review.date)).toEqual(reviews.map((review) => review.date).toSorted())
      for (const review of reviews) {
        expect(review.date >= today).toBe(true)
        if (plannedStop !== null && review.date > plannedStop) expect(review.treated).toBe(false)
      }
    })
  })
})
