import { describe, expect, it } from "vitest"
import { concernCourse, firstVisitCourse, slowedCourse } from "../../../test/e2e/courses.js"
import { evidence } from "../../evidence/index.js"
import { sourceById } from "../../evidence/sources.js"
import { assess } from "../assess.js"
import type { Course } from "../course.js"
import { forecast } from "../forecast.js"
import { duties } from "../protocol/duties.js"
import { standardProtocol } from "../protocol/standard.js"
import { defaultSettings } from "../settings.js"
import { dutiesWhy } from "./duties.js"
import { findingWhy } from "./finding.js"
import { forecastWhy } from "./forecast.js"
import { growthWhy } from "./growth.js"
import { orderWhy } from "./order.js"
import { eyesPositionWhy, positionWhy } from "./position.js"
import { refractionWhy } from "./refraction.js"
import type { Why } from "./why.js"

const TODAY = "2026-11-25"

const owedTo = (course: Course, asOf = TODAY) =>
  dutiesWhy({
    duties: duties({ course, protocol: standardProtocol, today: asOf }),
    protocol: standardProtocol,
    asOf,
  })

const whysOf = (course: Course) => {
  const question = { course, asOf: TODAY, evidence, settings: defaultSettings }
  const assessed = { ...question, assessment: assess(question), sourceOf: sourceById }
  return {
    growth: growthWhy(assessed),
    finding: findingWhy(assessed),
    forecast: forecastWhy({
      ...assessed,
      forecast: forecast({ ...question, toAgeYears: 18 }),
      toAgeYears: 18,
      beliefs: assessed.assessment.beliefs,
    }),
    position: eyesPositionWhy(assessed),
    duties: owedTo(course),
  }
}
const inputOf = (why: Why, label: string) => why.inputs.find(([what]) => what === label)?.[1]

describe("every figure can be asked why", () => {
  const courses: readonly (readonly [string, Course])[] = [
    ["treated", slowedCourse],
    ["just begun", firstVisitCourse],
    ["with a concern", concernCourse],
    ["too young to be assessed", { lengthwise: 1, child: { born: "2025-01-01", sex: "male" }, visits: [] }],
  ]
  it.each(courses)("has inputs and a formula for a child who is %s", (_, course) => {
    for (const { inputs, formula } of Object.values(whysOf(course))) {
      expect(inputs.length).toBeGreaterThan(0)
      expect(formula.length).toBeGreaterThan(1)
    }
  })
  it("names a source, the word assumption or common practice for every parameter", () => {
    for (const { parameters, sources } of Object.values(whysOf(slowedCourse))) {
      const known = [...sources.map(({ id }) => id), "assumption", standardProtocol.source]
      for (const { name, source } of parameters) {
        expect(source.length, name).toBeGreaterThan(0)
        expect(source.filter((id) => !known.includes(id))).toEqual([])
      }
    }
  })
  it("gives each source once", () => {
    const ids = whysOf(slowedCourse).finding.sources.map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
  })
  it("ends every sentence of a formula, reasons of the engine included", () => {
    const formula = Object.values(whysOf(firstVisitCourse)).flatMap((why) => why.formula)
    expect(formula.filter((words) => !/^[^a-z].*\.$/.test(words))).toEqual([])
  })
})

describe("the finding", () => {
  it("has what the trials report of the child's treatment first", () => {
    const [first] = whysOf(slowedCourse).finding.parameters
    expect(first?.name).toBe("share of natural growth withheld by atropine 0.05 %")
  })
  it("has the trial of the combination where two treatments are given together", () => {
    const together: Course = {
      ...slowedCourse,
      treatments: [
        { from: "2025-01-10", kind: "orthokeratology" },
        { from: "2025-01-10", kind: "atropine", concentrationPercent: 0.01 },
      ],
    }
    expect(whysOf(together).finding.parameters[0]?.name).toBe(
      "share of natural growth withheld by atropine 0.01 % with orthokeratology",
    )
  })
  it("shows prior beside posterior", () => {
    const values = whysOf(slowedCourse).finding.inputs.map(([, value]) => value)
    expect(values.some((value) => /before the measurements .* after them/.test(value))).toBe(true)
  })
})

