import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { addDays, addMonths } from "../../src/engine/calendar.js"
import { type Course, DECISION_KINDS, type EyeExamination } from "../../src/engine/course.js"
import { duties, nextDuty } from "../../src/engine/protocol/duties.js"
import { plannedExaminations } from "../../src/engine/protocol/planned-examinations.js"
import { plannedReviews } from "../../src/engine/protocol/planned-reviews.js"
import type { Protocol } from "../../src/engine/protocol/protocol.js"
import { shippedProtocols } from "../../src/engine/protocol/shipped.js"
import { standardProtocol } from "../../src/engine/protocol/standard.js"
import { isAwayOn, timesAway } from "../../src/engine/protocol/time-away.js"

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
    eye: maybe(fc.constantFrom("right" as const, "left" as const)),
    nightsPerWeek: maybe(fc.constantFrom(3, 5)),
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
  decisions: fc.array(
    fc.record({
      date,
      kind: fc.constantFrom(...DECISION_KINDS, "discharge" as const),
      reason: fc.constant("said"),
    }),
    { maxLength: 3 },
  ),
})

const everyCourse = (holds: (course: Course, today: string, protocol: Protocol) => void, numRuns = 1500) =>
  fc.assert(
    fc.property(course, date, fc.nat({ max: shippedProtocols.length - 1 }), (child, today, which) => {
      holds(child, today, shippedProtocols[which]!)
    }),
    { seed: 5, numRuns },
  )
const owed = (child: Course, today: string, protocol: Protocol) => duties({ course: child, protocol, today })
const isAway = (child: Course, today: string) => isAwayOn(timesAway({ course: child, today }), today)

describe("whatever the course", () => {
  it("duties come in order of their due date, each opening no later than due and closing no earlier", () => {
    everyCourse((child, today, protocol) => {
      const all = owed(child, today, protocol)
      expect(all.map(({ due }) => due)).toEqual(all.map(({ due }) => due).toSorted())
      for (const { opens, due, closes } of all) {
        expect(opens <= due && due <= closes).toBe(true)
      }
    })
  })

  it("what is done needs nothing, and what is not done says what it needs", () => {
    everyCourse((child, today, protocol) => {
      for (const { state, needs } of owed(child, today, protocol))
        expect(needs.length === 0).toBe(state === "done")
    })
  })

  it("upcoming is before the window, open is not, overdue is after the due date", () => {
    everyCourse((child, today, protocol) => {
      for (const { state, opens, due } of owed(child, today, protocol)) {
        if (state === "upcoming") expect(today < opens).toBe(true)
        if (state === "open") expect(opens <= today).toBe(true)
        if (state === "overdue") expect(due < today).toBe(true)
      }
    })
  })

  it("every child not discharged has a next examination: nobody drops out of sight", () => {
    everyCourse((child, today, protocol) => {
      if (isAway(child, today)) return
      const ahead = owed(child, today, protocol).filter(
        ({ kind, state }) => kind === "examination" && state !== "done" && state !== "missed",
      )
      expect(ahead.length).toBeGreaterThan(0)
      expect(nextDuty(owed(child, today, protocol))).not.toBeNull()
    })
  })

  it("what is dated after the day of the question, treatments apart, changes nothing", () => {
    everyCourse((child, today, protocol) => {
      const known: Course = {
        ...child,
        visits: child.visits.filter((entry) => entry.date <= today),
        decisions: child.decisions?.filter((entry) => entry.date <= today),
        consents: child.consents?.filter((entry) => entry.date <= today),
        supplies: child.supplies?.filter(({ opened }) => opened === undefined || opened <= today),
      }
      expect(owed(child, today, protocol)).toEqual(owed(known, today, protocol))
    })
  })

  it("planned reviews lie ahead, in order, and none is treated after the planned stop", () => {
    everyCourse((child, today, protocol) => {
      const { reviews, plannedStop } = plannedReviews({ course: child, protocol, today })
      expect(reviews.map((review) => review.date)).toEqual(reviews.map((review) => review.date).toSorted())
      for (const review of reviews) {
        expect(review.date >= today).toBe(true)
        if (plannedStop !== null && review.date > plannedStop) expect(review.treated).toBe(false)
      }
    })
  })

  it("a child discharged and not back owes nothing, and nothing is ahead of it", () => {
    let discharged = 0
    everyCourse((child, today, protocol) => {
      const { to } = timesAway({ course: child, today }).at(-1) ?? { to: today }
      if (to !== null) return
      discharged += 1
      for (const { state } of owed(child, today, protocol)) expect(["done", "missed"]).toContain(state)
    })
    expect(discharged).toBeGreaterThan(50)
  })

  it("what a choice of treatment would bring lies ahead, in order, and ends within the months asked for", () => {
    everyCourse((child, today, protocol) => {
      for (const treatment of [null, { kind: "atropine", concentrationPercent: 0.05 } as const]) {
        const plan = plannedExaminations({ course: child, protocol, treatment, today, months: 30 })
        const days = plan.map((examination) => examination.date)
        expect(days).toEqual(days.toSorted())
        if (days.length > 0) expect(days[0]! >= today).toBe(true)
        expect(days.every((day) => day <= addMonths(today, 30))).toBe(true)
      }
    }, 150)
  })

  it("under treatment somebody is seen within every year of the next two and a half years", () => {
    everyCourse((child, today) => {
      const treatment = { kind: "atropine", concentrationPercent: 0.05 } as const
      const plan = plannedExaminations({
        course: child,
        protocol: standardProtocol,
        treatment,
        today,
        months: 30,
      })
      const days = [today, ...plan.map((examination) => examination.date)]
      for (const [index, day] of days.slice(1).entries())
        expect(day <= addDays(addMonths(days[index]!, 12), 3)).toBe(true)
    }, 150)
  })
})
