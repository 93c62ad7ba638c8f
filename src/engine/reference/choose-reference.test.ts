import { describe, expect, it } from "vitest"
import { references } from "../../evidence/references.js"
import type { Ancestry } from "../course.js"
import { chooseReference } from "./choose-reference.js"

const length = { references, sex: "female", ageYears: 9, measure: "axial-length" } as const
const idOf = (answer: ReturnType<typeof chooseReference>) =>
  "reference" in answer ? answer.reference.id : answer.refused

describe("the reference of a child when none was named", () => {
  it.each([6, 9, 15])("is the European one by sex for a European child of %d", (ageYears) => {
    expect(idOf(chooseReference({ ...length, ancestry: "european", ageYears }))).toBe(
      "al-europe-sexed-approx",
    )
  })

  it.each([
    ["axial-length", 6.5, "olsm-al"],
    ["spherical-equivalent", 4, "truckenbrod2020-se"],
  ] as const)("falls back to the next that fits: %s at %d", (measure, ageYears, id) => {
    const others = references.filter((reference) => reference.id !== "al-europe-sexed-approx")
    expect(
      idOf(chooseReference({ references: others, sex: "male", ancestry: "european", ageYears, measure })),
    ).toBe(id)
  })

  it("is refused with every limit when the age fits none", () => {
    expect(idOf(chooseReference({ ...length, ancestry: "european", ageYears: 16 }))).toBe(
      "no length reference at hand fits a child of European ancestry and this age; " +
        "the reference al-europe-sexed-approx covers 6 to 15 years for a female child; age 16 lies outside; " +
        "the reference olsm-al has cells for children of 6, 7 and 8 completed years only; age 16 lies outside; " +
        "a published L-M-S or centile table of that population can be loaded, for example centiles of Leipzig 2021 " +
        "(doi 10.1111/opo.12817) or centiles of the European 2018 paper (PMC6002955)",
    )
  })

  it("is refused for an East Asian child, naming what could be loaded", () => {
    expect(idOf(chooseReference({ ...length, ancestry: "east-asian" }))).toBe(
      "no length reference at hand fits a child of East Asian ancestry; a published L-M-S or centile table of that " +
        "population can be loaded, for example L, M, S by sex of Wuhan 2022 (doi 10.1038/s41598-022-08907-5) or " +
        "centiles of Shanghai 2023 (doi 10.1136/bjophthalmol-2021-319431)",
    )
  })

  it.each(["south-asian", "african", "other"] as const)(
    "is refused for a child of %s ancestry",
    (ancestry) => {
      expect(idOf(chooseReference({ ...length, ancestry }))).toMatch(
        /^no length reference at hand fits a child of/,
      )
    },
  )

  it.each(["unstated", undefined] as readonly (Ancestry | undefined)[])(
    "is refused when ancestry is %s",
    (ancestry) => {
      expect(idOf(chooseReference({ ...length, ancestry }))).toBe(
        "no length reference is chosen while the child's ancestry is unstated; state it, or name a reference",
      )
    },
  )

  it("is the practice's own table before the shipped ones, once the practice says so", () => {
    const shipped = references.find((reference) => reference.id === "al-europe-sexed-approx")!
    const withOwn = [...references, { ...shipped, id: "our-own" }]
    const practiceOrder = {
      "axial-length": { european: ["our-own"], "east-asian": ["our-own"] },
      "spherical-equivalent": {},
    }
    const choice = (ancestry: Ancestry) =>
      idOf(chooseReference({ ...length, references: withOwn, ancestry, practiceOrder }))
    expect([choice("european"), choice("east-asian")]).toEqual(["our-own", "our-own"])
    expect(choice("african")).toMatch(/^no length reference/)
  })

  it("is never one of grade D", () => {
    const gradeD = references.map((reference) => ({ ...reference, grade: "D" as const }))
    expect(idOf(chooseReference({ ...length, references: gradeD, ancestry: "european" }))).toMatch(
      /^no length/,
    )
  })
})
