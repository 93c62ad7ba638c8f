import { describe, expect, it } from "vitest"
import { girl, optionsFor } from "./child.js"

describe("No options are compared, and the reason is named", () => {
  it.each([
    ["a child without myopia", girl({ sphere: 0.5 }), /^this child is not myopic/],
    ["a child of five", girl({ born: "2021-03-01" }), /covers children of 6 to 18 years/],
    ["a grown-up", girl({ born: "2007-03-01" }), /covers children of 6 to 18 years/],
    ["a child on its 18th birthday", girl({ born: "2008-06-15" }), /^the evidence ends at 18 years$/],
    ["a child without a length", { ...girl(), visits: [] }, /^no length has been measured/],
  ])("%s", (_, course, reason) => {
    const told = optionsFor(course)
    expect(told.refused).toMatch(reason)
    expect(told.options).toEqual([])
    expect(JSON.stringify(told)).not.toMatch(/\d\.\d/)
  })
})

describe("A strength of which no trial was read has no figures, beside options that have them", () => {
  const told = optionsFor(
    girl({ treatments: [{ from: "2025-12-15", kind: "atropine", concentrationPercent: 0.03 }] }),
  )

  it("nothing is guessed between two strengths that were studied", () => {
    expect(told.options[0]).toMatchObject({
      name: "going on with atropine 0.03 %",
      figures: { refused: "no trial of this treatment at this strength was read" },
      strength: null,
    })
  })

  it("the others stand as ever", () => {
    expect(told.options.slice(1).every(({ figures }) => !("refused" in figures))).toBe(true)
  })
})
