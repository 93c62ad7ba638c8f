import { describe, expect, it } from "vitest"
import { emmetropicCurve, growthParameters as parameters } from "../../evidence/index.js"
import { addDays, ageYears } from "../calendar.js"
import { type ExpectedGrowth, emmetropicGrowthOf, naturalGrowth } from "./natural-growth.js"

const child = { born: "2012-04-09", sex: "female", ancestry: "east-asian" } as const
const of = (changed: Partial<Parameters<typeof naturalGrowth>[0]> = {}) =>
  naturalGrowth({ child, parameters, settingFactor: 1, ...changed })
const plain = of()
const north = of({ latitudeDegrees: 51.5 })
const south = of({ latitudeDegrees: -33.9 })

const grown = ({ cumulativeMm }: ExpectedGrowth, from: number, to: number) =>
  cumulativeMm(to) - cumulativeMm(from)
/** Simpson's rule on the rate, in pieces that do not cross the knee at 13. */
function summed(growth: ExpectedGrowth, from: number, to: number): number {
  if (from < 13 && to > 13) return summed(growth, from, 13) + summed(growth, 13, to)
  const steps = 2000
  const width = (to - from) / steps
  let sum = 0
  for (let i = 0; i <= steps; i++) {
    const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2
    sum += weight * growth.rateMmPerYear(from + i * width)
  }
  return (sum * width) / 3
}
const factorOn = (growth: ExpectedGrowth, on: string) => {
  const age = ageYears({ born: child.born, on })
  return growth.rateMmPerYear(age) / plain.rateMmPerYear(age)
}

describe("natural growth", () => {
  it.each([
    { from: 7, to: 7.5 },
    { from: 8.1, to: 11.7 },
    { from: 12.6, to: 13.2 },
    { from: 14, to: 18 },
    { from: 6, to: 18 },
  ])("from $from to $to years is the integral of its rate, season and knee included", ({ from, to }) => {
    for (const growth of [plain, north, south]) {
      expect(Math.abs(grown(growth, from, to) - summed(growth, from, to))).toBeLessThan(1e-9)
    }
  })

  it("does not jump in rate at the knee", () => {
    expect(plain.rateMmPerYear(13 + 1e-9)).toBeCloseTo(plain.rateMmPerYear(13 - 1e-9), 8)
  })

  it("is 0.272 mm a year at 10, times 1.3 and 1.03 for an East Asian girl", () => {
    expect(plain.rateMmPerYear(10)).toBeCloseTo(0.272 * 1.3 * 1.03, 12)
  })

  it("of a boy is 0.97 / 1.03 of a girl's", () => {
    const boy = of({ child: { ...child, sex: "male" } })
    expect(grown(boy, 8, 9) / grown(plain, 8, 9)).toBeCloseTo(0.97 / 1.03, 12)
  })

  it.each(["european", "south-asian", "african", "other", "unstated", undefined] as const)(
    "takes a child of ancestry %s as not East Asian",
    (ancestry) => {
      const other = of({ child: { ...child, ancestry } })
      expect(grown(plain, 8, 9) / grown(other, 8, 9)).toBeCloseTo(1.3, 12)
    },
  )

  it("is multiplied by the setting factor of the practice", () => {
    expect(grown(of({ settingFactor: 0.75 }), 8, 9) / grown(plain, 8, 9)).toBeCloseTo(0.75, 12)
  })
})

describe("season", () => {
  it.each(["2019-12-21", "2020-12-21", "2021-12-21", "2023-12-21"])("in the north peaks on %s", (on) => {
    expect(factorOn(north, on)).toBeGreaterThan(1.25 - 1e-4)
    expect(factorOn(north, on)).toBeGreaterThan(factorOn(north, addDays(on, -2)))
    expect(factorOn(north, on)).toBeGreaterThan(factorOn(north, addDays(on, 2)))
  })

  it("in the south peaks on 21 June", () => {
    expect(factorOn(south, "2022-06-21")).toBeGreaterThan(1.25 - 1e-4)
  })

  it("is at its lowest half a year from the peak", () => {
    expect(factorOn(north, "2022-06-21")).toBeLessThan(0.75 + 1e-3)
  })

  it.each([0, 9.9, -9.9, undefined])("is left out at latitude %s", (latitudeDegrees) => {
    expect(factorOn(of({ latitudeDegrees }), "2021-12-21")).toBe(1)
  })

  it.each([10, -10, 70])("is applied at latitude %s", (latitudeDegrees) => {
    expect(factorOn(of({ latitudeDegrees }), "2021-12-21")).not.toBe(1)
  })

  it("is gone over a whole year, to the one per cent that the fall with age leaves", () => {
    for (const from of [7, 8.2, 9.5, 11.9]) {
      expect(Math.abs(grown(north, from, from + 1) / grown(plain, from, from + 1) - 1)).toBeLessThan(0.01)
    }
  })

  it("makes a winter half-year longer than the summer half-year before it", () => {
    const [summer, autumn, spring] = ["2021-03-22", "2021-09-21", "2022-03-22"].map((on) =>
      ageYears({ born: child.born, on }),
    ) as [number, number, number]
    expect(grown(north, autumn, spring)).toBeGreaterThan(1.2 * grown(north, summer, autumn))
  })
})

describe("emmetropic growth", () => {
  const growth = emmetropicGrowthOf(emmetropicCurve)

  it("is the integral of its rate", () => {
    expect(Math.abs(grown(growth, 6, 14) - summed(growth, 6, 14))).toBeLessThan(1e-9)
  })

  it("is slower than natural growth of a myope at every age of the model", () => {
    const slowest = of({ child: { born: child.born, sex: "male" } })
    for (let age = 6; age <= 16; age += 0.25) {
      expect(growth.rateMmPerYear(age)).toBeLessThan(slowest.rateMmPerYear(age))
    }
  })
})
