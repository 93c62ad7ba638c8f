import { expect, it } from "vitest"
import { correctedDistanceLogMAR } from "./corrected-acuity.js"

it.each([
  [{ distanceLogMAR: 0.1 }, 0.1],
  [{ distanceLogMAR: 0.1, distanceCorrection: "worn" as const }, 0.1],
  [{ distanceLogMAR: 0.8, distanceCorrection: "uncorrected" as const }, undefined],
])("of %j it is %s", (acuity, logMAR) => {
  expect(correctedDistanceLogMAR({ acuity })).toBe(logMAR)
})

it("of an eye that was not looked at it is absent", () => {
  expect(correctedDistanceLogMAR(undefined)).toBeUndefined()
})
