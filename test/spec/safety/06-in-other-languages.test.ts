import { describe, expect, it } from "vitest"
import { inLanguage, type Language } from "../../../src/engine/say.js"
import { learnEveryLanguage } from "../../../src/words/index.js"
import { child, drops, visit, yes } from "./child.js"

learnEveryLanguage()

const push = (dioptres: number) => ({ dioptres, method: "push-up" as const })
/** Everything that raises a concern, at one visit. */
const story = child({
  treatments: [drops("2025-01-10", 0.05)],
  visits: [
    visit(
      "2025-01-10",
      { pupil: { photopic: 3.8 }, accommodation: push(12), acuity: { nearLogMAR: 0.1 } },
      { symptoms: [] },
    ),
    visit(
      "2025-02-10",
      {
        pupil: { photopic: 6.8 },
        accommodation: push(4.5),
        acuity: { nearLogMAR: 0.34, distanceLogMAR: 0.24 },
        intraocularPressure: { mmHg: 22 },
      },
      {
        symptoms: [
          { kind: "light-sensitivity", grade: 2 },
          { kind: "other", grade: 3 },
        ],
        answers: [yes("flashes"), yes("narrow-angle"), yes("systemic-effects")],
      },
    ),
  ],
  switches: { "CD-118": true, "CD-119": true },
})
/** And after the stop, what has not come back. */
const stopped = child({
  treatments: [drops("2025-01-10", 0.05, "2025-03-01")],
  visits: [
    visit("2025-01-10", { pupil: { photopic: 3.8 }, accommodation: push(12), acuity: { nearLogMAR: 0.1 } }),
    visit("2025-11-01", { pupil: { photopic: 4.3 }, accommodation: push(8), acuity: { nearLogMAR: 0.4 } }),
  ],
  switches: { "CD-097": true },
})

const concernsIn = (language: Language) =>
  inLanguage(language, () => [...story.on("2025-02-10").open, ...stopped.on("2025-11-01").open])
const cautionsIn = (language: Language) => inLanguage(language, () => story.on("2025-02-10").cautions)
const offersIn = (language: Language) =>
  inLanguage(language, () =>
    concernsIn(language).flatMap(({ kind }) =>
      inLanguage(language, () => story.on("2025-02-10").offers(kind)),
    ),
  )

/** Figures and days, whatever sign divides the decimals. */
const figuresOf = (text: string) =>
  (text.match(/\d+(?:[.,-]\d+)*/g) ?? []).map((figure) => figure.replace(",", ".")).toSorted()
const ENGLISH = /\b(the|of|and|was|is|are|before|than|with|eye|drops|asked|verified|born)\b/i

describe("A concern in another language", () => {
  it.each(["es", "zh-Hans"] as const)("%s: is of the same kind, on the same figures and days", (language) => {
    const english = concernsIn("en")
    const said = concernsIn(language)
    expect(said.map(({ kind, since }) => [kind, since])).toEqual(
      english.map(({ kind, since }) => [kind, since]),
    )
    for (const [index, { what }] of said.entries()) {
      expect(figuresOf(what)).toEqual(figuresOf(english[index]?.what ?? ""))
    }
  })

  it.each(["es", "zh-Hans"] as const)("%s: has no English in it", (language) => {
    for (const { what } of concernsIn(language)) expect(what).not.toMatch(ENGLISH)
    for (const { name, says, grade } of cautionsIn(language))
      expect(`${name} ${says} ${grade}`).not.toMatch(ENGLISH)
  })

  it("in Spanish writes decimals with a comma", () => {
    const pupil = concernsIn("es").find(({ kind }) => kind === "pupil")
    expect(pupil?.what).toContain("6,8 mm el 2025-02-10, 3,0 mm más ancha que los 3,8 mm")
  })

  it("in Chinese says a red flag first, and that nobody reassures without an examination", () => {
    const [first] = concernsIn("zh-Hans")
    expect(first?.isRedFlag).toBe(true)
    expect(first?.what).toMatch(/^闪光.*当天就诊.*未经检查/)
  })
})

describe("What can be considered, in Spanish", () => {
  it("has the figures of the English and no English in it", () => {
    const english = offersIn("en")
    for (const [index, offer] of offersIn("es").entries()) {
      const text = [offer.what, ...offer.words, offer.grade].join(" ")
      expect(text).not.toMatch(ENGLISH)
      const same = english[index]
      expect(figuresOf(text)).toEqual(figuresOf([same?.what, ...(same?.words ?? []), same?.grade].join(" ")))
    }
  })
})
