import { beforeAll, expect, it } from "vitest"
import { usualPharmacy } from "../../engine/compounding/usual-pharmacy.js"
import { shippedProtocols } from "../../engine/protocol/shipped.js"
import { standardProtocol } from "../../engine/protocol/standard.js"
import { inLanguage } from "../../engine/say.js"
import { learnEveryLanguage } from "../../words/index.js"
import { Refused } from "../client.js"
import { draftOf, pharmacyOfDraft } from "./pharmacy-draft.js"
import { pharmacyRefusal } from "./pharmacy-faults.js"
import { stepInOneLine } from "./protocols-words.js"

beforeAll(learnEveryLanguage)
const inSpanish = <T>(task: () => T): T => inLanguage("es", task)

it("a step is one whole sentence in either language", () => {
  const step = { ...standardProtocol.steps[2]!, onlyFor: ["atropine"] as const }
  const figures = { offsetMonths: 1, offsetDays: 3, windowDaysBefore: 1, windowDaysAfter: 30 }
  const one = { ...step, ...figures, anchor: "start" as const }
  expect(stepInOneLine(one)).toBe(
    "1 month and 3 days after the start of a first course, from 1 day before to 30 days after; for atropine",
  )
  expect(inSpanish(() => stepInOneLine(one))).toBe(
    "1 mes y 3 días tras el inicio de un primer ciclo, desde 1 día antes hasta 30 días después; para atropina",
  )
})

it("every step that ships reads without an English word", () => {
  const lines = shippedProtocols
    .flatMap(({ steps }) => steps)
    .map((step) => inSpanish(() => stepInOneLine(step)))
  for (const line of lines) expect(line).not.toMatch(/\b(the|after|before|day|month|for|visit)\b/)
})

it("figures of a pharmacy stand in their fields with a comma, and come back as they were", () => {
  const pharmacy = { ...usualPharmacy, stockPercents: [0.5, 1], smallestVolumeMl: 0.2, stockTolerance: 0.035 }
  const draft = inSpanish(() => draftOf(pharmacy))
  expect([draft.stocks, draft.smallestVolumeMl, draft.stockTolerance]).toEqual(["0,5 1", "0,2", "3,5"])
  expect(pharmacyOfDraft(pharmacy.id, draft)).toEqual(pharmacy)
})

it("a share is asked for in per cent whatever the words of the refusal", () => {
  const allowed = "una proporción desde 0 hasta menos de 1"
  const path = "body.devices[1].toleranceFraction"
  const refused = new Refused(422, "no", [{ path, value: null, allowed, message: "" }])
  expect(inSpanish(() => pharmacyRefusal(refused) as Refused).problems[0]?.allowed).toBe(
    "un número desde 0 y menor que 100 (instrumento 2, margen)",
  )
})
