import { expect, it } from "vitest"
import { growthParameters } from "../../evidence/index.js"
import { opticalTreatments, trials } from "../../evidence/treatments.js"
import { evidenceStrength, strengthInWords } from "./evidence-strength.js"

const rows = [...trials, ...opticalTreatments.arms]
const strengthOf = (id: string) => {
  const effect = growthParameters.effects.find((one) => one.id === id)
  if (!effect) throw new Error(`no effect ${id}`)
  return evidenceStrength(effect, rows)
}

it("0.01 % is said to be small, perhaps nil, with its six trials", () => {
  expect(strengthInWords(strengthOf("atropine-0.01"))).toBe(
    "small, may be nil; conflicting; 6 trials: LAMP, WA-ATOM, ATOM-J, CHAMP, MOSAIC, PMC7530823",
  )
})

it("a trial told in two papers is one trial", () => {
  expect(strengthOf("lenslet-spectacles").trials).toEqual(["Bao 2022"])
})

it("a pooled estimate is no trial", () => {
  expect(strengthOf("orthokeratology").trials).toEqual(["ROMIO", "TO-SEE"])
})

it("one trial is not counted twice over in words", () => {
  expect(strengthInWords(strengthOf("atropine-0.025"))).toBe("1 trial: LAMP")
})

it("where only pooled estimates were read that is said", () => {
  expect(strengthInWords(strengthOf("atropine-0.5"))).toBe("moderate; pooled estimates only")
})
