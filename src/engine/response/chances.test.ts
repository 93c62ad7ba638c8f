import { describe, expect, it } from "vitest"
import { type SteadyChild, steadyCourse } from "../../../test/steady-child.js"
import { evidence } from "../../evidence/index.js"
import { addMonths } from "../calendar.js"
import type { Course } from "../course.js"
import { study } from "../growth/study.js"
import { defaultSettings } from "../settings.js"
import { chances } from "./chances.js"
import { type Weighing, weighing } from "./finding.js"

const START = "2024-06-15"
const reviewsAt = (...months: number[]) =>
  months.map((month) => ({ step: `${month}-month review`, date: addMonths(START, month) }))
const usual = reviewsAt(6, 12, 18, 24)
const girl = (child: Partial<SteadyChild> = {}) =>
  steadyCourse({ born: "2015-12-15", start: START, months: [-12, 0], shareAfter: 0.5, ...child })

function toldOf(
  course: Course,
  {
    reviews = usual,
    plannedStop = null,
    asOf = START,
    settings = defaultSettings,
  }: Partial<Omit<Parameters<typeof chances>[0], "study" | "weighed">> & {
    asOf?: string
    settings?: typeof defaultSettings
  } = {},
) {
  const child = study({ course, asOf, evidence, settings })
  return chances({ study: child, weighed: weighing(child) as Weighing, reviews, plannedStop })
}
const atLast = (told: ReturnType<typeof toldOf>) => told.at(-1)?.ifItWorks as number

describe("chances of an answer", () => {
  const children = [
    girl(),
    girl({ months: [0] }),
    girl({ born: "2017-12-15" }),
    girl({ born: "2010-12-15" }),
    girl({ method: "ultrasound" }),
    girl({ treatments: [{ from: START, kind: "atropine", concentrationPercent: 1 }] }),
  ]

  it.each(children.map((child, i) => [i, child] as const))(
    "lie between 0 and 1 and rise: child %i",
    (_, child) => {
      for (const which of ["ifItWorks", "ifNot"] as const) {
        const told = toldOf(child).map((chance) => chance[which])
        expect(told).toHaveLength(4)
        let before = 0
        for (const chance of told) {
          expect(chance).toBeGreaterThanOrEqual(before)
          expect(chance).toBeLessThanOrEqual(1)
          before = chance
        }
      }
    },
  )

  it("carry the reviews they belong to", () => {
    expect(toldOf(girl()).map(({ review, step }) => ({ date: review, step }))).toEqual(usual)
  })

  it("are the same whenever they are asked for: the futures are laid out, not drawn", () => {
    expect(toldOf(girl())).toEqual(toldOf(girl()))
  })

  it("leave reviews of today and before out", () => {
    expect(toldOf(girl(), { reviews: reviewsAt(-6, 0, 6) }).map(({ review }) => review)).toEqual([
      "2024-12-15",
    ])
  })

  it("are none without a coming review", () => expect(toldOf(girl(), { reviews: [] })).toEqual([]))

  it("are none without a length, since nobody knows with what the eye will be measured", () => {
    const course = girl()
    const visits = course.visits.map(({ date }) => ({ date }))
    const child = study({ course: { ...course, visits }, asOf: START, evidence, settings: defaultSettings })
    const weighed = weighing(studyWithLengths()) as Weighing
    expect(chances({ study: child, weighed, reviews: usual, plannedStop: null })).toEqual([])
  })

  it("are none where a review comes before any difference can be told", () => {
    expect(toldOf(girl(), { reviews: reviewsAt(1) })).toMatchObject([{ ifItWorks: 0, ifNot: 0 }])
  })

  it("are smaller when smaller error rates are asked for", () => {
    const strict = { ...defaultSettings, alpha: 0.01, beta: 0.01 }
    expect(atLast(toldOf(girl(), { settings: strict }))).toBeLessThan(0.5 * atLast(toldOf(girl())))
  })

  it("are smaller when one eye alone is measured", () => {
    const course = girl()
    const visits = course.visits.map(({ date, right }) => ({ date, ...(right ? { right } : {}) }))
    expect(atLast(toldOf({ ...course, visits }))).toBeLessThan(atLast(toldOf(girl())))
  })

  it("hardly change with reviews in between", () => {
    const quarterly = toldOf(girl(), { reviews: reviewsAt(3, 6, 9, 12, 15, 18, 21, 24) })
    expect(Math.abs(atLast(quarterly) - atLast(toldOf(girl())))).toBeLessThan(0.06)
  })

  it("are smaller by two years when the treatment is to stop after three months", () => {
    const stopped = toldOf(girl(), { plannedStop: "2024-09-15" })
    expect(atLast(stopped)).toBeLessThan(0.7 * atLast(toldOf(girl())))
  })

  it("are the greater of the two for the hypothesis that the figures so far lean to", () => {
    const leaning = girl({ months: [-24, -18, -12, -6, 0, 6, 12], shareAfter: 0.4 })
    const [next] = toldOf(leaning, { asOf: "2025-06-15", reviews: reviewsAt(18) })
    expect(next?.ifItWorks).toBeGreaterThan(next?.ifNot as number)
  })
})

function studyWithLengths() {
  return study({ course: girl(), asOf: START, evidence, settings: defaultSettings })
}
