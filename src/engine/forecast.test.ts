import { describe, expect, it } from "vitest"
import { type SteadyChild, steadyCourse } from "../../test/steady-child.js"
import { evidence } from "../evidence/index.js"
import type { EyeForecast, Fan } from "./assessment.js"
import type { Course, Eye } from "./course.js"
import { forecast } from "./forecast.js"

const girl = (child: Partial<SteadyChild> = {}) =>
  steadyCourse({ born: "2015-12-15", months: [-12, -6, 0, 6, 12], shareAfter: 0.5, ...child })
const ahead = (course: Course, { asOf = "2025-06-15", toAgeYears = 18 } = {}) =>
  forecast({ course, asOf, evidence, toAgeYears })
const eyeOf = (course: Course, eye: Eye = "right") => ahead(course).eyes[eye] as EyeForecast
const LINES = ["p5", "p25", "p50", "p75", "p95"] as const
const pairs = (a: readonly number[], b: readonly number[]) => a.map((x, i) => [x, b[i] as number] as const)

describe("the ages of a forecast", () => {
  it("run from today to the age asked for, at quarter years", () => {
    const { ages } = ahead(girl(), { toAgeYears: 12 }).eyes.right as EyeForecast
    expect(ages[0]).toBeCloseTo(9.5, 2)
    expect((ages[1] as number) - (ages[0] as number)).toBeCloseTo(0.25, 9)
    expect(ages.at(-1)).toBe(12)
  })

  it("are as many as the values of every line", () => {
    const { ages, untreated, asTreated } = eyeOf(girl())
    for (const fan of [untreated, asTreated]) {
      for (const line of LINES) expect(fan[line]).toHaveLength(ages.length)
    }
  })

  it("end at 18: beyond, a forecast is refused and holds nothing", () => {
    expect(ahead(girl(), { toAgeYears: 18.5 })).toMatchObject({
      refused: "forecasts end at 18 years; 18.5 was asked for",
      eyes: {},
      chance26mmBy18: null,
      chanceMinus6DBy18: null,
    })
    expect(ahead(girl(), { toAgeYears: 18 }).refused).toBeUndefined()
  })
})

describe("the fan", () => {
  const { untreated, asTreated } = eyeOf(girl())
  const ordered = (fan: Fan) =>
    LINES.slice(1).every((line, i) =>
      pairs(fan[LINES[i] as "p5"], fan[line]).every(([low, high]) => low < high),
    )

  it("has its lines in order at every age", () => {
    expect([ordered(untreated), ordered(asTreated)]).toEqual([true, true])
  })

  it("lies higher without the treatment than with it, from today on", () => {
    for (const line of LINES) {
      const after = pairs(untreated[line], asTreated[line]).slice(1)
      expect(after.every(([without, with_]) => without > with_)).toBe(true)
      expect(untreated[line][0]).toBeCloseTo(asTreated[line][0] as number, 9)
    }
  })

  it("begins at the last length and rises and widens from there", () => {
    expect(asTreated.p50[0]).toBeCloseTo(24.1 + 0.206, 1)
    const widths = pairs(asTreated.p5, asTreated.p95).map(([low, high]) => high - low)
    expect(widths).toEqual(widths.toSorted((a, b) => a - b))
    expect(asTreated.p50).toEqual(asTreated.p50.toSorted((a, b) => a - b))
  })

  it("is one fan for a child without treatment", () => {
    const eye = eyeOf(girl({ treatments: [] }))
    expect(eye.asTreated).toEqual(eye.untreated)
  })

  it("is one fan for a child whose treatment has ended", () => {
    const treatments = [
      { from: "2024-06-15", to: "2025-01-15", kind: "atropine", concentrationPercent: 0.05 } as const,
    ]
    const eye = eyeOf(girl({ treatments }))
    expect(eye.asTreated).toEqual(eye.untreated)
  })

  it("of a faster child lies higher", () => {
    const at18 = (share: number) =>
      eyeOf(girl({ treatments: [], shareBefore: share, shareAfter: share })).untreated.p50.at(-1) as number
    expect(at18(1.4)).toBeGreaterThan(at18(0.7) + 0.3)
  })

  it("is drawn for the eye that was measured alone", () => {
    const course = girl()
    const visits = course.visits.map(({ date, left }) => ({ date, ...(left ? { left } : {}) }))
    expect(Object.keys(ahead({ ...course, visits }).eyes)).toEqual(["left"])
  })
})

