import { describe, expect, it } from "vitest"
import type { Fee, FeeSchedule } from "../practice-rules.js"
import { demoFees } from "../simulate/demo-fees.js"
import { feeScheduleProblems } from "./fee-problems.js"

const told = (schedule: FeeSchedule, others: readonly FeeSchedule[] = [], paidIn: readonly string[] = []) =>
  feeScheduleProblems({ schedule, others, paidIn }).map(({ path, allowed }) => `${path}: ${allowed}`)
const withFees = (...fees: readonly Fee[]): FeeSchedule => ({ ...demoFees, fees })
const fee = (id: string, charged: Fee["charged"]): Fee => ({
  id,
  title: id,
  cents: 100,
  coverage: "covered",
  charged,
})

describe("a fee schedule", () => {
  it("of the demo practice has nothing wrong with it", () => {
    expect(told(demoFees)).toEqual([])
  })

  it("has no two fees for one examination, even in a longer list", () => {
    const schedule = withFees(
      fee("a", { kind: "examination", stages: ["baseline", "review"] }),
      fee("b", { kind: "examination", stages: ["review", "washout"] }),
    )
    expect(told(schedule)).toEqual([
      'fees[1].charged: an occasion that no other fee is for ("a" is charged for it already)',
    ])
  })

  it("may have a bottle of any strength beside one of a named strength, each once", () => {
    const any = fee("any", { kind: "bottle" })
    const strong = fee("strong", { kind: "bottle", concentrationPercent: 0.05 })
    expect(told(withFees(any, strong))).toEqual([])
    expect(told(withFees(any, strong, { ...strong, id: "again" }))).toHaveLength(1)
    expect(told(withFees(any, { ...any, id: "again" }))).toHaveLength(1)
  })

  it("may charge lenses by the year and their fluid by the month", () => {
    const lenses = fee("lenses", { kind: "device", treatment: "orthokeratology", everyMonths: 12 })
    const fluid = fee("fluid", { kind: "device", treatment: "orthokeratology", everyMonths: 1 })
    expect(told(withFees(lenses, fluid))).toEqual([])
    expect(told(withFees(lenses, { ...lenses, id: "again" }))).toHaveLength(1)
  })

  it("has no device fee for drops or for no treatment", () => {
    expect(
      told(
        withFees(
          fee("a", { kind: "device", treatment: "atropine", everyMonths: 12 }),
          fee("b", { kind: "device", treatment: "none", everyMonths: 12 }),
        ),
      ),
    ).toEqual([
      "fees[0].charged.treatment: a treatment with spectacles or lenses; atropine has no device",
      "fees[1].charged.treatment: a treatment with spectacles or lenses; no treatment has no device",
    ])
  })

  it("has an id once", () => {
    const schedule = withFees(
      fee("a", { kind: "bottle" }),
      fee("a", { kind: "measure", measure: "refraction" }),
    )
    expect(told(schedule)).toEqual(["fees[1].id: unlike every other id (fees[0] has it)"])
  })

  it("is in a currency that is known", () => {
    expect(told({ ...demoFees, currency: "XYZ" })).toEqual([
      "currency: the ISO 4217 code of a currency in use, such as EUR",
    ])
  })

  it("begins on a day of its own", () => {
    expect(told(demoFees, [{ ...demoFees, title: "Other" }])).toEqual([
      'from: a day on which no other schedule begins ("Other" begins then)',
    ])
  })

  it("is in the currency of the others, and of what was paid", () => {
    const franc = { ...demoFees, currency: "CHF", from: "2027-01-01" }
    expect(told(franc, [demoFees])).toEqual(["currency: EUR, the currency of the schedule from 2023-01-01"])
    expect(told(franc, [], ["EUR"])).toEqual(["currency: EUR, the currency in which payments are recorded"])
    expect(told(franc, [], ["CHF"])).toEqual([])
  })
})
