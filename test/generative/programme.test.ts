import * as fc from "fast-check"
import { expect, it } from "vitest"
import { addDays } from "../../src/engine/calendar.js"
import { choices } from "../../src/engine/choices/choices.js"
import { type Course, DECISION_KINDS } from "../../src/engine/course.js"
import { forecast } from "../../src/engine/forecast.js"
import { noRules } from "../../src/engine/practice-rules.js"
import { protocolFor } from "../../src/engine/protocol/choose-protocol.js"
import { defaultSettings } from "../../src/engine/settings.js"
import { supplyReport } from "../../src/engine/supply/supply-report.js"
import { evidence } from "../../src/evidence/index.js"
import * as treatmentEvidence from "../../src/evidence/treatments.js"
import { readCourse } from "../../src/interop/course/read-course.js"
import { childReading } from "../../src/server/child-readings.js"
import { commandLine } from "../cli/fake-io.js"
import { courseArbitrary } from "./course-arbitrary.js"

/** Whole courses with what stands around the measurements: one eye, a taper, missed nights, decisions, concerns, orders. */

const day = fc.integer({ min: Math.round(5 * 365.25), max: Math.round(16 * 365.25) })
const programme = fc.record({
  ofTreatments: fc.array(
    fc.record({
      eye: fc.constantFrom("right", "left", undefined),
      nightsPerWeek: fc.constantFrom(1, 3, 7, undefined),
    }),
    { minLength: 6, maxLength: 6 },
  ),
  missed: fc.array(
    fc.record({
      day,
      days: fc.integer({ min: 1, max: 200 }),
      share: fc.double({ min: 0, max: 1, noNaN: true }),
    }),
    { maxLength: 3 },
  ),
  decisions: fc.array(fc.record({ day, kind: fc.constantFrom(...DECISION_KINDS) }), { maxLength: 4 }),
  concerns: fc.array(fc.record({ day, closedAfter: fc.option(fc.nat(300), { nil: undefined }) }), {
    maxLength: 2,
  }),
  orders: fc.array(
    fc.record({
      day,
      end: fc.constantFrom("confirmed", "received", "cancelled", undefined),
      after: fc.nat(60),
    }),
    { maxLength: 2 },
  ),
  asOf: day,
})

const told = fc.tuple(courseArbitrary, programme).map(([course, around]) => {
  const { born } = course.child
  const on = (days: number) => addDays(born, days)
  const whole = {
    ...course,
    treatments: (course.treatments ?? []).map((treatment, index) => {
      const { eye, nightsPerWeek } = around.ofTreatments[index]!
      return { ...treatment, eye, ...(treatment.kind === "atropine" ? { nightsPerWeek } : {}) }
    }),
    missedNights: around.missed.map(({ day: from, days, share }) => ({
      from: on(from),
      to: on(from + days - 1),
      nights: Math.max(1, Math.round(days * share)),
    })),
    decisions: around.decisions.map(({ day: date, kind }) => ({ date: on(date), kind, reason: "so" })),
    concerns: around.concerns.map(({ day: opened, closedAfter }) => ({
      opened: on(opened),
      kind: "light",
      what: "squints",
      ...(closedAfter === undefined ? {} : { closed: on(opened + closedAfter), outcome: "gone" }),
    })),
    orders: around.orders.map(({ day: date, end, after }) => ({
      date: on(date),
      concentrationPercent: 0.05,
      bottles: 2,
      volumeMl: 5,
      ...(end === undefined ? {} : { [end]: on(date + after) }),
    })),
  }
  return { course: JSON.parse(JSON.stringify(whole)) as Course, asOf: on(around.asOf) }
})

/** Where a figure is no number, by its place. */
function notNumbers(value: unknown, path = ""): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [path]
  if (typeof value === "string")
    return /NaN|undefined|Infinity|\[object/.test(value) ? [`${path}: ${value}`] : []
  if (typeof value !== "object" || value === null) return []
  return Object.entries(value).flatMap(([key, one]) => notNumbers(one, `${path}.${key}`))
}

it("a whole course is a sound file", () => {
  fc.assert(
    fc.property(told, ({ course }) => {
      expect(readCourse(JSON.stringify(course))).not.toHaveProperty("problems")
    }),
    { numRuns: 100 },
  )
})

it("every reading of a whole course is made of numbers", () => {
  fc.assert(
    fc.property(told, ({ course, asOf }) => {
      const protocol = protocolFor({ course, today: asOf, rules: noRules })
      const readings = {
        reading: childReading(course, { today: asOf, rules: noRules, settings: defaultSettings }),
        forecast: forecast({ course, asOf, toAgeYears: 18, evidence }),
        supply: supplyReport({ course, asOf, protocol }),
        choices: choices({ course, asOf, evidence, treatmentEvidence, rules: noRules }),
      }
      expect(notNumbers(readings)).toEqual([])
    }),
    { numRuns: 100 },
  )
})

it("every verb tells a whole course in words, on any day", async () => {
  const verbs = ["assess", "due", "supply", "safety", "choices", "before-myopia", "examination"]
  await fc.assert(
    fc.asyncProperty(told, fc.constantFrom(...verbs), async ({ course, asOf }, verb) => {
      const asked = await commandLine([verb, "child.json", "--as-of", asOf], {
        files: { "child.json": course },
        today: "2045-01-01",
      })
      expect(notNumbers(asked.stdout + asked.stderr)).toEqual([])
      // A child may be too young or too old for an answer; nothing else stops one.
      if (asked.code !== 0) expect(asked.stderr).toMatch(/years/)
    }),
    { numRuns: 100 },
  )
})
