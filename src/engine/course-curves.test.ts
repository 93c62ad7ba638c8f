import { describe, expect, it } from "vitest"
import { evidence } from "../evidence/index.js"
import type { Course, Supply, Treatment, Visit } from "./course.js"
import { courseCurves } from "./course-curves.js"
import { emmetropicLength } from "./reference/emmetropic.js"
import { defaultSettings } from "./settings.js"

const eye = (mm: number) => ({ axialLength: { mm, method: "optical-biometry" } }) as const
const visits: readonly Visit[] = [
  { date: "2024-06-15", right: eye(24.1), left: eye(24) },
  { date: "2025-06-15", right: eye(24.3), left: eye(24.3) },
]
const curvesOf = (changed: Partial<Course> = {}, today = "2025-12-15") =>
  courseCurves({
    course: {
      lengthwise: 1,
      child: { born: "2015-06-15", sex: "female", ancestry: "east-asian" },
      visits,
      ...changed,
    },
    today,
    evidence,
    settings: defaultSettings,
    duties: [],
  })

describe("growth from visit to visit", () => {
  it("is the mean of the two eyes per year", () => {
    const [interval] = curvesOf().growthIntervals
    expect(interval?.fromAge).toBeCloseTo(9, 2)
    expect(interval?.toAge).toBeCloseTo(10, 2)
    expect(interval?.mmPerYear).toBeCloseTo(0.25, 2)
  })

  it("has the interval of measurement alone: the mean of four figures' noise", () => {
    const curves = curvesOf()
    const sd = curves.lengthSd[0]?.mm as number
    const [interval] = curves.growthIntervals
    // Two eyes, each a difference of two figures: sd sqrt(4) / 2 over 365 days.
    expect((interval?.high95 as number) - (interval?.mmPerYear as number)).toBeCloseTo(
      (1.96 * sd * 365.25) / 365,
      9,
    )
    expect((interval?.mmPerYear as number) - (interval?.low95 as number)).toBeCloseTo(
      (1.96 * sd * 365.25) / 365,
      9,
    )
  })

  it("is that of the eye measured at both ends when the other was not", () => {
    const [interval] = curvesOf({
      visits: [visits[0] as Visit, { date: "2025-06-15", left: eye(24.3) }],
    }).growthIntervals
    expect(interval?.mmPerYear).toBeCloseTo(0.3, 2)
  })

  it("skips visits without a length", () => {
    const between = [visits[0] as Visit, { date: "2024-12-15", right: {} }, visits[1] as Visit]
    expect(curvesOf({ visits: between }).growthIntervals).toEqual(curvesOf().growthIntervals)
  })

  it("is none from one visit, or from visits that share no eye", () => {
    expect(curvesOf({ visits: visits.slice(0, 1) }).growthIntervals).toEqual([])
    const apart = [
      { date: "2024-06-15", right: eye(24.1) },
      { date: "2025-06-15", left: eye(24.3) },
    ]
    expect(curvesOf({ visits: apart }).growthIntervals).toEqual([])
  })
})

describe("the published lines", () => {
  const curves = curvesOf()

  it("run from 6 to 18 at quarter years", () => {
    const ages = curves.naturalRate.map(({ age }) => age)
    expect([ages[0], ages[1], ages.at(-1)]).toEqual([6, 6.25, 18])
    expect(curves.emmetropicRate.map(({ age }) => age)).toEqual(ages)
  })

  it("natural growth at 10 is the rate of the evidence for an East Asian girl", () => {
    const { rateAt10MmPerYear, eastAsianFactor, girlFactor } = evidence.growth.values
    const at10 = curves.naturalRate.find(({ age }) => age === 10)?.mmPerYear
    expect(at10).toBeCloseTo(rateAt10MmPerYear.value * eastAsianFactor.value * girlFactor.value, 9)
  })

  it("natural growth has no season in it, wherever the practice is", () => {
    expect(curvesOf({ practice: { latitude: 51.5 } }).naturalRate).toEqual(curves.naturalRate)
  })

  it("emmetropic growth is the slope of the emmetropic length", () => {
    const length = (ageYears: number) => {
      const found = emmetropicLength({ ageYears, curve: evidence.emmetropic })
      return "mm" in found ? found.mm : Number.NaN
    }
    const at9 = curves.emmetropicRate.find(({ age }) => age === 9)?.mmPerYear
    expect(at9).toBeCloseTo((length(9.001) - length(8.999)) / 0.002, 5)
  })
})

describe("nights covered, month by month", () => {
  const drops: Treatment = { from: "2025-06-15", kind: "atropine", concentrationPercent: 0.05 }
  const bottle = (opened: string, beyondUse: string): Supply => ({
    opened,
    beyondUse,
    concentrationPercent: 0.05,
  })
  const sharesOf = (supplies: readonly Supply[], today?: string) =>
    curvesOf({ treatments: [drops], supplies }, today).coverageByMonth?.map(({ share }) => share)

  it("are not shown where no supply is recorded, nor without treatment", () => {
    expect(curvesOf({ treatments: [drops] })).not.toHaveProperty("coverageByMonth")
    expect(curvesOf()).not.toHaveProperty("coverageByMonth")
  })

  it("are all while a bottle is in date, and none after", () => {
    const shares = sharesOf([bottle("2025-06-15", "2025-08-30")])
    expect(shares?.slice(0, 2)).toEqual([expect.closeTo(1, 6), expect.closeTo(1, 6)])
    expect(shares?.slice(3)).toEqual([0, 0, 0, 0])
    expect(shares?.[2]).toBeGreaterThan(0.3)
    expect(shares?.[2]).toBeLessThan(0.7)
  })

  it("never count more than every night when bottles overlap", () => {
    const shares = sharesOf([bottle("2025-06-15", "2025-12-30"), bottle("2025-07-15", "2025-12-30")])
    expect(Math.max(...(shares ?? []))).toBeCloseTo(1, 6)
    expect(shares).toHaveLength(7)
  })

  it("do not begin on the day the treatment begins, which has no night yet", () => {
    expect(sharesOf([bottle("2025-06-15", "2025-08-30")], "2025-06-15")).toEqual([])
  })
})

describe("what was not worked out", () => {
  it("is left out, not shown as empty", () => {
    expect(curvesOf()).not.toHaveProperty("assessment")
    expect(curvesOf()).not.toHaveProperty("forecast")
  })
})
