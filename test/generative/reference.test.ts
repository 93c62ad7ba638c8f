import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { normalQuantile } from "../../src/engine/numeric/normal.js"
import { position } from "../../src/engine/reference/position.js"
import { valueAtCentile } from "../../src/engine/reference/value-at-centile.js"
import { references } from "../../src/evidence/references.js"

/** A child within the declared ages of a reference; whole hundredths, because doubles crowd near 0. */
const child = fc.constantFrom(...references).chain((reference) =>
  fc.record({
    reference: fc.constant(reference),
    sex: fc.constantFrom("female", "male"),
    ageYears: fc
      .integer({ min: reference.youngestAgeYears * 100, max: reference.oldestAgeYears * 100 })
      .map((hundredths) => hundredths / 100),
  }),
)
const anyCentile = fc.integer({ min: 1, max: 999 }).map((tenths) => tenths / 10)

describe("for every shipped reference, age and sex", () => {
  it("the value at a centile is placed on that centile", () => {
    fc.assert(
      fc.property(child, anyCentile, (about, centile) => {
        const found = valueAtCentile({ ...about, centile })
        fc.pre("value" in found)
        const answer = position({ ...about, measure: about.reference.measure, value: found.value })
        expect("centile" in answer && answer.centile).toBeCloseTo(centile, 6)
        expect("z" in answer && answer.z).toBeCloseTo(normalQuantile(centile / 100), 6)
      }),
    )
  })

  it("a higher centile is a higher value", () => {
    fc.assert(
      fc.property(child, anyCentile, anyCentile, (about, one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)].map((at) =>
          valueAtCentile({ ...about, centile: at }),
        )
        fc.pre("value" in low! && "value" in high! && one !== other)
        expect(high!.value).toBeGreaterThan(low!.value)
      }),
    )
  })

  it("a value is placed or refused, never both and never without its reference and grade", () => {
    fc.assert(
      fc.property(child, fc.double(), (about, value) => {
        const answer = position({ ...about, measure: about.reference.measure, value })
        expect(answer).toMatchObject({ reference: about.reference.id, grade: about.reference.grade })
        expect("refused" in answer).toBe(!("centile" in answer))
        if ("centile" in answer && typeof answer.centile === "number")
          expect(answer.z).toSatisfy(Number.isFinite)
      }),
    )
  })
})
