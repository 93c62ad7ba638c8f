import { describe, expect, it } from "vitest"
import { drops } from "../protocol/child.js"
import { said, told } from "./child.js"

const nine = { born: "2017-03-01", seen: "2026-11-25" }
const six = { born: "2020-03-01", seen: "2026-11-25" }

describe("Whom it speaks of", () => {
  it("a child whose refraction is known and not myopic", () => {
    expect(told({ ...nine, refraction: { sphere: 0.5 } })).not.toHaveProperty("refused")
  })

  it("not a myopic one: one eye at −0.50 D is enough (the cut-off of the growth parameters)", () => {
    expect(told({ ...nine, refraction: { sphere: 0.5 }, left: { sphere: -0.5 } })).toEqual({
      refused: "the child is myopic: an eye is at -0.50 D or beyond",
    })
  })

  it("not one whose refraction is not known", () => {
    expect(told({ ...nine, lengthMm: 23.1 })).toEqual({
      refused: "no refraction has been measured: whether the child is myopic is not known",
    })
  })

  it("not one on treatment", () => {
    const treatments = [drops("2026-01-10", 0.01)]
    expect(told({ ...nine, refraction: { sphere: 0.5 }, treatments })).toHaveProperty("refused")
  })
})

describe("The length beside the emmetropic curve", () => {
  // growth-references/al_emmetrope_curve.csv: 9.5 years 23.271 mm (our own age: 9 years 270 days, 9.74), 10 years 23.316.
  it("is told as a difference from the mean of emmetropic eyes of that age, longer as plus", () => {
    const { right } = said({ ...nine, refraction: { sphere: 0.5 }, lengthMm: 23.6 }).eyes
    if (!right || "refused" in right) throw new Error("a length was expected")
    expect(right.emmetropicMm).toBeGreaterThan(23.271)
    expect(right.emmetropicMm).toBeLessThan(23.316)
    expect(right.differenceMm).toBeCloseTo(23.6 - right.emmetropicMm, 10)
  })

  it("stands beside how such eyes differ among themselves, so that a mean is not taken for a limit", () => {
    const { right } = said({ ...nine, refraction: { sphere: 0.5 }, lengthMm: 23.6 }).eyes
    expect(right).toMatchObject({ betweenEyesSdMm: 0.72 })
  })

  it("is refused below the ages of the curve, with the length still told", () => {
    const { right } = said({
      born: "2021-06-01",
      seen: "2026-11-25",
      refraction: { sphere: 1 },
      lengthMm: 22.3,
    }).eyes
    expect(right).toMatchObject({ mm: 22.3 })
    expect(right).toHaveProperty("refused")
  })

  it("is nothing where none was measured", () => {
    expect(said({ ...nine, refraction: { sphere: 0.5 } }).eyes.right).toBeNull()
  })
})

