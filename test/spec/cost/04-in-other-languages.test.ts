import { beforeAll, describe, expect, it } from "vitest"
import { costPer01Mm } from "../../../src/engine/cost/cost-per-01-mm.js"
import { type CostPlan, type CostPlanInput, costPlan } from "../../../src/engine/cost/cost-plan.js"
import { costRows, rowInWords } from "../../../src/engine/cost/cost-rows.js"
import { amountInWords, moneyInWords, readAmount } from "../../../src/engine/cost/money.js"
import { inLanguage, LANGUAGES, type Language } from "../../../src/engine/say.js"
import { demoFees } from "../../../src/engine/simulate/demo-fees.js"
import { learnEveryLanguage } from "../../../src/words/index.js"
import { child, drops, fullVisit } from "../protocol/child.js"

beforeAll(learnEveryLanguage)

const today = "2025-01-10"
const { course } = child({ visits: [fullVisit(today)] }).on(today)

function plan(language: Language, input: Partial<CostPlanInput> = {}): CostPlan {
  const rules = { feeSchedules: [demoFees], pharmacies: [] }
  const answer = inLanguage(language, () =>
    costPlan({ course: { ...course, treatments: [drops(today, 0.05)] }, rules, today, ...input }),
  )
  if (answer.kind === "refused") throw new Error(answer.why)
  return answer
}
/** A plan without its words: days, amounts, coverages, sums. */
const figures = ({ lines, totals, from, to, plannedStop }: CostPlan) => ({
  lines: lines.map(({ date, cents, coverage, kind, fee }) => ({ date, cents, coverage, kind, fee })),
  totals,
  from,
  to,
  plannedStop,
})

describe("A plan in another language", () => {
  it.each(LANGUAGES)("%s has the same figures as in English, to the cent", (language) => {
    expect(figures(plan(language))).toEqual(figures(plan("en")))
  })

  it("names visits, bottles and what is measured as the language does", () => {
    const said = (language: Language) =>
      inLanguage(language, () => costRows(plan(language)).slice(2, 6).map(rowInWords))
    expect(said("en")).toEqual([
      "5 bottles of atropine 0.05 %",
      "6-month review",
      "Length measurement",
      "Refraction",
    ])
    expect(said("es")).toEqual([
      "5 frascos de atropina al 0,05 %",
      "revisión de los 6 meses",
      "Medición de la longitud axial",
      "Refracción",
    ])
    expect(said("zh-Hans")).toEqual(["5 瓶0.05% 阿托品", "6 个月复查", "眼轴长度测量", "验光"])
  })

  it("says where it will not hold", () => {
    expect(plan("es").assumptions).toContain(
      "Un frasco de atropina al 0,05 % alcanza para los dos ojos durante 30 días después de abrirlo, según el protocolo «Protocolo estándar».",
    )
    expect(plan("zh-Hans").assumptions).toContain(
      "一瓶0.05% 阿托品供双眼在开瓶后使用 30 天，按“标准方案”的规定。",
    )
  })

  it("leaves a title that the practice wrote itself as it was written", () => {
    const fees = demoFees.fees.map((fee) => (fee.id === "length" ? { ...fee, title: "Eye scan {A|B}" } : fee))
    const rules = { feeSchedules: [{ ...demoFees, fees }], pharmacies: [] }
    expect(plan("es", { rules }).lines.map(({ what }) => what)).toContain("Eye scan {A|B}")
  })

  it("is refused in the language, for the same reason", () => {
    const refusal = (language: Language) =>
      inLanguage(language, () => costPlan({ course, rules: { feeSchedules: [], pharmacies: [] }, today }))
    expect(refusal("es")).toEqual({
      kind: "refused",
      why: "No se ha introducido ninguna lista de tarifas.",
    })
    expect(refusal("zh-Hans")).toEqual({ kind: "refused", why: "还没有录入收费标准。" })
  })
})

describe("Money in another language", () => {
  const written = (language: Language, cents: number, currency: string) =>
    inLanguage(language, () => [moneyInWords(cents, currency), amountInWords(cents, currency)])

  it("has the signs and the place of the code that the language has", () => {
    expect(written("en", 123_456_789, "EUR")).toEqual(["1,234,567.89 EUR", "1,234,567.89"])
    expect(written("es", 123_456_789, "EUR")).toEqual(["1.234.567,89\u00a0EUR", "1.234.567,89"])
    expect(written("zh-Hans", 123_456_789, "EUR")).toEqual(["EUR\u00a01,234,567.89", "1,234,567.89"])
  })

  it("has the decimals of the currency, also where the language's own table shortens them", () => {
    for (const language of LANGUAGES) {
      expect(written(language, 1234, "JPY")[1]?.replace(/\D/g, "")).toBe("1234")
      expect(written(language, 1234, "KWD")[1]).toMatch(/^1[.,]234$/)
      expect(written(language, 1234, "LBP")[1]).toMatch(/^12[.,]34$/)
    }
  })

  it("loses no cent of a sum that a binary fraction could not hold", () => {
    expect(written("es", 900_719_925_474_099, "EUR")[1]).toBe("9.007.199.254.740,99")
  })

  it("is read with either decimal sign", () => {
    for (const language of LANGUAGES) {
      const read = (typed: string) => inLanguage(language, () => readAmount(typed, "EUR"))
      expect([read("45,50"), read("45.50")]).toEqual([
        { kind: "amount", cents: 4550 },
        { kind: "amount", cents: 4550 },
      ])
    }
    expect(inLanguage("es", () => readAmount("x", "EUR"))).toEqual({
      kind: "refused",
      allowed: "un importe como 45,00",
    })
  })
})

it("The cost of a tenth is refused in the language", () => {
  const withheldMm = { mm: 0.2, low95: -0.05, high95: 0.45 }
  expect(inLanguage("es", () => costPer01Mm({ plan: plan("es"), withheldMm }))).toEqual({
    kind: "refused",
    why: "puede que no se frene nada (0,20 mm, 95 % entre -0,05 y 0,45), así que un coste por cada 0,1 mm diría más de lo que se sabe.",
  })
})