describe("the chances by 18", () => {
  it("of 26 mm are greater without the treatment, and 0 or 1 for eyes far from it", () => {
    const { untreated, asTreated } = ahead(girl({ startMm: { right: 24.6, left: 24.5 } })).chance26mmBy18 ?? {
      untreated: 0,
      asTreated: 0,
    }
    expect(untreated).toBeGreaterThan(asTreated)
    expect(ahead(girl({ startMm: { right: 21, left: 21 } })).chance26mmBy18?.untreated).toBeLessThan(0.001)
    expect(ahead(girl({ startMm: { right: 26.5, left: 24 } })).chance26mmBy18?.asTreated).toBeGreaterThan(
      0.999,
    )
  })

  it("of 26 mm agree with the fan at 18", () => {
    const course = girl({ startMm: { right: 24.6, left: 23 } })
    const median = eyeOf(course).untreated.p50.at(-1) as number
    const chance = ahead(course).chance26mmBy18?.untreated as number
    expect(chance > 0.5).toBe(median > 26)
  })

  it("of 26 mm are the same whatever age the fan is asked to", () => {
    expect(ahead(girl(), { toAgeYears: 12 }).chance26mmBy18).toEqual(ahead(girl()).chance26mmBy18)
  })

  it("of -6 D need a refraction", () => {
    const course = girl()
    const bare = course.visits.map(({ date, right, left }) => ({
      date,
      right: { axialLength: right?.axialLength },
      left: { axialLength: left?.axialLength },
    }))
    expect(ahead({ ...course, visits: bare }).chanceMinus6DBy18).toBeNull()
    expect(ahead(course).chanceMinus6DBy18?.untreated).toBeGreaterThan(
      ahead(course).chanceMinus6DBy18?.asTreated as number,
    )
  })

  it("of -6 D are those of the more myopic eye, whichever it is", () => {
    const course = girl()
    const unlike = (rightD: number, leftD: number) => {
      const visits = course.visits.map((visit) => ({
        ...visit,
        right: { ...visit.right, refraction: { sphere: rightD, cycloplegic: true } },
        left: { ...visit.left, refraction: { sphere: leftD, cycloplegic: true } },
      }))
      return ahead({ ...course, visits }).chanceMinus6DBy18?.untreated as number
    }
    for (const chance of [unlike(-4, -1), unlike(-1, -4)]) {
      expect(chance).toBeGreaterThan(unlike(-1, -1) + 0.1)
    }
  })

  it("of -6 D are greater for a child who is nearer to it", () => {
    const of = (sphereD: number) => ahead(girl({ sphereD })).chanceMinus6DBy18?.untreated as number
    expect(of(-4)).toBeGreaterThan(of(-1) + 0.1)
  })
})

describe("no forecast", () => {
  it.each([
    ["of a child of 5", { born: "2020-06-15" }, /covers children of 6 to 18 years/],
    ["of a child of 25", { born: "2000-06-15" }, /covers children of 6 to 18 years/],
    ["from untreated myopia for a child without myopia", { sphereD: 0.5 }, /not myopic/],
    ["without a length", { months: [] }, /no length has been measured/],
  ] as const)("%s", (_, child, why) => {
    const answer = ahead(girl(child))
    expect(answer.refused).toMatch(why)
    expect(answer).toMatchObject({ eyes: {}, chance26mmBy18: null, chanceMinus6DBy18: null })
  })
})

describe("the notes", () => {
  it("say of a treatment that goes on that no trial lasted so long", () => {
    expect(ahead(girl()).notes.join()).toMatch(/no trial lasted so long/)
    expect(ahead(girl({ treatments: [] })).notes.join()).not.toMatch(/trial/)
  })
})
