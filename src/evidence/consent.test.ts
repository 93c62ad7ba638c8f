import { expect, it } from "vitest"
import { consentEvidence } from "./consent.js"

it.each([
  ["treatments/yam2019", "Yam JC et al. Ophthalmology 2019;126:113-124"],
  [
    "treatments/ijo2023",
    "0.05% atropine in Chinese school children, 3-year RCT. Int J Ophthalmol 2023;16(6)",
  ],
])("a family reads who wrote %s and where it stands, and no title where it can do without", (id, words) => {
  expect(consentEvidence.citation(id)).toBe(words)
})

it("no author who was remembered and not read is named", () => {
  expect(consentEvidence.citation("treatments/wei2020")).not.toMatch(/Wei|memory/)
})

it("a source that nobody knows has no citation", () => {
  expect(consentEvidence.citation("treatments/unknown")).toBeUndefined()
})