describe("the position", () => {
  it("has the grade of the table it was read from", () => {
    expect(whysOf(slowedCourse).position.tables.map(({ grade }) => grade)).toEqual(["C"])
  })
  it("without a reference says what was refused", () => {
    const position = { refused: "no reference of this population is at hand" }
    const child = { sex: "female", ancestry: "african" } as const
    const why = positionWhy({
      placed: [{ what: "this length", mm: 24, position }],
      child,
      references: evidence.references,
      sourceOf: sourceById,
    })
    expect(inputOf(why, "Position, this length")).toBe(`not given: ${position.refused}`)
    expect(why.tables).toEqual([])
  })
})

describe("the duties", () => {
  const atSix: Course = {
    lengthwise: 1,
    child: { born: "2016-01-01", sex: "female" },
    visits: [],
    treatments: [{ from: "2026-01-10", kind: "lenslet-spectacles" }],
    consents: [{ date: "2026-01-02", covers: { kind: "lenslet-spectacles" } }],
  }
  it("name the protocol, its version, and that it is common practice without a source", () => {
    expect(inputOf(owedTo(atSix), "Protocol")).toBe(
      "Standard protocol (standard), version 1: common practice, no source",
    )
  })
  it("say the offset and window of the step that is next", () => {
    expect(inputOf(owedTo(atSix, "2026-07-01"), "Next duty")).toMatch(/^6-month review: due 2026-07-10/)
    expect(inputOf(owedTo(atSix, "2026-07-01"), "Counted as")).toBe(
      "6 months from the start or 6 months from the restart, from 30 days before to 30 days after",
    )
  })
  it("say what a check after a change of strength is counted from", () => {
    const drops = (from: string, concentrationPercent: number, to: string | null = null) =>
      ({ from, to, kind: "atropine", concentrationPercent }) as const
    const changed: Course = {
      ...atSix,
      treatments: [drops("2026-01-10", 0.01, "2026-05-10"), drops("2026-05-10", 0.05)],
      consents: [0.01, 0.05].map((concentrationPercent) => ({
        date: "2026-01-02",
        covers: { kind: "atropine", concentrationPercent },
      })),
      supplies: [{ opened: "2026-05-10", concentrationPercent: 0.05, beyondUse: "2026-12-01" }],
      visits: [{ date: "2026-01-09", right: { axialLength: { mm: 24 } }, left: { axialLength: { mm: 24 } } }],
    }
    const why = dutiesWhy({
      duties: duties({ course: changed, protocol: standardProtocol, today: "2026-06-05" }).filter(
        ({ step }) => step.includes("change of strength"),
      ),
      protocol: standardProtocol,
      asOf: "2026-06-05",
    })
    expect(inputOf(why, "Counted as")).toBe(
      "1 month from the change of strength, from 10 days before to 20 days after",
    )
  })
  it("say what a consent is counted from, which belongs to no step", () => {
    const why = owedTo({ ...atSix, consents: [] }, "2026-01-05")
    expect(inputOf(why, "Next duty")).toMatch(/^consent to lenslet spectacles/)
    expect(inputOf(why, "Counted as")).toMatch(/^by the first day of the treatment/)
  })
  it("say so when nothing is owed", () => {
    expect(inputOf(dutiesWhy({ duties: [], protocol: standardProtocol, asOf: TODAY }), "Next duty")).toBe(
      "nothing is owed",
    )
  })
})

describe("a refraction", () => {
  it("rests on the source of vertex compensation only when a vertex distance is given", () => {
    const ids = (vertexMm?: number) =>
      refractionWhy({ readings: ["-3.00"], vertexMm, sourceOf: sourceById }).sources.map(({ id }) => id)
    expect(ids()).toEqual(["clinical/THIBOS-1997", "clinical/PV-TEACHING"])
    expect(ids(12)).toEqual(["clinical/THIBOS-1997", "clinical/PV-TEACHING", "clinical/VERTEX-EDU"])
  })
})

describe("an order", () => {
  const request = { concentrationPercent: 0.05, stockPercent: 1, bottles: 1, volumeMl: 10 }
  it("marks what is common practice", () => {
    const { parameters } = orderWhy(request, sourceById)
    expect(parameters.map(({ source }) => source)).toEqual(
      Array.from({ length: 3 }, () => ["common practice, no source"]),
    )
  })
  it("shows the smallest volume a pharmacy has set", () => {
    const why = orderWhy({ ...request, smallestVolumeMl: 0.2 }, sourceById)
    expect(inputOf(why, "Smallest volume measured")).toBe("0.2 mL")
  })
})
