import { addMonths } from "../../src/engine/calendar.js"
import type { Course, Visit } from "../../src/engine/course.js"

/** Invented courses for the tests of the pages. Nobody's measurements. */

interface Measured {
  readonly date: string
  readonly right: number
  readonly left: number
  readonly sphere: number
}

function visitOf({ date, right, left, sphere }: Measured, more: Partial<Visit> = {}): Visit {
  const eye = (mm: number, equivalent: number) => ({
    axialLength: { mm, readings: 5, method: "optical-biometry", device: "A" } as const,
    refraction: {
      sphere: equivalent,
      cylinder: -0.5,
      axis: 175,
      cycloplegic: true,
      method: "autorefraction",
    } as const,
    pupil: { photopic: 4.1 },
    accommodation: { dioptres: 12.5, method: "push-up" } as const,
    acuity: { distanceLogMAR: 0, nearLogMAR: 0.1 },
  })
  return { date, right: eye(right, sphere), left: eye(left, sphere + 0.25), ...more }
}

/** Half a year of lengths before 0.05 % drops, then a growth that slows; the next review is due now. */
export const slowedCourse: Course = {
  lengthwise: 1,
  child: { born: "2016-05-20", sex: "female", ancestry: "european", myopicParents: 1 },
  visits: [
    visitOf({ date: "2024-09-20", right: 23.61, left: 23.55, sphere: -1.25 }),
    visitOf({ date: "2025-03-18", right: 23.8, left: 23.73, sphere: -1.5 }),
    visitOf(
      { date: "2025-04-17", right: 23.81, left: 23.74, sphere: -1.5 },
      { symptoms: [{ kind: "light-sensitivity", grade: 1 }] },
    ),
    visitOf(
      { date: "2025-09-16", right: 23.86, left: 23.79, sphere: -1.75 },
      { symptoms: [{ kind: "light-sensitivity", grade: 0 }] },
    ),
    visitOf({ date: "2026-03-10", right: 23.96, left: 23.9, sphere: -1.75 }),
  ],
  treatments: [{ from: "2025-03-18", kind: "atropine", concentrationPercent: 0.05 }],
  consents: [{ date: "2025-03-18", covers: { kind: "atropine", concentrationPercent: 0.05 } }],
  supplies: Array.from({ length: 20 }, (_, month) => month)
    .filter((month) => month !== 8)
    .map((month) => {
      const opened = addMonths("2025-03-18", month)
      return {
        dispensed: opened,
        opened,
        beyondUse: addMonths(opened, 1),
        concentrationPercent: 0.05,
        volumeMl: 5,
      }
    }),
}

/** One visit, no treatment, nothing to judge yet. */
export const firstVisitCourse: Course = {
  lengthwise: 1,
  child: { born: "2018-02-02", sex: "male", ancestry: "unstated" },
  visits: [visitOf({ date: "2026-11-02", right: 24.32, left: 24.4, sphere: -2 })],
}

/** Side effects at the last visit. */
export const concernCourse: Course = {
  lengthwise: 1,
  child: { born: "2019-07-11", sex: "female", ancestry: "east-asian", myopicParents: 2 },
  visits: [
    visitOf({ date: "2026-05-04", right: 23.9, left: 23.82, sphere: -1.75 }),
    visitOf(
      { date: "2026-11-09", right: 24.06, left: 23.98, sphere: -2 },
      {
        symptoms: [
          { kind: "light-sensitivity", grade: 3 },
          { kind: "near-blur", grade: 2 },
        ],
      },
    ),
  ],
  treatments: [{ from: "2026-05-04", kind: "atropine", concentrationPercent: 0.05 }],
}

/** A left eye half a millimetre shorter than the right one: an exchange of the two can be told. */
export const unequalCourse: Course = {
  ...slowedCourse,
  visits: slowedCourse.visits.map((visit) => ({
    ...visit,
    left: {
      ...visit.left,
      axialLength: {
        ...visit.left?.axialLength,
        mm: Math.round(((visit.left?.axialLength?.mm ?? 0) - 0.5) * 100) / 100,
      },
    },
  })),
}
