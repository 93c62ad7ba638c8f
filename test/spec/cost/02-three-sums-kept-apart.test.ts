import { describe, expect, it } from "vitest"
import { type CostPlan, type CostPlanInput, costPlan } from "../../../src/engine/cost/cost-plan.js"
import { coverageInWords } from "../../../src/engine/cost/coverage.js"
import { demoFees } from "../../../src/engine/simulate/demo-fees.js"
import { child, drops, fullVisit } from "../protocol/child.js"

function plan(input: Partial<CostPlanInput> & Pick<CostPlanInput, "course" | "today">): CostPlan {
  const answer = costPlan({ rules: { feeSchedules: [demoFees], pharmacies: [] }, ...input })
  if (answer.kind === "refused") throw new Error(answer.why)
  return answer
}

const today = "2025-01-10"
const newChild = child({ visits: [] }).on(today).course
const strong = { kind: "atropine", concentrationPercent: 0.05 } as const

describe("Covered, uncertain and not covered", () => {
  it("are three sums, and there is no fourth that adds them up", () => {
    expect(Object.keys(plan({ course: newChild, today, treatment: strong }).totals)).toEqual([
      "coveredCents",
      "uncertainCents",
      "notCoveredCents",
    ])
  })

  it("are said in words on every line", () => {
    const { lines } = plan({ course: newChild, today, treatment: strong })
    expect([...new Set(lines.map(({ coverage }) => coverageInWords(coverage)))]).toEqual([
      "covered",
      "not covered",
      "uncertain whether covered",
    ])
  })
})

describe("What is free of charge", () => {
  it("is a line of 0, where the schedule says so", () => {
    const { lines } = plan({ course: newChild, today, treatment: strong })
    expect(lines.find(({ what }) => what === "1-month check")?.cents).toBe(0)
  })

  it("is not assumed where the schedule is silent", () => {
    const fees = demoFees.fees.filter(({ id }) => id !== "check")
    const rules = { feeSchedules: [{ ...demoFees, fees }], pharmacies: [] }
    const { lines, withoutFee } = plan({ course: newChild, today, treatment: strong, rules })
    expect(lines.some(({ what }) => what === "1-month check")).toBe(false)
    expect(withoutFee).toEqual(["1-month check"])
  })
})

describe("An examination that has begun", () => {
  it("is not charged again: only what is still to be measured", () => {
    const length = { axialLength: { mm: 24 } }
    const { course } = child({ visits: [{ date: "2025-01-08", right: length, left: length }] }).on(today)
    const { lines, assumptions } = plan({ course, today, treatment: null, months: 1 })
    expect(lines.map(({ what, cents }) => [what, cents])).toEqual([["Refraction", 2000]])
    expect(assumptions).toContain("The baseline has begun: only what is still to be measured is counted.")
  })
})

describe("A refraction with cycloplegia", () => {
  const withCycloplegia = (cents: number) => ({
    ...demoFees,
    fees: [
      ...demoFees.fees,
      {
        id: "cycloplegia",
        title: "Refraction with drops",
        cents,
        coverage: "uncertain" as const,
        charged: { kind: "measure" as const, measure: "cycloplegic-refraction" as const },
      },
    ],
  })

  it("costs what a refraction costs", () => {
    const { lines } = plan({ course: newChild, today, treatment: null, months: 1 })
    expect(lines.filter(({ fee }) => fee === "refraction")).toHaveLength(1)
  })

  it("has a fee of its own where the practice gave it one, in place of the other", () => {
    const rules = { feeSchedules: [withCycloplegia(3000)], pharmacies: [] }
    const { lines } = plan({ course: newChild, today, treatment: null, months: 1, rules })
    expect(lines.filter(({ what }) => what.startsWith("Refraction")).map(({ cents }) => cents)).toEqual([
      3000,
    ])
  })
})

describe("Two treatments side by side", () => {
  const course = {
    ...newChild,
    visits: [fullVisit(today)],
    treatments: [drops(today, 0.05), { kind: "orthokeratology" as const, from: today }],
  }

  it("are both in the plan of the course as it is recorded", () => {
    const now = plan({ course, today, months: 2 })
    expect(now.option).toBe("atropine 0.05 % and orthokeratology")
    expect(now.lines.filter(({ kind }) => kind === "device")).toHaveLength(1)
    expect(now.lines.filter(({ kind }) => kind === "bottle")).toHaveLength(2)
  })

  it("are not when one of them is asked about alone", () => {
    const alone = plan({ course, today, treatment: strong, months: 2 })
    expect(alone.option).toBe("atropine 0.05 %")
    expect(alone.lines.filter(({ kind }) => kind === "device")).toEqual([])
  })

  it("in the two eyes with one kind of drops need one bottle, not two", () => {
    const eyes = [
      { ...drops(today, 0.05), eye: "right" as const },
      { ...drops(today, 0.05), eye: "left" as const },
    ]
    const both = plan({ course: { ...course, treatments: eyes }, today, months: 2 })
    expect(both.lines.filter(({ kind }) => kind === "bottle")).toHaveLength(2)
  })
})

describe("A treatment with an end", () => {
  it("is counted to that day, and the plan says so", () => {
    const course = { ...newChild, visits: [fullVisit(today)], treatments: [drops(today, 0.05, "2025-03-10")] }
    const { lines, plannedStop, assumptions } = plan({ course, today, months: 12 })
    expect(plannedStop).toBe("2025-03-10")
    // 59 days at 30 days a bottle.
    expect(lines.filter(({ kind }) => kind === "bottle")).toHaveLength(2)
    expect(assumptions.some((words) => words.startsWith("Treatment ends on 2025-03-10"))).toBe(true)
  })

  it("already begun with spectacles is charged by the months since their start", () => {
    const course = {
      ...newChild,
      visits: [fullVisit("2024-06-10"), fullVisit(today)],
      treatments: [{ kind: "defocus-spectacles" as const, from: "2024-06-10" }],
    }
    const devices = plan({ course, today, months: 18 }).lines.filter(({ kind }) => kind === "device")
    expect(devices.map(({ date }) => date)).toEqual(["2025-06-10"])
  })
})
