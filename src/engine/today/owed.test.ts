import { describe, expect, it } from "vitest"
import { evidence } from "../../evidence/index.js"
import { assess } from "../assess.js"
import type { Course, Visit } from "../course.js"
import { noRules } from "../practice-rules.js"
import { duties } from "../protocol/duties.js"
import { standardProtocol } from "../protocol/standard.js"
import { owed } from "./owed.js"

const today = "2026-05-20"

const full = (date: string, mm: number): Visit => {
  const eye = {
    axialLength: { mm },
    refraction: { sphere: -2, cycloplegic: true },
    pupil: { photopic: 4 },
    accommodation: { dioptres: 12, method: "push-up" as const },
    acuity: { nearLogMAR: 0 },
  }
  return { date, right: eye, left: eye, symptoms: [] }
}

/** Drops since January, a check in February, everything in order until the day's own story is added. */
const course = (more: Partial<Course> = {}): Course => ({
  lengthwise: 1,
  child: { born: "2017-01-10", sex: "female", ancestry: "european" },
  visits: [full("2026-01-05", 24), full("2026-02-10", 24.02)],
  treatments: [{ from: "2026-01-08", kind: "atropine", concentrationPercent: 0.05 }],
  consents: [{ date: "2026-01-05", covers: { kind: "atropine", concentrationPercent: 0.05 } }],
  supplies: [
    { dispensed: "2026-05-08", opened: "2026-05-09", concentrationPercent: 0.05, beyondUse: "2026-06-07" },
  ],
  explanations: [{ date: "2026-02-10" }],
  ...more,
})

const owedTo = (one: Course, on = today) =>
  owed({
    course: one,
    today: on,
    protocol: standardProtocol,
    assessment: assess({ course: one, asOf: on, evidence }),
    duties: duties({ course: one, protocol: standardProtocol, today: on }),
    rules: noRules,
  })

describe("what is owed today", () => {
  it("is nothing when all is in order", () => {
    expect(owedTo(course())).toEqual([])
  })

  it("names a bottle that runs out, for the front desk", () => {
    const [row] = owedTo(course(), "2026-05-30")
    expect(row).toMatchObject({ group: "supply", role: "front-desk", due: "2026-06-07", action: "supply" })
  })

  it("names an examination that is open for whoever books, and what was begun for whoever measures", () => {
    const supplies = [
      { dispensed: "2026-07-01", opened: "2026-07-01", concentrationPercent: 0.05, beyondUse: "2026-08-01" },
    ]
    const [row] = owedTo(course({ supplies }), "2026-07-10")
    expect(row).toMatchObject({ group: "see", what: "6-month review", role: "front-desk", action: "visit" })
    const half = course({ supplies, visits: [...course().visits, { date: "2026-07-09", symptoms: [] }] })
    expect(owedTo(half, "2026-07-10").find(({ group }) => group === "see")).toMatchObject({
      role: "technician",
    })
  })

  it("names a missing consent for the clinician to have signed", () => {
    expect(owedTo(course({ consents: [] }))).toContainEqual(
      expect.objectContaining({ group: "sign", role: "clinician", action: "consent", state: "overdue" }),
    )
  })

  it("names an order until the pharmacy has confirmed it, and one on its way only once it is late", () => {
    const order = { date: "2026-05-18", concentrationPercent: 0.05, bottles: 3, volumeMl: 5 }
    expect(owedTo(course({ orders: [order] }))).toMatchObject([
      { what: "order of 3 bottles of 0.05 % not confirmed", state: "open" },
    ])
    const confirmed = { ...order, confirmed: "2026-05-19" }
    expect(owedTo(course({ orders: [confirmed] }))).toEqual([])
    expect(owedTo(course({ orders: [confirmed] }), "2026-05-27")).toMatchObject([
      { what: "3 bottles of 0.05 % on the way", state: "overdue" },
    ])
    expect(owedTo(course({ orders: [confirmed] }), "2026-05-25")).toEqual([])
    expect(owedTo(course({ orders: [{ ...confirmed, received: "2026-05-24" }] }), "2026-05-23")).toEqual([])
  })

  it("names results the family has not heard, until they are old", () => {
    expect(owedTo(course({ explanations: [] }), "2026-05-10")).toMatchObject([
      { group: "tell", since: "2026-02-10", action: "explain" },
    ])
    const later = course({
      explanations: [],
      supplies: [{ opened: "2026-06-01", concentrationPercent: 0.05 }],
    })
    expect(owedTo(later, "2026-06-05").filter(({ group }) => group === "tell")).toEqual([])
  })

  it("puts a warning sign first and says that it is for the same day", () => {
    const visits = [
      ...course().visits,
      { date: "2026-05-18", answers: [{ question: "flashes", answer: "yes" as const }] },
    ]
    const [first] = owedTo(course({ visits }))
    expect(first).toMatchObject({ group: "concern", state: "overdue", due: "2026-05-18", action: "safety" })
    expect(first?.what).toMatch(/^same-day care/)
  })

  it("says who looks after a concern, and drops it once it is closed", () => {
    const concern = {
      opened: "2026-03-01",
      kind: "redness",
      what: "Red lids after the drops.",
      owner: "clinician",
    }
    expect(owedTo(course({ concerns: [concern] }))).toMatchObject([
      { group: "concern", what: "Red lids after the drops.", why: "looked after by clinician" },
    ])
    expect(owedTo(course({ concerns: [{ ...concern, closed: "2026-04-01", outcome: "gone" }] }))).toEqual([])
  })

  it("asks for a decision when the eye grows as untreated, and no more once one is recorded", () => {
    const fast = course({
      visits: [
        full("2025-01-05", 23.4),
        full("2025-07-05", 23.7),
        full("2026-01-05", 24),
        full("2026-02-10", 24.05),
      ],
      treatments: [{ from: "2025-01-08", kind: "lenslet-spectacles" }],
      consents: [{ date: "2025-01-05", covers: { kind: "lenslet-spectacles" } }],
      supplies: [],
    })
    const rows = owedTo(fast, "2026-02-20").filter(({ group }) => group === "decide")
    expect(rows).toMatchObject([{ since: "2026-02-10", role: "clinician", action: "choices" }])
    const decided = {
      ...fast,
      decisions: [{ date: "2026-02-10", kind: "continue" as const, reason: "wait" }],
    }
    expect(owedTo(decided, "2026-02-20").filter(({ group }) => group === "decide")).toEqual([])
  })
})
