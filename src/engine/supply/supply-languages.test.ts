import { beforeAll, describe, expect, it } from "vitest"
import { learnEveryLanguage } from "../../words/index.js"
import type { Course, Supply } from "../course.js"
import { standardProtocol } from "../protocol/standard.js"
import { inLanguage } from "../say.js"
import { supplyReport } from "./supply-report.js"

beforeAll(learnEveryLanguage)

const bottle: Supply = { dispensed: "2025-01-01", concentrationPercent: 0.05 }
const course: Course = {
  lengthwise: 1,
  child: { born: "2016-03-14", sex: "female" },
  visits: [{ date: "2025-01-01" }],
  treatments: [{ kind: "atropine", from: "2025-01-01", concentrationPercent: 0.05 }],
  supplies: [
    { ...bottle, opened: "2025-01-01", beyondUse: "2025-01-31" },
    { ...bottle, opened: "2025-02-20", beyondUse: "2025-02-10" },
    { ...bottle, opened: "2025-01-02", beyondUse: "2025-02-01", concentrationPercent: 0.5 },
  ],
}
const read = (supplies: Course["supplies"], asOf: string) =>
  supplyReport({ course: { ...course, supplies }, asOf, protocol: standardProtocol })
const whys = (supplies: Course["supplies"], asOf: string) => read(supplies, asOf).faults.map(({ why }) => why)

describe("what is said of bottles in Spanish", () => {
  it("is every fault, with the days of the English and the decimals of the language", () => {
    inLanguage("es", () => {
      expect(whys(course.supplies, "2025-03-01")).toEqual([
        "su último día de uso fue el 2025-01-31, hace 29 días, y no hay otro frasco vigente: no debe usarse más",
        "se abrió el 2025-02-20, pasado su último día de uso, el 2025-02-10: sus noches no se cuentan",
        "atropina al 0,5 % no estaba prescrita mientras este frasco podía usarse",
      ])
      expect(whys([bottle], "2025-01-10")).toEqual([
        "nadie registró cuándo se abrió: cuenta desde el 2025-01-01, el día en que se entregó",
      ])
    })
  })

  it("is the definition of the share as well; the share itself is the same", () => {
    const english = read(course.supplies, "2025-03-01")
    const spanish = inLanguage("es", () => read(course.supplies, "2025-03-01"))
    expect(spanish.definition).toMatch(/^días con un frasco abierto y vigente/)
    expect(spanish.proportionOfDaysCovered).toBe(english.proportionOfDaysCovered)
  })
})
