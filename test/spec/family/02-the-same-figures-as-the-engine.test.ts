import { describe, expect, it } from "vitest"
import { assess } from "../../../src/engine/assess.js"
import { yearsBetween } from "../../../src/engine/calendar.js"
import { type Course, EYES } from "../../../src/engine/course.js"
import { forecast } from "../../../src/engine/forecast.js"
import { protocolFor } from "../../../src/engine/protocol/choose-protocol.js"
import { duties } from "../../../src/engine/protocol/duties.js"
import { dayInWords } from "../../../src/engine/say.js"
import { fixed } from "../../../src/engine/words.js"
import { evidence } from "../../../src/evidence/index.js"
import { ofTen } from "../../../src/report/family/of-ten.js"
import { blocksOf, DEMO_DAY, demoChildren, demoRules, reported, wordsIn } from "./child.js"

const shown = (mm: number) => fixed(mm).replace("-", "\u2212")
/** The demo practice is in the north, as its children's courses are drawn. */
function asked(own: Course) {
  const course = { ...own, practice: own.practice ?? { latitude: 51 } }
  const protocol = protocolFor({ course, today: DEMO_DAY, rules: demoRules })
  const owed = duties({
    course,
    protocol,
    today: DEMO_DAY,
    wordings: demoRules.consentWordings,
    pharmacies: demoRules.pharmacies,
  })
  return { assessment: assess({ course, asOf: DEMO_DAY, evidence, protocol }), owed, course }
}

const children = demoChildren().map(({ course }) => ({ told: reported({ course }), ...asked(course) }))
const inDoubt = ({ assessment }: (typeof children)[number]) =>
  assessment.checks.some(({ kind }) => kind === "eyes-exchanged" || kind === "implausible-change")

describe("What a family reads holds the figures of the engine and no others", () => {
  it("lengths as they were measured last", () => {
    for (const { course, told } of children) {
      const visits = course.visits.filter(({ date }) => date <= DEMO_DAY)
      for (const eye of EYES) {
        const mm = visits.findLast((visit) => visit[eye]?.axialLength)?.[eye]?.axialLength?.mm
        if (mm !== undefined) expect(wordsIn(told, "what-we-saw")).toContain(shown(mm))
      }
    }
  })

  it("growth of the window with its 95 % interval, and usual growth over the same dates", () => {
    let count = 0
    for (const child of children) {
      const { growth } = child.assessment
      if (growth.mmPerYear === null || inDoubt(child)) continue
      const years = yearsBetween({ from: growth.from ?? "", to: growth.to ?? "" })
      const words = wordsIn(child.told, "what-we-saw") + wordsIn(child.told, "what-it-means")
      for (const rate of [
        growth.mmPerYear,
        growth.low95,
        growth.high95,
        growth.naturalMmPerYear,
        growth.emmetropicMmPerYear,
      ])
        if (rate !== undefined) expect(words).toContain(`${shown(rate * years)}`)
      count++
    }
    expect(count).toBeGreaterThan(30)
  })

  it("no growth and no eye is shown while a figure is in doubt", () => {
    const doubtful = children.filter(inDoubt)
    expect(doubtful.length).toBeGreaterThan(0)
    for (const { told } of doubtful) {
      expect(wordsIn(told, "what-we-saw")).not.toContain("Growth")
      expect([...blocksOf(told, "figure-eyes"), ...blocksOf(told, "figure-growth")]).toEqual([])
    }
  })

  it("the chance of an answer as children of ten, at the review by which one is likely or else the last", () => {
    let count = 0
    for (const { assessment, told } of children) {
      const { finding, chances } = assessment
      const chance = chances.find(({ review }) => review === finding.earliestAnswer) ?? chances.at(-1)
      const words = wordsIn(told, "what-it-means")
      if (!words.includes("Of 10 children") || !chance) continue
      const { share, count: of } = ofTen(chance.ifItWorks)
      const said = { under: "fewer than", about: "about", over: "more than" }[share]
      expect(words).toContain(`${said} ${of} would give us a clear answer by ${dayInWords(chance.review)}`)
      count++
    }
    expect(count).toBeGreaterThan(10)
  })

  it("what the finding is called, never as certain", () => {
    const starts = { slowed: "Most likely yes", "not-slowed": "Probably not" } as const
    for (const { assessment, told } of children) {
      const { state, likelihoodRatio } = assessment.finding
      const words = wordsIn(told, "what-it-means")
      if (!words.includes("Is it the")) continue
      for (const [other, start] of Object.entries(starts)) expect(words.includes(start)).toBe(state === other)
      if (state !== "slowed" && state !== "not-slowed") continue
      const times = state === "slowed" ? (likelihoodRatio ?? 0) : 1 / (likelihoodRatio ?? 1)
      expect(words).toContain(times > 100 ? "more than 100 times" : `about ${Math.round(times)} times`)
      expect(words).toContain("No answer for one child is ever certain.")
    }
  })

  it("the length at 18 without treatment, with the range of nine in ten, in the words of the figure", () => {
    let count = 0
    for (const child of children) {
      const { course, told } = child
      const ahead = forecast({ course, asOf: DEMO_DAY, evidence, toAgeYears: 18 })
      const [figure] = blocksOf(told, "figure-eyes")
      if (figure?.kind !== "figure" || ahead.refused !== undefined) continue
      const lines = Object.values(ahead.eyes).map(({ untreated: { p5, p50, p95 } }) =>
        [p50, p5, p95].map((line) => fixed(line.at(-1) ?? 0, 1)),
      )
      expect(lines.some((line) => line.every((mm) => figure.alt.includes(mm)))).toBe(true)
      count++
    }
    expect(count).toBeGreaterThan(30)
  })

  it("visits and decisions with the dates of the duties", () => {
    for (const { owed, told } of children) {
      const words = wordsIn(told, "what-we-do-next")
      for (const kind of ["examination", "decision"]) {
        const ahead = owed.filter((duty) => duty.kind === kind && duty.state === "upcoming")
        const now = owed.filter(
          (duty) => duty.kind === kind && (duty.state === "open" || duty.state === "overdue"),
        )
        const [first] = ahead
        if (first && now.length === 0)
          expect(words).toContain(`etween ${dayInWords(first.opens)} and ${dayInWords(first.closes)}`)
        const open = now.find(({ state }) => state === "open")
        if (open && now.every(({ state }) => state === "open"))
          expect(words).toContain(dayInWords(open.closes))
      }
    }
  })
})
