import { describe, expect, it } from "vitest"
import { concernCourse, firstVisitCourse, slowedCourse } from "../../../test/e2e/courses.js"
import type { Course } from "../../engine/course.js"
import { defaultSettings } from "../../engine/settings.js"
import { citationOf, evidence } from "../../evidence/index.js"
import { readCourse } from "../reading.js"
import { findingWhy } from "./finding-why.js"
import { forecastWhy } from "./forecast-why.js"
import { growthWhy } from "./growth-why.js"
import { positionWhy } from "./position-why.js"
import { citedSources, parameterInWords, sourceInWords, valueInWords } from "./why.js"

const whysOf = (course: Course) => {
  const reading = readCourse(course, { today: "2026-11-25", settings: defaultSettings })
  const input = { ...reading, evidence }
  return {
    growth: growthWhy(input),
    finding: findingWhy(input),
    forecast: forecastWhy(reading),
    position: positionWhy({ eyes: reading.assessment.eyes, references: evidence.references }),
  }
}

describe("every figure can be asked why", () => {
  it.each([
    ["treated", slowedCourse],
    ["just begun", firstVisitCourse],
    ["with a concern", concernCourse],
  ])("has inputs and steps for a child who is %s", (_, course) => {
    for (const why of Object.values(whysOf(course))) {
      expect(why.inputs.length).toBeGreaterThan(0)
      expect(why.steps.length).toBeGreaterThan(1)
    }
  })
  it("names a source, or says assumption, for every parameter", () => {
    const { growth, finding, forecast } = whysOf(slowedCourse)
    for (const { parameter } of [growth, finding, forecast].flatMap((why) => why.parameters)) {
      const listed = citedSources([{ name: "", parameter }])
      expect(sourceInWords(parameter, listed)).not.toBe("")
      expect(listed.filter((id) => citationOf(id) === undefined)).toEqual([])
    }
  })
  it("gives the effect of the treatment the child has", () => {
    const names = whysOf(slowedCourse).finding.parameters.map(({ name }) => name)
    expect(names[0]).toBe("Share of natural growth withheld by atropine 0.05 %")
  })
  it("shows prior beside posterior", () => {
    const inputs = whysOf(slowedCourse).finding.inputs.map(([, value]) => value)
    expect(inputs.some((value) => /before the measurements .* after them/.test(value))).toBe(true)
  })
  it("gives the grade of the table a position was read from", () => {
    expect(whysOf(slowedCourse).position.tables.map(({ grade }) => grade)).toEqual(["C"])
  })
})

describe("a parameter", () => {
  it("has its name in words", () => {
    expect(parameterInWords("rateAt10MmPerYear")).toBe("Rate at 10 mm per year")
  })
  it("is written with its unit and how well it is known", () => {
    const parameter = { value: 0.272, unit: "mm/a", sd: 0.019, source: ["assumption"], note: "" }
    expect(valueInWords(parameter)).toBe("0.272 mm/a, known to ± 0.019 (1 SD)")
    expect(sourceInWords({ ...parameter, rangeTried: [0.1, 0.4] }, [])).toBe(
      "assumption, tried from 0.1 to 0.4",
    )
    expect(sourceInWords({ ...parameter, source: ["b", "a"] }, ["a", "b"])).toBe("source 2, 1")
  })
})
