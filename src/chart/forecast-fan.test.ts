import { describe, expect, it } from "vitest"
import type { EyeForecast, Forecast } from "../engine/assessment.js"
import { drawnForecast, fanAt } from "./forecast-fan.js"

const fan = (start: number, perYear: number) => {
  const median = [0, 1, 2].map((year) => start + perYear * year)
  return { p5: median, p25: median, p50: median, p75: median, p95: median }
}
const eye = (start: number, asTreated = 0.1): EyeForecast => ({
  ages: [10, 11, 12],
  untreated: fan(start, 0.3),
  asTreated: fan(start, asTreated),
})
const forecast = (eyes: Forecast["eyes"]): Forecast => ({
  asOf: "2026-09-14",
  eyes,
  chance26mmBy18: null,
  chanceMinus6DBy18: null,
  notes: [],
})

describe("the forecast that is drawn", () => {
  it("is that of the longer eye", () => {
    expect(drawnForecast(forecast({ right: eye(24), left: eye(24.2) }), [8, 12])?.eye).toBe("left")
  })

  it("has no treated fan when treating makes no difference", () => {
    expect(drawnForecast(forecast({ right: eye(24, 0.3) }), [8, 12])?.asTreated).toBeNull()
  })

  it("is null without one, and where none of it lies in the window", () => {
    expect(drawnForecast(undefined, [8, 12])).toBeNull()
    expect(drawnForecast(forecast({ right: eye(24) }), [6, 9])).toBeNull()
  })

  it("can be read at any age it spans and at no other", () => {
    const rows = drawnForecast(forecast({ right: eye(24) }), [8, 12])?.untreated ?? []
    expect(fanAt(rows, 10.5)?.p50).toBeCloseTo(24.15, 10)
    expect([fanAt(rows, 9.9), fanAt(rows, 12.1)]).toEqual([null, null])
  })

  it("that lacks a value for an age is a fault of ours", () => {
    const broken = { ...eye(24), ages: [10, 11, 12, 13] }
    expect(() => drawnForecast(forecast({ right: broken }), [8, 12])).toThrow(
      "forecast p5 must have a value for each age: 13",
    )
  })
})
