import fc from "fast-check"
import { beforeAll, describe, expect, it } from "vitest"
import { compounding } from "../../evidence/generated/compounding.js"
import { learnEveryLanguage } from "../../words/index.js"
import type { Eye, Treatment } from "../course.js"
import type { Pharmacy } from "../practice-rules.js"
import { inLanguage, isSaidIn, LANGUAGES, type Language } from "../say.js"
import { bottlesInWords, bottlesNeeded } from "./bottles-needed.js"
import { type OrderAbout, orderPaper } from "./order-paper.js"
import { orderRemarks } from "./order-remarks.js"
import type { SheetBlock } from "./sheet.js"
import { usualPharmacy } from "./usual-pharmacy.js"

beforeAll(learnEveryLanguage)

const TRANSLATED = LANGUAGES.filter((language) => language !== "en")
/** Names and units, which are written alike in every language. */
const KEPT =
  /Vera Quist|Ivo Lund|Tern|Alder|syringe|flask|saito2019|berton2020|sriin2022|bmcresnotes2022|mOsm\/kg|LDPE|USP|pH|°C|w\/v|p\/v|m[Lg]|E-7/g

interface Asked {
  readonly concentrationPercent: number
  readonly bottles: number
  readonly volumeMl: number
  readonly preserved: boolean
  readonly pharmacy: Pharmacy
  readonly eye: Eye | undefined
  readonly nightsPerWeek: number | undefined
  readonly consented: boolean
  readonly isOrdered: boolean
  readonly poisonCentre: string | undefined
}

const devices = [
  { name: "syringe", smallestVolumeMl: 0.1, largestVolumeMl: 5, graduationMl: 0.05, toleranceFraction: 0.04 },
  { name: "flask", smallestVolumeMl: 1, graduationMl: 0.5, toleranceFraction: 0.05 },
]
const named: Pharmacy = { ...usualPharmacy, id: "tern", name: "Tern", leadDays: 1, daysAfterOpening: 60 }
const asked: fc.Arbitrary<Asked> = fc.record({
  concentrationPercent: fc.constantFrom(0.01, 0.02, 0.025, 0.05, 0.1),
  bottles: fc.integer({ min: 1, max: 7 }),
  volumeMl: fc.constantFrom(5, 10, 2.5),
  preserved: fc.boolean(),
  pharmacy: fc.constantFrom(
    usualPharmacy,
    named,
    { ...named, stockTolerance: 0.05 },
    { ...named, stockPercents: [0.5], devices },
  ),
  eye: fc.constantFrom<Eye | undefined>(undefined, "right", "left"),
  nightsPerWeek: fc.constantFrom(undefined, 1, 3),
  consented: fc.boolean(),
  isOrdered: fc.boolean(),
  poisonCentre: fc.constantFrom(undefined, "01 234"),
})

/** Every text of an order's paper, its remarks and the count of its bottles, line by line. */
function linesIn(language: Language, order: Asked): readonly string[] {
  return inLanguage(language, () => {
    const { concentrationPercent, bottles, volumeMl, eye, nightsPerWeek, pharmacy } = order
    const drops: Treatment = {
      kind: "atropine",
      from: "2026-01-05",
      concentrationPercent: 0.05,
      ...(eye ? { eye } : {}),
      ...(nightsPerWeek ? { nightsPerWeek } : {}),
    }
    const body = { date: "2026-03-01", concentrationPercent, bottles, volumeMl, preserved: order.preserved }
    const course = {
      treatments: [drops, { ...drops, from: "2026-06-01", concentrationPercent: 0.025 }],
      orders: [{ ...body, date: "2026-02-20" }],
      consents: order.consented
        ? [{ date: "2026-01-04", covers: { kind: "atropine" as const, concentrationPercent } }]
        : [],
    }
    const about: OrderAbout = {
      course,
      child: { name: "Vera Quist", born: "2017-03-14", number: "E-7" },
      practice: "Alder",
      prescriber: "Ivo Lund",
      rules: { pharmacies: [pharmacy], contacts: { poisonCentre: order.poisonCentre }, consentWordings: [] },
      isOrdered: order.isOrdered,
      stability: compounding.stability,
      remarks: orderRemarks({ course, concentrationPercent, on: "2026-03-01" }),
    }
    const paper = orderPaper({ ...body, pharmacy: pharmacy.name }, about)
    if (paper.kind === "refused") return paper.problems.flatMap(({ allowed, message }) => [allowed, message])
    const question = { volumeMl, eyes: eye ? 1 : 2, nights: bottles, daysAfterOpening: 30 } as const
    const answer = bottlesNeeded(question)
    const { title, statement, sections } = paper.sheet
    return [
      title,
      statement,
      ...(answer.kind === "needed" ? bottlesInWords(question, answer) : []),
      ...sections.flatMap(({ heading, blocks }) => [heading, ...blocks.flatMap(textsOf)]),
    ]
  })
}

function textsOf(block: SheetBlock): readonly string[] {
  switch (block.kind) {
    case "pairs":
      return block.pairs.flat()
    case "table":
      return [...block.head, ...block.rows.flat()]
    case "signatures":
      return block.lines.map(({ role }) => role)
    default:
      return block.lines
  }
}

/** Sorted, since a language may name them in another order. */
const figures = (line: string): readonly string[] =>
  (line.match(/\d+(?:[.,]\d+)?/g) ?? []).map((figure) => figure.replace(",", ".")).toSorted()

describe("an order read in another language", () => {
  it("has the same lines with the same figures", () => {
    fc.assert(
      fc.property(asked, (order) => {
        const english = linesIn("en", order).map(figures)
        for (const language of TRANSLATED) expect(linesIn(language, order).map(figures)).toEqual(english)
      }),
      { seed: 11, numRuns: 150 },
    )
  })

  it("has no English left in it but names and units", () => {
    const english = /\b(the|of|and|for|from|with|is|are|each|drops?|bottles?|nights?|days?|after|in|at|on)\b/i
    fc.assert(
      fc.property(asked, (order) => {
        for (const line of linesIn("es", order)) expect(line.replace(KEPT, "")).not.toMatch(english)
        for (const line of linesIn("zh-Hans", order)) expect(line.replace(KEPT, "")).not.toMatch(/[A-Za-z]/)
      }),
      { seed: 12, numRuns: 150 },
    )
  })

  it("writes decimals as the language does, and parts figures so that none is taken for another", () => {
    const order = fc.sample(asked, { seed: 1, numRuns: 1 })[0] as Asked
    const spanish = linesIn("es", { ...order, concentrationPercent: 0.05 }).join("\n")
    expect(spanish).toContain("colirio de sulfato de atropina al 0,05 %")
    expect(spanish).toContain("(0,01; 0,1; 0,25; 0,5 %; saito2019, resumen)")
    expect(spanish).not.toMatch(/\d\.\d/)
  })

  it("finds every text of the studies translated, so that a new one is not left in English unseen", () => {
    const texts = compounding.stability.flatMap((row) => [
      row.diluent,
      row.result,
      row.how_obtained,
      ...("storage" in row && row.storage ? [row.storage] : []),
    ])
    for (const text of texts)
      for (const language of TRANSLATED) expect([text, isSaidIn(text, language)]).toEqual([text, true])
  })
})
