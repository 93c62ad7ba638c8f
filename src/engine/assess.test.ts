import { describe, expect, it } from "vitest"
import { type SteadyChild, steadyCourse } from "../../test/steady-child.js"
import { evidence } from "../evidence/index.js"
import { assess } from "./assess.js"
import type { Course } from "./course.js"
import { METHOD_VERSION } from "./method.js"
import type { Protocol } from "./protocol/protocol.js"
import { standardProtocol } from "./protocol/standard.js"
import { defaultSettings } from "./settings.js"

const girl = (child: Partial<SteadyChild> = {}) =>
  steadyCourse({ born: "2015-12-15", months: [-12, -6, 0, 6, 12], shareAfter: 0.5, ...child })
const on = (course: Course, asOf = "2025-06-15") => assess({ course, asOf, evidence })

describe("an assessment", () => {
  it("is the same for the same course, day and evidence, and leaves the course as it was", () => {
    const course = girl()
    const before = JSON.stringify(course)
    expect(on(course)).toEqual(on(course))
    expect(JSON.stringify(course)).toBe(before)
  })

  it("says on which day, at what age, by which method and parameters", () => {
    expect(on(girl())).toMatchObject({
      asOf: "2025-06-15",
      ageYears: expect.closeTo(9.5, 2),
      method: { version: METHOD_VERSION, parameters: evidence.growth.version },
    })
  })

  it("of a day knows nothing of what was measured later", () => {
    const course = girl()
    const then = { ...course, visits: course.visits.filter(({ date }) => date <= "2024-12-15") }
    const { checks: _, ...later } = on(course, "2024-12-15")
    const { checks: __, ...only } = on(then, "2024-12-15")
    expect(later).toEqual(only)
  })

  it("takes the practice's settings, and the usual ones when there are none", () => {
    const course = girl()
    const ask = (settings?: typeof defaultSettings) =>
      assess({ course, asOf: "2025-06-15", evidence, ...(settings ? { settings } : {}) })
    expect(ask()).toEqual(ask(defaultSettings))
    expect(ask({ ...defaultSettings, alpha: 0.05 }).finding.upper).toBeCloseTo(18, 9)
    expect(ask({ ...defaultSettings, settingFactor: 0.66 }).growth.naturalMmPerYear).toBeCloseTo(
      0.66 * (ask().growth.naturalMmPerYear as number),
      9,
    )
  })

  it("plans its reviews by the practice's own protocol", () => {
    const steps = standardProtocol.steps.map((step) =>
      step.title === "18-month review" ? { ...step, offsetMonths: 16, title: "16-month review" } : step,
    )
    const protocol: Protocol = { ...standardProtocol, steps }
    const { chances } = assess({ course: girl(), asOf: "2025-06-15", evidence, protocol })
    expect(chances[0]).toMatchObject({ step: "16-month review", review: "2025-10-15" })
  })
})

describe("one eye", () => {
  const { right } = on(girl()).eyes

  it("has its length and rate within their intervals, the wider ones outside the narrower", () => {
    const { mm, low95, high95 } = right.length ?? { mm: 0, low95: 0, high95: 0 }
    expect([low95, mm, high95]).toEqual([low95, mm, high95].toSorted((a, b) => a - b))
    const { rate } = right
    const order = [
      rate?.low95,
      rate?.low90,
      rate?.low50,
      rate?.mmPerYear,
      rate?.high50,
      rate?.high90,
      rate?.high95,
    ]
    expect(order).toEqual(order.toSorted((a, b) => (a as number) - (b as number)))
    expect(new Set(order).size).toBe(7)
  })

  it("has both published lines over the dates of its rate", () => {
    expect([right.rate?.from, right.rate?.to]).toEqual(["2024-06-15", "2025-06-15"])
    expect(right.natural?.mmPerYear).toBeCloseTo(0.412, 2)
    expect(right.emmetropic?.mmPerYear).toBeCloseTo(0.114, 2)
  })

  it("with one length has a length and no rate", () => {
    const { right: once } = on(girl({ months: [12] })).eyes
    expect(once).toMatchObject({ rate: null, natural: null, emmetropic: null })
    expect(once.length?.mm).toBeCloseTo(24.3, 1)
    expect(once.detectableChangeMm).toBeGreaterThan(0)
  })

  it("without a length says so in place of a position", () => {
    const course = girl()
    const visits = course.visits.map(({ date, right }) => ({ date, ...(right ? { right } : {}) }))
    expect(on({ ...course, visits }).eyes.left).toEqual({
      length: null,
      rate: null,
      natural: null,
      emmetropic: null,
      detectableChangeMm: null,
      position: { refused: "no length of the left eye has been measured" },
    })
  })

  it("keeps its own dates when the other eye was measured again later", () => {
    const course = girl()
    const visits = course.visits.map(({ date, right, left }, i) =>
      i === 4 ? { date, ...(left ? { left } : {}) } : { date, right, left },
    )
    const { eyes } = on({ ...course, visits })
    expect([eyes.right.rate?.to, eyes.left.rate?.to]).toEqual(["2024-12-15", "2025-06-15"])
  })
})

describe("the earliest answer", () => {
  it("is the first review at which an answer is as likely as not, weighed by what is known", () => {
    const treatments = [{ from: "2024-06-15", kind: "atropine", concentrationPercent: 1 } as const]
    const { finding, chances } = on(girl({ months: [-24, -18, -12, -6, 0], treatments }), "2024-06-15")
    // On the first day both hypotheses weigh the same.
    const even = chances.find(({ ifItWorks, ifNot }) => (ifItWorks + ifNot) / 2 >= 0.5)
    expect(even).toBeDefined()
    expect(finding.earliestAnswer).toBe(even?.review)
  })

  it("is null when no review reaches even odds", () => {
    const { finding, chances } = on(girl({ months: [0] }), "2024-06-15")
    expect(Math.max(...chances.flatMap(({ ifItWorks, ifNot }) => [ifItWorks, ifNot]))).toBeLessThan(0.5)
    expect(finding.earliestAnswer).toBeNull()
  })
})

describe("a refused child", () => {
  it("still has its concerns named: safety does not wait for evidence of growth", () => {
    const symptoms = [{ kind: "light-sensitivity", grade: 3 } as const]
    const course = girl({ born: "2020-06-15" })
    const visits = course.visits.map((visit) => ({ ...visit, symptoms }))
    const answer = on({ ...course, visits }, "2025-06-15")
    expect(answer.refused).toMatch(/6 to 18/)
    expect(answer.concerns.length).toBeGreaterThan(0)
  })
})
