import { expect, it } from "vitest"
import { isPluralName, treatmentName } from "./treatment-name.js"

it("drops are named with their strength", () => {
  expect(treatmentName({ kind: "atropine", concentrationPercent: 0.05 })).toBe("atropine 0.05 %")
})

it.each(["defocus-spectacles", "lenslet-spectacles", "dual-focus-lens", "multifocal-lens"] as const)(
  "%s are several: they work",
  (kind) => {
    expect(isPluralName(treatmentName({ kind }))).toBe(true)
  },
)

it.each(["atropine", "orthokeratology"] as const)("%s is one: it works", (kind) => {
  expect(isPluralName(treatmentName({ kind }))).toBe(false)
})

it("of several given together the first decides", () => {
  expect(isPluralName("atropine 0.01 % with lenslet spectacles")).toBe(false)
})

it("the eye that is treated changes nothing", () => {
  expect(isPluralName("lenslet spectacles in the right eye")).toBe(true)
})
