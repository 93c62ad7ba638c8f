import { expect, it } from "vitest"
import { inLanguage, isSaidIn, learn } from "../engine/say.js"
import { evidence } from "../evidence/index.js"
import { spanish } from "../words/es/index.js"
import { populationInWords } from "./reference-words.js"

learn("es", spanish)

it.each(evidence.references)(
  "the population of $id is said as the evidence has it, and in Spanish",
  (reference) => {
    expect(populationInWords(reference)).toBe(reference.population)
    expect(isSaidIn(reference.population, "es")).toBe(true)
    expect(inLanguage("es", () => populationInWords(reference))).not.toBe(reference.population)
  },
)
it("a population that is not listed stays as it is written", () => {
  expect(populationInWords({ id: "own", population: "a {practice}" })).toBe("a {practice}")
})
