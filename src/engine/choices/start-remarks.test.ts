import { describe, expect, it } from "vitest"
import { growthParameters } from "../../evidence/index.js"
import type { Course } from "../course.js"
import { optionList } from "./option-list.js"
import { startRemarks } from "./start-remarks.js"

const asOf = "2026-06-15"
const eye = (sphere: number) => ({ refraction: { sphere, cycloplegic: true } })
const course = (born: string, before: number, now: number): Course => ({
  lengthwise: 1,
  child: { born, sex: "female" },
  visits: [
    { date: "2025-06-15", right: eye(before), left: eye(before) },
    { date: asOf, right: eye(now), left: eye(now) },
  ],
})
const remarks = (id: string, of: Course) => {
  const option = optionList({ course: of, asOf, parameters: growthParameters }).find((one) => one.id === id)
  if (!option) throw new Error(`no option ${id}`)
  return startRemarks({ option, course: of, asOf }).join("\n")
}

describe("0.01 %", () => {
  it("a fast child of 9 meets the regulator's criterion", () => {
    expect(remarks("atropine-0.01", course("2017-03-14", -2, -2.75))).toMatch(/3 to 14 years; met$/)
  })

  it("a slow child does not, and the yearly change is said", () => {
    expect(remarks("atropine-0.01", course("2017-03-14", -2, -2.25))).toMatch(
      /; this child changed by -0.25 D a year$/,
    )
  })

  it("nor one beyond -6 D", () => {
    expect(remarks("atropine-0.01", course("2017-03-14", -6.5, -7.25))).toMatch(/; this child has -7.25 D$/)
  })

  it("without a refraction a year before, that is said", () => {
    const { visits, ...rest } = course("2017-03-14", -2, -2)
    expect(remarks("atropine-0.01", { ...rest, visits: visits.slice(1) })).toMatch(
      /no two refractions about a year apart are recorded$/,
    )
  })
})

it("drops in a child of 14 carry the ages that were studied, marked as without a source", () => {
  expect(remarks("atropine-0.05", course("2012-03-14", -2, -2.75))).toBe(
    "the strengths were studied at 5 to 12 years of age (common practice, no source); this child is 14",
  )
})

it("a child on its way to 13 is still 12", () => {
  expect(remarks("atropine-0.05", course("2013-06-16", -2, -2.75))).toBe("")
})

it("spectacles carry none", () => {
  expect(remarks("lenslet-spectacles", course("2012-03-14", -2, -2.75))).toBe("")
})

it("drops with orthokeratology: the evidence is limited", () => {
  expect(remarks("atropine-0.01+orthokeratology", course("2017-03-14", -2, -2.75))).toMatch(
    /the evidence is promising but limited/,
  )
})
