import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { addDays } from "../../src/engine/calendar.js"
import { type CostPlan, costPlan } from "../../src/engine/cost/cost-plan.js"
import { costRows } from "../../src/engine/cost/cost-rows.js"
import { amountTyped, readAmount } from "../../src/engine/cost/money.js"
import type { Course, TreatmentChoice } from "../../src/engine/course.js"
import { COVERAGES, type Fee, type FeeSchedule } from "../../src/engine/practice-rules.js"
import { demoFees } from "../../src/engine/simulate/demo-fees.js"
import { fullVisit } from "../spec/protocol/child.js"

const TODAY = "2025-01-31"
const date = fc.integer({ min: -900, max: 0 }).map((days) => addDays(TODAY, days))
const cents = fc.integer({ min: 0, max: 100_000 })
const choice: fc.Arbitrary<TreatmentChoice> = fc.oneof(
  fc
    .constantFrom(0.01, 0.025, 0.05)
    .map((concentrationPercent) => ({ kind: "atropine" as const, concentrationPercent })),
  fc.constantFrom("orthokeratology" as const, "defocus-spectacles" as const).map((kind) => ({ kind })),
)
const course: fc.Arbitrary<Course> = fc.record({
  lengthwise: fc.constant(1 as const),
  child: fc.constant({ born: "2015-02-28", sex: "male" as const }),
  visits: fc.uniqueArray(date, { maxLength: 5 }).map((dates) => dates.toSorted().map(fullVisit)),
  treatments: fc.array(
    fc.record({ from: date, choice }).map(({ from, choice: one }) => ({ ...one, from })),
    { maxLength: 2 },
  ),
})
// The fees of the demo with other amounts and coverages; some are missing, so that something has no fee.
const schedule: fc.Arbitrary<FeeSchedule> = fc
  .tuple(
    ...demoFees.fees.map((fee) =>
      fc.option(
        fc
          .record({ cents, coverage: fc.constantFrom(...COVERAGES) })
          .map((other): Fee => ({ ...fee, ...other })),
        { nil: null, freq: 6 },
      ),
    ),
  )
  .map((fees) => ({ ...demoFees, fees: fees.filter((fee) => fee !== null) }))
const months = fc.integer({ min: 1, max: 48 })
const option = fc.option(choice, { nil: null })

function plan(input: {
  course: Course
  treatment: TreatmentChoice | null
  schedule: FeeSchedule
  months: number
}) {
  const rules = { feeSchedules: [input.schedule], pharmacies: [] }
  const answer = costPlan({ ...input, rules, today: TODAY })
  if (answer.kind === "refused") throw new Error(answer.why)
  return answer
}
const sums = ({ totals }: CostPlan) =>
  [totals.coveredCents, totals.uncertainCents, totals.notCoveredCents] as const

const everyPlan = (holds: (input: Parameters<typeof plan>[0]) => void) =>
  fc.assert(
    fc.property(fc.record({ course, treatment: option, schedule, months }), (input) => {
      holds(input)
    }),
    { seed: 8, numRuns: 120 },
  )

describe("whatever the course, the option and the fees", () => {
  it("each sum is the sum of its lines, in whole cents", () => {
    everyPlan((input) => {
      const found = plan(input)
      const sumOf = (coverage: string) =>
        found.lines.filter((line) => line.coverage === coverage).reduce((sum, line) => sum + line.cents, 0)
      expect(sums(found)).toEqual(COVERAGES.map(sumOf))
      for (const cents of sums(found)) expect(Number.isSafeInteger(cents)).toBe(true)
    })
  })

  it("more months never cost less", () => {
    everyPlan((input) => {
      const shorter = sums(plan(input))
      const longer = sums(plan({ ...input, months: input.months + 6 }))
      longer.forEach((cents, index) => {
        expect(cents).toBeGreaterThanOrEqual(shorter[index]!)
      })
    })
  })

  it("every line lies within the months, in order of date", () => {
    everyPlan((input) => {
      const { lines, from, to } = plan(input)
      const dates = lines.map((line) => line.date)
      expect(dates).toEqual(dates.toSorted())
      for (const day of dates) expect(day >= from && day <= to).toBe(true)
    })
  })

  it("the rows of the table end at the sums", () => {
    everyPlan((input) => {
      const found = plan(input)
      const last = costRows(found).at(-1)
      if (last) expect(last.soFar).toEqual(found.totals)
    })
  })

  it("fees twice as high make sums twice as high", () => {
    everyPlan((input) => {
      const fees = input.schedule.fees.map((fee) => ({ ...fee, cents: fee.cents * 2 }))
      const double = plan({ ...input, schedule: { ...input.schedule, fees } })
      expect(sums(double)).toEqual(sums(plan(input)).map((cents) => cents * 2))
    })
  })
})

it("an amount written is read back to the cent, in every number of decimals", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 100_000_000 }),
      fc.constantFrom("EUR", "JPY", "KWD"),
      (amount, currency) => {
        expect(readAmount(amountTyped(amount, currency), currency)).toEqual({ kind: "amount", cents: amount })
      },
    ),
    { seed: 8 },
  )
})
