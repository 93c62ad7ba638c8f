import { mkdirSync, writeFileSync } from "node:fs"
import { beforeAll, describe, expect, it } from "vitest"
import { child, drops, fullVisit } from "../../../test/spec/protocol/child.js"
import type { Course } from "../../engine/course.js"
import { noRules } from "../../engine/practice-rules.js"
import { LANGUAGES, type Language } from "../../engine/say.js"
import { defaultSettings } from "../../engine/settings.js"
import { demoFees } from "../../engine/simulate/demo-fees.js"
import { learnEveryLanguage } from "../../words/index.js"
import type { Block, PaperDocument } from "../document.js"
import type { DocumentInput } from "../document-input.js"
import { documentOf } from "../documents.js"
import { pdfOf } from "../pdf/pdf.js"

beforeAll(learnEveryLanguage)

const today = "2025-01-10"
const { course: seen } = child({ visits: [fullVisit(today)] }).on(today)
const course: Course = {
  ...seen,
  treatments: [drops(today, 0.05)],
  payments: [
    { date: "2024-12-01", cents: 123_450, currency: "EUR" },
    { date: "2025-01-03", cents: 3000, currency: "CHF" },
  ],
}
const input = (language: Language, changes: Partial<DocumentInput> = {}): DocumentInput => ({
  course,
  childName: "Mira Solberg",
  practice: { name: "The practice" },
  settings: defaultSettings,
  rules: { ...noRules, feeSchedules: [demoFees] },
  today,
  language,
  letterhead: { practice: "The practice", lines: ["1 Some Street", "Telephone 0123 456"] },
  ...changes,
})
function estimate(language: Language, changes: Partial<DocumentInput> = {}): PaperDocument {
  const document = documentOf("estimate", input(language, changes))
  if (document.kind === "refused") throw new Error(document.why)
  return document
}
const wordsOf = ({ blocks, title, foot }: PaperDocument): string =>
  [title, foot, JSON.stringify(blocks)].join("\n")
const tableOf = ({ blocks }: PaperDocument) => {
  const found = blocks.find((block): block is Extract<Block, { kind: "table" }> => block.kind === "table")
  if (!found) throw new Error("no table")
  return found
}

describe("an estimate of costs", () => {
  it("keeps three sums apart, says what is paid, and that it is no invoice", () => {
    const text = wordsOf(estimate("en"))
    for (const words of [
      "Mira Solberg",
      '"Not covered","1,000.00 EUR"',
      "You pay 1,000.00 EUR, and up to 100.00 EUR more if nothing uncertain is paid for.",
      "Paid so far: 1,234.50 EUR. The sums above are what is still to come.",
      "One payment in another currency (CHF) is not counted here.",
      "This is an estimate made on 10 January 2025, not an invoice.",
      "30 months, from 10 January 2025 to 10 July 2027.",
    ])
      expect(text).toContain(words)
  })

  it("ends its table at the three sums", () => {
    // 25 bottles at 32.00 and five lengths at 40.00; five refractions at 20.00; five reviews at 55.00.
    const last = tableOf(estimate("en")).rows.at(-1)
    expect(last?.slice(2)).toEqual(["1,000.00", "100.00", "275.00"])
  })

  it("names what has no fee, and says that the sums are too small", () => {
    const fees = demoFees.fees.filter(({ id }) => id !== "check")
    const rules = { ...noRules, feeSchedules: [{ ...demoFees, fees }] }
    const text = wordsOf(estimate("en", { rules }))
    expect(text).toContain("Not counted, because no fee is set for it:")
    expect(text).toContain('"1-month check"')
    expect(text).toContain("The sums are too small by that.")
  })

  it("is made for the treatment and the months asked about", () => {
    const text = wordsOf(estimate("en", { treatment: { kind: "orthokeratology" }, months: 12 }))
    expect(text).toContain('"Plan","Orthokeratology"')
    expect(text).toContain("Still to come in 12 months")
    expect(wordsOf(estimate("en", { treatment: { kind: "none" } }))).toContain(
      "Observation without treatment",
    )
  })

  it("is refused without fees, before they begin, and for months that are none", () => {
    const why = (changes: Partial<DocumentInput>) => {
      const answer = documentOf("estimate", input("en", changes))
      return answer.kind === "refused" ? answer.why : null
    }
    expect(why({ rules: noRules })).toBe("No fee schedule has been entered.")
    expect(why({ rules: { ...noRules, feeSchedules: [{ ...demoFees, from: "2030-01-01" }] } })).toBe(
      "No fee schedule is in force on 10 January 2025; the first one begins on 1 January 2030.",
    )
    expect(why({ months: 2.5 })).toBe("months must be a whole number from 1 to 120, not 2.5")
    expect(why({ months: 1200 })).toContain("not 1200")
  })
})

describe("an estimate in another language", () => {
  /** Every amount of the table in cents, whatever signs it is written with. */
  const cents = (language: Language) =>
    tableOf(estimate(language)).rows.map((row) =>
      [2, 3, 4].map((column) => Number(row[column]?.replace(/\D/g, ""))),
    )

  it.each(["es", "zh-Hans"] as const)("%s has the same figures as in English", (language) => {
    expect(cents(language)).toEqual(cents("en"))
    expect(cents(language).length).toBeGreaterThan(10)
  })

  it("writes amounts and days as the language does", () => {
    expect(wordsOf(estimate("es"))).toContain("Pagado hasta ahora: 1234,50\u00a0EUR.")
    expect(wordsOf(estimate("es"))).toContain("30 meses, del 10 de enero de 2025 al 10 de julio de 2027.")
    expect(wordsOf(estimate("zh-Hans"))).toContain("到目前为止已支付：EUR\u00a01,234.50。")
    expect(wordsOf(estimate("zh-Hans"))).toContain("共 30 个月，从2025年1月10日到2027年7月10日。")
  })

  it.each(["es", "zh-Hans"] as const)("%s leaves no English behind", (language) => {
    const changes: Partial<DocumentInput> = {
      childName: null,
      practice: { name: "" },
      rules: { ...noRules, feeSchedules: [{ ...demoFees, fees: demoFees.fees.slice(2) }] },
    }
    const { blocks } = estimate(language, changes)
    const english = JSON.stringify(blocks.map((block) => ({ ...block, kind: "", figures: [] }))).match(
      /\b(the|of|and|with|fee|fees|not|for|bottle|check|review|month|covered|uncertain|both|Length)\b/gi,
    )
    expect(english).toBeNull()
  })
})

it("is set as a PDF in every language", () => {
  for (const language of LANGUAGES) {
    const pdf = pdfOf([estimate(language)], "a4")
    if (pdf.kind !== "made") throw new Error(pdf.why)
    expect(pdf.pages).toBeLessThanOrEqual(3)
    if (process.env.KEEP_PAPERS) {
      mkdirSync(process.env.KEEP_PAPERS, { recursive: true })
      writeFileSync(`${process.env.KEEP_PAPERS}/estimate-${language}.pdf`, pdf.bytes)
    }
  }
})