describe("The refraction beside the cut-offs that were read", () => {
  const cutOffs = (story: Parameters<typeof said>[0]) => {
    const { refraction } = said(story)
    if ("refused" in refraction) throw new Error(refraction.refused)
    return refraction.cutOffs.map(({ cutOff, side }) => `${cutOff.row} ${side}`)
  }

  it("the third-grade sphere of 1999 is read for children of eight, the age cut-offs of 2015 second-hand", () => {
    // f01: sphere under +0.75 D in grade 3; f04: at or below +0.50 D at 7 to 8.
    expect(cutOffs({ born: "2018-03-01", seen: "2026-11-25", refraction: { sphere: 0.62 } })).toEqual([
      "f01 at-risk",
      "f04 beyond",
    ])
  })

  it("of cut-offs tried from +0.41 to +0.58 D at seven an eye may be past some only", () => {
    // f02
    const seven = { born: "2019-03-01", seen: "2026-11-25" }
    expect(cutOffs({ ...seven, refraction: { sphere: 0.4 } })[0]).toBe("f02 at-risk")
    expect(cutOffs({ ...seven, refraction: { sphere: 0.5 } })[0]).toBe("f02 between")
    expect(cutOffs({ ...seven, refraction: { sphere: 0.75 } })[0]).toBe("f02 beyond")
  })

  it.each([
    [six, 0.75, "f03 beyond"],
    [six, 0.74, "f03 at-risk"],
    [nine, 0.25, "f05 at-risk"],
    [nine, 0.26, "f05 beyond"],
    [{ born: "2015-03-01", seen: "2026-11-25" }, 0, "f06 at-risk"],
  ])("a figure exactly at a cut-off counts as its row says: %j, %s D, %s", (child, sphere, expected) => {
    expect(cutOffs({ ...child, refraction: { sphere } })).toContain(expected)
  })

  it("second-hand cut-offs are marked, and come after those whose own text was read", () => {
    const { refraction } = said({ born: "2018-03-01", seen: "2026-11-25", refraction: { sphere: 0.62 } })
    if ("refused" in refraction) throw new Error(refraction.refused)
    expect(refraction.cutOffs.map(({ cutOff }) => cutOff.isSecondHand)).toEqual([false, true])
  })

  it("the more myopic eye is compared", () => {
    expect(cutOffs({ ...nine, refraction: { sphere: 1 }, left: { sphere: 0.25 } })).toEqual(["f05 at-risk"])
  })

  it("there is none for a child of twelve", () => {
    expect(cutOffs({ born: "2014-03-01", seen: "2026-11-25", refraction: { sphere: 0 } })).toEqual([])
  })

  it("without cycloplegia nothing is compared", () => {
    expect(said({ ...nine, refraction: { sphere: 0.25, cycloplegic: false } }).refraction).toEqual({
      refused: "the cut-offs are of refraction with cycloplegia, and none has been measured with it",
    })
  })
})

describe("What became of such children", () => {
  it("at six, the share of children of the same refraction who became myopic, with its interval", () => {
    // growth-references/myopia_within_5y_by_se_at_6_olsm.csv, band 0 to 0.5 D.
    const { refraction } = said({ ...six, refraction: { sphere: 0.25 } })
    expect(refraction).toMatchObject({ share: { n: 96, percent: 28.1, low95: 20.1, high95: 37.8 } })
  })

  it("at other ages none, since none were followed", () => {
    expect(said({ ...nine, refraction: { sphere: 0.25 } }).refraction).toMatchObject({ share: null })
  })
})

describe("Parents, reviews, advice, treatment", () => {
  it("two myopic parents: odds against none, from cohorts and from a second review", () => {
    // progression/f_onset_predictors.csv, f09 and f11
    const { parents } = said({ ...nine, refraction: { sphere: 0.5 }, myopicParents: 2 })
    expect(parents?.odds.map(({ oddsRatio }) => oddsRatio)).toEqual([2.1, 2.9])
  })

  it("parents who were not asked about are not guessed", () => {
    expect(said({ ...nine, refraction: { sphere: 0.5 } }).parents).toBeNull()
  })

  it("reviews come at the interval of the protocol, which says that it has no source", () => {
    expect(said({ ...nine, refraction: { sphere: 0.5 } }).review).toEqual({
      months: 6,
      source: "common practice, no source",
    })
  })

  it("advice stands with the kind of study behind it", () => {
    const [outdoors, near] = said({ ...nine, refraction: { sphere: 0.5 } }).advice
    expect(outdoors?.findings.map(({ kind }) => kind)).toContain("randomised trials, pooled")
    expect(near?.findings[0]?.kind).toContain("observations")
  })

  it("no treatment is forecast, and the refusal says why", () => {
    expect(said({ ...nine, refraction: { sphere: 0.5 } }).treatment.refused).toContain(
      "no trial of a treatment was read",
    )
  })

  it("the bounds of pre-myopia are kept off, and said to be", () => {
    expect(said({ ...nine, refraction: { sphere: 0.5 } }).keptOff.map(({ what }) => what)).toContain(
      "the bounds of pre-myopia",
    )
  })
})
