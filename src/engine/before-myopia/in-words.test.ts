import { describe, expect, it } from "vitest"
import { said } from "../../../test/spec/before-myopia/child.js"
import { beforeMyopiaInWords } from "./in-words.js"

const eight = { born: "2018-03-01", seen: "2026-11-25" }
const words = (story: Partial<Parameters<typeof said>[0]> = {}) =>
  beforeMyopiaInWords(said({ ...eight, refraction: { sphere: 0.5 }, lengthMm: 23.6, ...story }))

describe("before myopia in words", () => {
  it("tells a length with its date, its difference and the spread among eyes", () => {
    expect(words().length[0]).toMatch(
      /^Right eye 23\.60 mm on 2026-11-25: 0\.\d\d mm longer than the mean of emmetropic eyes at that age, 23\.\d\d mm, from which such eyes differ with a standard deviation of 0\.64 mm\.$/,
    )
  })

  it.each([
    [{ sphere: 0.5 }, "Not myopic; past 2 of 2 cut-offs for becoming so"],
    [{ sphere: 0.62 }, "Not myopic; past 1 of 2 cut-offs for becoming so"],
    [{ sphere: 1.5 }, "Not myopic, and past no cut-off that was read"],
    [{ sphere: 0.5, cycloplegic: false }, "Not myopic; not compared with any cut-off yet"],
  ])("says first on which side of the cut-offs the refraction is: %j", (refraction, first) => {
    expect(words({ refraction }).first).toBe(first)
  })

  it("says of a second-hand cut-off that its text was not read", () => {
    expect(words().refraction.at(-1)).toContain("the study's own text was not read")
  })

  it("says of a cut-off that was read how well it told", () => {
    expect(words().refraction[1]).toContain("sensitivity 0.867, specificity 0.733")
  })

  it("gives the share at six with its number of children and interval", () => {
    const six = words({ born: "2020-03-01", refraction: { sphere: 0.25 } }).refraction.at(-1)
    expect(six).toContain("Of 96 children of 6 with 0.00 D to less than +0.50 D, 27 became")
    expect(six).toContain("28 % (95 % 20 to 38 %)")
  })

  it("names parents with the odds and their sources", () => {
    expect(words({ myopicParents: 1 }).parents).toEqual([
      "One parent is myopic. Odds of myopia against children of parents without it: 1.53 (95 % 1.21 to 1.85; Zhang et al. 2015, cohorts) and 2.00 (95 % 1.84 to 2.18; Zong et al. 2024).",
    ])
    expect(words({ myopicParents: 0 }).parents).toEqual(["Neither parent is myopic."])
  })

  it("says what is not shown, and why", () => {
    expect(words().notSaid.join(" ")).toContain("Not shown: the bounds of pre-myopia")
  })
})
