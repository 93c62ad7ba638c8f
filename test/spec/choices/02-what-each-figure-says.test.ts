import { describe, expect, it } from "vitest"
import { noRules } from "../../../src/engine/practice-rules.js"
import { standardProtocol } from "../../../src/engine/protocol/standard.js"
import { cell, drops, girl, optionsFor, TODAY } from "./child.js"

const told = optionsFor(girl())
const millimetres = (text: string) => Number(/^(-?[\d.]+) mm/.exec(text)?.[1])

describe("Length at 18 is given of the longer eye, with its interval", () => {
  it("shorter under a treatment than without", () => {
    expect(cell(told, "length", "atropine 0.05 %")).toMatch(/^2\d\.\d\d mm \(2\d\.\d\d to 2\d\.\d\d\)$/)
    expect(millimetres(cell(told, "length", "atropine 0.05 %"))).toBeLessThan(
      millimetres(cell(told, "length", "no treatment")),
    )
  })

  it("treated as planned it stops when the protocol says so, and the day is named", () => {
    expect(cell(told, "planned-length", "atropine 0.05 %")).toMatch(/; stopped on 2028-06-15$/)
  })

  it("where the practice's own protocol plans no stop, no such figure is given", () => {
    const steps = standardProtocol.steps.filter(({ decides }) => decides === undefined)
    const endless = { ...noRules, protocols: [{ ...standardProtocol, steps }] }
    expect(cell(optionsFor(girl(), { rules: endless }), "planned-length", "atropine 0.05 %")).toBe("\u2013")
  })

  it("what is in use counts its months from its own start", () => {
    const treated = optionsFor(girl({ treatments: [drops(0.05)] }))
    const words = cell(treated, "planned-length", "going on with atropine 0.05 %")
    expect(words).toMatch(/; stopped on 2027-12-15$/)
  })
})

describe("Growth withheld is told for the next year, with its interval", () => {
  it("0.01 % is small and may be nil: its interval holds zero", () => {
    expect(cell(told, "withheld", "atropine 0.01 %")).toMatch(
      /^0\.\d\d mm \(-0\.\d\d to 0\.\d\d\); small, may be nil$/,
    )
  })

  it("no treatment withholds none, and the growth to be expected is told instead", () => {
    expect(cell(told, "withheld", "no treatment")).toMatch(/^none; 0\.\d\d mm of growth is expected$/)
  })

  it("in a fast child a treatment withholds more millimetres than in a slow one", () => {
    const slow = optionsFor(girl({ growthMm: 0.2 }))
    const fast = optionsFor(girl({ growthMm: 0.6 }))
    expect(millimetres(cell(fast, "withheld", "orthokeratology"))).toBeGreaterThan(
      millimetres(cell(slow, "withheld", "orthokeratology")),
    )
  })

  it("in the last year before 18 it is not given", () => {
    const born = "2008-12-15"
    expect(cell(optionsFor(girl({ born, growthMm: 0.03 })), "withheld", "orthokeratology")).toBe(
      "not given: the evidence ends at 18 years",
    )
  })
})

describe("Drops are expected on as many nights as bottles covered so far", () => {
  const supplies = [{ opened: "2025-12-15", beyondUse: "2026-03-15", concentrationPercent: 0.05 }]
  const gaps = optionsFor(girl({ treatments: [drops(0.05)], supplies }))

  it("and that is said", () => {
    expect(gaps.assumptions.join("\n")).toMatch(/drops on 50 % of the nights, as covered by bottles so far/)
  })

  it("of another strength as well, so that no strength looks better only for being new", () => {
    const full = optionsFor(girl({ treatments: [drops(0.05)] }))
    expect(millimetres(cell(gaps, "withheld", "atropine 0.1 %"))).toBeLessThan(
      0.6 * millimetres(cell(full, "withheld", "atropine 0.1 %")),
    )
  })
})

describe("Cost is told apart by who bears it", () => {
  const rules = {
    ...noRules,
    feeSchedules: [
      {
        title: "Fees",
        currency: "EUR",
        from: "2026-01-01",
        fees: [
          {
            id: "visit",
            title: "Examination",
            cents: 5000,
            coverage: "not-covered" as const,
            charged: {
              kind: "examination" as const,
              stages: ["baseline", "safety-check", "review", "washout", "discharge"] as const,
            },
          },
          {
            id: "bottle",
            title: "Bottle",
            cents: 3000,
            coverage: "uncertain" as const,
            charged: { kind: "bottle" as const },
          },
        ],
      },
    ],
  }
  const priced = optionsFor(girl(), { rules })

  it("not covered, uncertain and covered, never as one sum", () => {
    expect(cell(priced, "cost", "atropine 0.05 %")).toMatch(
      /^not covered [\d.,]+ EUR; uncertain [\d.,]+ EUR; covered 0\.00 EUR$/,
    )
  })

  it("what has no fee is named, not taken for free", () => {
    expect(cell(priced, "cost", "lenslet spectacles")).toMatch(
      /without a fee, not counted: lenslet spectacles/,
    )
  })

  it("each tenth of a millimetre has a price where the effect is sure enough", () => {
    expect(cell(priced, "per-tenth", "atropine 0.05 %")).toMatch(/^not covered [\d.,]+ EUR \([\d.,]+ EUR to /)
  })

  it("of 0.01 % none is given, since it may withhold nothing", () => {
    expect(cell(priced, "per-tenth", "atropine 0.01 %")).toMatch(
      /^not given: what is withheld may be nothing/,
    )
  })

  it("without a fee schedule no cost is made up", () => {
    expect(cell(told, "cost", "atropine 0.05 %")).toBe("not given: No fee schedule has been entered.")
  })
})

describe("Consent and cautions are told of each option", () => {
  it("consent to one strength is none to another", () => {
    const consents = [{ date: TODAY, covers: { kind: "atropine" as const, concentrationPercent: 0.05 } }]
    const consented = optionsFor(girl({ consents }))
    expect(cell(consented, "consent", "atropine 0.05 %")).toMatch(/is in force since 2026-06-15/)
    expect(cell(consented, "consent", "atropine 0.1 %")).toBe("consent to atropine names 0.05 %, not 0.1 %")
  })

  it("no treatment needs none", () => {
    expect(cell(told, "consent", "no treatment")).toBe("none needed")
  })

  it("cautions that were not asked about are counted", () => {
    expect(cell(told, "before", "atropine 0.05 %")).toMatch(/^\d+ cautions not asked about yet$/)
  })

  it("one that was answered with yes is named", () => {
    const course = girl()
    const visits = course.visits.map((visit) =>
      visit.date === TODAY
        ? { ...visit, answers: [{ question: "heart-condition", answer: "yes" as const }] }
        : visit,
    )
    expect(cell(optionsFor({ ...course, visits }), "before", "atropine 0.05 %")).toMatch(
      /^heart condition: yes; /,
    )
  })
})
