import { describe, expect, it } from "vitest"
import { type SteadyChild, steadyCourse, studyOf } from "../../../test/steady-child.js"
import { evidence } from "../../evidence/index.js"
import { ageYears } from "../calendar.js"
import type { Course } from "../course.js"
import type { Study } from "../growth/study.js"
import { unwhitened, whiten } from "../growth/whiten.js"
import { type Weighing, weighing } from "./finding.js"
import { type RatioPath, type RatioPoint, ratioPath, type Stop } from "./ratio-path.js"

const dates = { today: "2025-06-15", next: "2025-12-15", later: "2026-06-15" }
const girl = (child: Partial<SteadyChild> = {}) =>
  steadyCourse({ born: "2015-12-15", months: [-12, -6, 0, 6, 12, 18, 24], shareAfter: 0.6, ...child })
const ageOn = (course: Course, on: string) => ageYears({ born: course.child.born, on })

/** The path from today over the figures that were in fact measured later. */
function pathOf(course: Course, today = dates.today): { path: RatioPath; now: Study; then: Study } {
  const [now, then] = [studyOf(course, today), studyOf(course, dates.later)]
  const known = now.model.observations.length
  const model = {
    ...now.model,
    observations: [...now.model.observations, ...then.model.observations.slice(known)],
  }
  const path = ratioPath({
    study: now,
    model,
    index: 0,
    ages: [dates.next, dates.later].map((on) => ageOn(course, on)),
    weighed: weighing(now) as Weighing,
  })
  return { path, now, then }
}

/** The path from a day on without a figure to come. */
function startOf(course: Course) {
  const now = studyOf(course, dates.today)
  const { start, stops } = ratioPath({
    study: now,
    model: now.model,
    index: 0,
    ages: [now.ageYears],
    weighed: weighing(now) as Weighing,
  })
  return { start, stop: stops[0] as Stop, now }
}

function point({ ratio }: Stop, yn: number, yc: number): RatioPoint {
  const out = { log: 0, slopeYn: 0, slopeYc: 0 }
  ratio(yn, yc, out)
  return out
}

/** y'N and y'C of the first figures, as measured. */
function products(study: Study, rows: number) {
  const { values, columns } = whiten(unwhitened(study.model), evidence.growth.values.dioptresPerMm.value)
  const sums = { yn: 0, yc: 0 }
  for (let i = 0; i < rows; i++) {
    const [y, n, c] = [0, 1, 2].map((k) => values[i * columns + k] as number) as [number, number, number]
    sums.yn += y * n
    sums.yc += y * c
  }
  return sums
}

describe("the likelihood ratio from review to review", () => {
  it.each([0.3, 0.6, 1, 1.4])("starts from the exact ratio, at a share of %f", (shareAfter) => {
    const { start, stop, now } = startOf(girl({ shareAfter }))
    expect(point(stop, start.yn, start.yc).log).toBeCloseTo((weighing(now) as Weighing).logRatio, 9)
  })

  it("adds nothing where nothing is measured", () => {
    expect(startOf(girl()).stop.added).toEqual({ nn: 0, nc: 0, cc: 0 })
  })

  // So a chance is the chance of what the test itself will say: within 6 %, since the path uses fewer nodes of pace.
  it.each([0.3, 0.6, 1, 1.4])("is at each review what the test says then, at a share of %f", (shareAfter) => {
    const course = girl({ shareAfter })
    const { path, then } = pathOf(course)
    for (const [stop, on] of [
      [path.stops[0], dates.next],
      [path.stops[1], dates.later],
    ] as const) {
      const measured = studyOf(course, on)
      const { yn, yc } = products(then, measured.model.observations.length)
      const exact = (weighing(measured) as Weighing).logRatio
      expect(Math.abs(point(stop as Stop, yn, yc).log - exact)).toBeLessThan(0.06)
    }
  })

  it("rises as less is grown under treatment, and has the slopes it says", () => {
    const { path, then } = pathOf(girl())
    const stop = path.stops[1] as Stop
    const { yn, yc } = products(then, then.model.observations.length)
    const at = point(stop, yn, yc)
    const step = 1e-4
    const slope = (dn: number, dc: number) =>
      (point(stop, yn + dn, yc + dc).log - point(stop, yn - dn, yc - dc).log) / (2 * step)
    expect(at.slopeYn).toBeCloseTo(slope(step, 0), 6)
    expect(at.slopeYc).toBeCloseTo(slope(0, step), 6)
    expect(at.slopeYc).toBeLessThan(0)
  })

  it("adds natural growth and exposed growth at every review with figures", () => {
    for (const { added } of pathOf(girl()).path.stops) {
      expect(added.nn).toBeGreaterThan(0)
      expect(added.cc).toBeGreaterThan(0)
      expect(added.nc ** 2).toBeLessThanOrEqual(added.nn * added.cc * (1 + 1e-12))
    }
  })

  it("counts no review before the eye can have grown more than can be told", () => {
    const course = girl({ months: [-12, -6, 0] })
    const now = studyOf(course, "2024-06-15")
    const { stops } = ratioPath({
      study: now,
      model: now.model,
      index: 0,
      ages: ["2024-07-15", "2024-12-15"].map((on) => ageOn(course, on)),
      weighed: weighing(now) as Weighing,
    })
    expect(stops.map(({ counts }) => counts)).toEqual([false, true])
  })
})
