import { describe, expect, it } from "vitest"
import type { Course, Treatment } from "../../../src/engine/course.js"
import { familyReading } from "../../../src/report/family/family-reading.js"
import { GROWTH_ANSWERS, growthAnswer } from "../../../src/report/family/growth-answer.js"
import { type SteadyChild, steadyCourse } from "../../steady-child.js"
import { demoChildren, inputOf, leadOf } from "./child.js"

/** Drops from the middle of June 2024; measured every half year; told on the day of the last visit. */
const TODAY = "2025-06-15"
const months = [0, 3, 6, 9, 12]
const lead = (child: Partial<SteadyChild> & { readonly shareAfter: number }, name: string | null = "Mira") =>
  leadOf({ course: steadyCourse({ months, ...child }), today: TODAY, name })

describe("The first sentence answers how the eyes grow", () => {
  it.each([
    [
      0.25,
      "Mira's eyes grew slowly in the 12 months before the last visit, almost like eyes that are not short-sighted.",
    ],
    [
      0.6,
      "Mira's eyes grew in the 12 months before the last visit, but more slowly than is usual without treatment.",
    ],
    [
      1.05,
      "Mira's eyes grew in the 12 months before the last visit about as fast as is usual without treatment.",
    ],
    [2, "Mira's eyes grew faster in the 12 months before the last visit than is usual without treatment."],
  ])("on drops, with %s of natural growth", (shareAfter, sentence) => {
    expect(lead({ shareAfter })).toBe(sentence)
  })

  it.each([
    [0.25, "almost like eyes that are not short-sighted."],
    [0.6, "but more slowly than is usual in short-sighted children of this age."],
    [1.05, "about as fast as is usual in short-sighted children of this age."],
    [2, "than is usual in short-sighted children of this age."],
  ])("without treatment, with %s of natural growth", (shareAfter, end) => {
    expect(lead({ shareAfter, treatments: [] })).toContain(end)
  })

  const stopped: readonly Treatment[] = [
    { from: "2022-06-15", to: "2024-06-15", kind: "atropine", concentrationPercent: 0.05 },
  ]
  it.each([
    [0.25, "Since the treatment stopped, Mira's eyes have grown slowly"],
    [0.6, "Since the treatment stopped, Mira's eyes have grown, but more slowly"],
    [1.05, "Since the treatment stopped, Mira's eyes have grown about as fast"],
    [2, "Since the treatment stopped, Mira's eyes have grown faster"],
  ])("after a stop, with %s of natural growth", (shareAfter, start) => {
    expect(lead({ shareAfter, treatments: stopped })).toContain(start)
  })

  it("says your child where the file holds no name", () => {
    expect(lead({ shareAfter: 2 }, null)).toMatch(/^Your child's eyes grew faster/)
  })
})

describe("Where there is no answer, the first sentence says why", () => {
  const two = steadyCourse({ months: [0, 12], shareAfter: 1, treatments: [] })
  const [first, second] = two.visits
  if (!first || !second) throw new Error("two visits are meant")
  const withVisits = (visits: Course["visits"]): Course => ({ ...two, visits })
  const told = (course: Course, today = TODAY) => leadOf({ course, today })

  it("nothing was measured", () => {
    expect(told(withVisits([]))).toBe(
      "We have not measured the length of Mira's eyes yet, so we cannot say how fast they grow.",
    )
  })
  it("there was one visit only", () => {
    expect(told(withVisits([first]))).toBe(
      "We have measured Mira's eyes once, so we cannot say yet how fast they grow.",
    )
  })
  it("a figure is in doubt", () => {
    const odd = { ...second, right: { axialLength: { mm: 28, method: "optical-biometry" } } } as const
    expect(told(withVisits([first, odd]))).toMatch(
      /^One of our figures looks wrong, so we measure Mira's eyes again/,
    )
  })
  it("the child is not short-sighted", () => {
    expect(
      leadOf({
        course: steadyCourse({ months: [0, 12], shareAfter: 0.3, treatments: [], sphereD: 0.5 }),
        today: TODAY,
      }),
    ).toBe("Mira is not short-sighted so far.")
  })
  it("too little time has passed", () => {
    expect(leadOf({ course: steadyCourse({ months: [0, 2], shareAfter: 1 }), today: "2024-08-15" })).toBe(
      "It is too early to say how fast Mira's eyes grow.",
    )
  })
  it("growth is ending", () => {
    const grown = { born: "2008-06-15", months: [0, 6], shareAfter: 1 }
    expect(leadOf({ course: steadyCourse(grown), today: TODAY })).toMatch(/have little growing left to do/)
  })
  it("there are no figures for the age", () => {
    const course = { ...two, child: { ...two.child, born: "2020-12-15" } }
    expect(told(course)).toBe("We have no figures for this age to compare Mira's eyes with.")
  })
  it("no state is certain enough, and what is sure of two together is said", () => {
    const settings = {
      certainty: 0.999,
      alpha: 0.1,
      beta: 0.1,
      settingFactor: 1,
      cuts: { nearNormal: 0.25, slowed: 0.75, asUntreated: 1.5 },
    }
    const course = steadyCourse({ months, shareAfter: 0.45 })
    expect(leadOf({ course, today: TODAY, settings })).toMatch(
      /have most likely grown more slowly than is usual without treatment/,
    )
    expect(leadOf({ course, today: TODAY, settings: { ...settings, certainty: 1.1 } })).toBe(
      "We cannot be sure yet whether Mira's eyes grow slowly or fast.",
    )
  })
})

describe("Every answer about growth has its sentence", () => {
  it("among the children of the invented practice nearly every one of them is met", () => {
    const met = new Set(demoChildren().map(({ course }) => growthAnswer(familyReading(inputOf({ course })))))
    const notMet = GROWTH_ANSWERS.filter((answer) => !met.has(answer))
    expect(notMet).toEqual(["never"])
  })
  it("no child is left without a sentence", () => {
    for (const { name, course } of demoChildren()) expect(leadOf({ course, name })).toMatch(/\.$/)
  })
})
