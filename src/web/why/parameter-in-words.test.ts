import { expect, it } from "vitest"
import { inLanguage, isSaidIn, learn } from "../../engine/say.js"
import { evidence } from "../../evidence/index.js"
import { spanish } from "../../words/es/index.js"
import { nameInWords, sourceInWords, valueInWords } from "./parameter-in-words.js"

const parameter = { value: 0.272, unit: "mm/a", sd: 0.019, source: ["assumption"], note: "" }

it("a parameter has its name in words", () => {
  expect(nameInWords("rateAt10MmPerYear")).toBe("Rate at 10 mm per year")
})
it("every parameter of growth has a name in Spanish", () => {
  learn("es", spanish)
  for (const name of Object.keys(evidence.growth.values))
    expect([name, isSaidIn(nameInWords(name), "es")]).toEqual([name, true])
  expect(inLanguage("es", () => nameInWords("girlFactor"))).toBe("Factor de las niñas")
  expect(inLanguage("es", () => valueInWords(parameter))).toBe("0,272 mm/a, conocido con ± 0,019 (1 DE)")
})
it("a parameter that has words for a name keeps them", () => {
  expect(nameInWords("share of natural growth withheld by atropine 0.05 %")).toBe(
    "Share of natural growth withheld by atropine 0.05 %",
  )
})
it("a parameter is written with its unit and how well it is known", () => {
  expect(valueInWords(parameter)).toBe("0.272 mm/a, known to ± 0.019 (1 SD)")
})
it("an assumption is written with the range tried", () => {
  expect(sourceInWords({ ...parameter, rangeTried: [0.1, 0.4] }, [])).toBe(
    "assumption, tried from 0.1 to 0.4",
  )
})
it("sources are written as their numbers in the list, other words as they stand", () => {
  expect(sourceInWords({ ...parameter, source: ["b", "a"] }, ["a", "b"])).toBe("source 2, 1")
  expect(sourceInWords({ ...parameter, source: ["common practice, no source"] }, [])).toBe(
    "common practice, no source",
  )
})
