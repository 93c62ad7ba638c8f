import { beforeAll, describe, expect, it } from "vitest"
import type { BottleOrder, Course } from "../../engine/course.js"
import { noRules, type Pharmacy } from "../../engine/practice-rules.js"
import { LANGUAGES } from "../../engine/say.js"
import { defaultSettings } from "../../engine/settings.js"
import { learnEveryLanguage } from "../../words/index.js"
import { type Block, PAPERS, type PaperDocument } from "../document.js"
import type { DocumentInput } from "../document-input.js"
import { documentOf } from "../documents.js"
import { pdfOf } from "../pdf/pdf.js"
import { PARTS_OF, VALUES_OF } from "../template/document-parts.js"
import { compoundingOrderPaper } from "./compounding-order-paper.js"

beforeAll(learnEveryLanguage)

const tern: Pharmacy = {
  id: "tern",
  name: "Tern Pharmacy",
  leadDays: 10,
  stockPercents: [1],
  smallestVolumeMl: 0.5,
  bottleMl: 5,
  isPreserved: false,
  daysAfterOpening: 30,
}
const consent = { date: "2026-01-04", covers: { kind: "atropine", concentrationPercent: 0.05 } } as const
const drops = { kind: "atropine", from: "2026-01-05", concentrationPercent: 0.05 } as const
const course: Course = {
  lengthwise: 1,
  child: { born: "2017-03-14", sex: "female" },
  visits: [{ date: "2026-01-05" }],
  treatments: [drops],
  consents: [consent],
}
const ordered = (date: string, more: Partial<BottleOrder> = {}): BottleOrder => ({
  date,
  concentrationPercent: 0.05,
  bottles: 3,
  volumeMl: 5,
  pharmacy: "Tern Pharmacy",
  ...more,
})
const input = (changes: Partial<Course>, more: Partial<DocumentInput> = {}): DocumentInput => ({
  course: { ...course, ...changes },
  childName: "Vera Quist",
  practice: { name: "Alder Eye Practice" },
  settings: defaultSettings,
  rules: { ...noRules, pharmacies: [tern] },
  today: "2026-03-10",
  language: "en",
  letterhead: { practice: "Alder Eye Practice", lines: [] },
  author: "Ivo Lund",
  ...more,
})
const made = (asked: DocumentInput): PaperDocument => {
  const document = documentOf("order", asked)
  if (document.kind === "refused") throw new Error(document.why)
  return document
}
const why = (asked: DocumentInput) => {
  const document = documentOf("order", asked)
  return document.kind === "refused" ? document.why : undefined
}
const value = ({ blocks }: PaperDocument, label: string) =>
  blocks.flatMap((block) => (block.kind === "pairs" ? block.pairs : [])).find(([name]) => name === label)?.[1]
const linesOf = ({ blocks }: PaperDocument, kind: "caution" | "notes" | "label") =>
  blocks.flatMap((block: Block) => (block.kind === kind ? block.lines : []))

describe("which order is put on paper", () => {
  it("is the latest that was not called off", () => {
    const orders = [
      ordered("2026-02-20", { bottles: 2 }),
      ordered("2026-03-01"),
      ordered("2026-03-05", { cancelled: "2026-03-06" }),
    ]
    const paper = made(input({ orders }))
    expect(value(paper, "Ordered by")).toBe("Ivo Lund, Alder Eye Practice, on 1 March 2026")
    expect(value(paper, "Expected by")).toBe("11 March 2026")
    expect(value(paper, "Consent")).toBe("given on 4 January 2026, in force")
  })

  it("is the one asked for by its place; one that was called off says so first", () => {
    const orders = [ordered("2026-02-20", { cancelled: "2026-02-22" }), ordered("2026-03-01")]
    const paper = made(input({ orders }, { orderIndex: 0 }))
    expect(linesOf(paper, "caution")).toContain("This order was called off on 22 February 2026.")
    expect(linesOf(made(input({ orders })), "caution").join()).not.toContain("called off")
  })

  it("is refused where that place is empty", () => {
    expect(why(input({ orders: [ordered("2026-03-01")] }, { orderIndex: 2 }))).toBe(
      "there is no order 3; 1 is recorded",
    )
  })

  it("is one worked out from the drops in use where none was ordered, and says so", () => {
    const paper = made(input({}))
    // The review of February is overdue and counts as of today, before the bottles can have come; the next is in July.
    expect(linesOf(paper, "caution").slice(1, 3)).toEqual([
      "Not yet ordered: worked out for the treatment in use, atropine 0.05 %.",
      "The bottles are counted from 10 March 2026 to the next review after delivery, on 5 July 2026: 117 nights. Bottles in hand are not taken off.",
    ])
    // 117 nights at 30 days a bottle.
    expect(value(paper, "Bottles")).toMatch(/^4 bottles of 5 mL/)
    expect(value(paper, "Ordered by")).toBe("not ordered yet")
    expect(value(paper, "Expected by")).toBe("10 days after it is ordered")
  })

  it("lasts to the end of the treatment where that comes before the review", () => {
    const paper = made(input({ treatments: [{ ...drops, to: "2026-05-09" }] }))
    expect(linesOf(paper, "caution")[2]).toContain("to the end of the treatment on 9 May 2026: 60 nights")
  })

  it("is held back where no consent in force covers it", () => {
    const held = linesOf(made(input({ consents: [] })), "caution")
    expect(held).toContain(
      "It is not to go out before a consent is in force: no consent to atropine 0.05 % is recorded.",
    )
    expect(linesOf(made(input({})), "caution").join()).not.toContain("go out")
  })

  it("is one sheet a strength: the other eye's drops are named", () => {
    const each = [
      { ...drops, eye: "right" as const },
      { ...drops, eye: "left" as const, concentrationPercent: 0.01 },
    ]
    const paper = made(input({ treatments: each }))
    expect(value(paper, "Use")).toBe("one drop in the left eye at bedtime")
    expect(linesOf(paper, "caution").join("\n")).toContain(
      "atropine 0.05 % is given or decided on as well: it needs a sheet of its own.",
    )
  })

  it("is refused with its reason without drops, and without their strength", () => {
    expect(why(input({ treatments: [] }))).toBe(
      "nothing is on order, and no drops are in use or decided on for this child",
    )
    expect(why(input({ treatments: [{ kind: "atropine", from: "2026-01-05" }] }))).toBe(
      "nothing is on order, and the strength of the drops in use is not recorded",
    )
  })

  it("is refused where the pharmacy cannot make it", () => {
    expect(why(input({ orders: [ordered("2026-03-01", { concentrationPercent: 2 })] }))).toBe(
      "the order cannot be worked out with what its pharmacy states it has: concentrationPercent must be at most the stock's 1 %; it is 2",
    )
  })
})

describe("an order on paper", () => {
  it("says that what is assumed of a pharmacy is common practice, where the practice has not set it", () => {
    const orders = [ordered("2026-03-01", { pharmacy: "Heron" })]
    const assumed = made(input({ orders }))
    expect(value(assumed, "Pharmacy")).toBe("Heron")
    expect(linesOf(assumed, "notes")[0]).toMatch(/taken as usual \(common practice, no source\)/)
    expect(linesOf(made(input({ orders: [ordered("2026-03-01")] })), "notes").join()).not.toContain(
      "as usual",
    )
  })

  it("leaves a blank for a name and a maker that are not known", () => {
    const paper = made(
      input({}, { childName: null, author: undefined, rules: { ...noRules, pharmacies: [] } }),
    )
    expect(paper.title).toBe("Order: atropine sulfate eye drops 0.05 % for this child")
    expect(linesOf(paper, "label")).toContain("For ________, born 14 March 2017")
    expect(linesOf(paper, "label")).toContain("Made by ________")
  })

  it("tells on the label on how many nights of a taper there is a drop, and counts bottles by it", () => {
    const taper = { treatments: [{ ...drops, nightsPerWeek: 2 }], orders: [ordered("2026-03-01")] }
    expect(linesOf(made(input(taper)), "label")).toContain(
      "One drop in each eye at bedtime, 2 nights a week. For the eyes only.",
    )
  })

  it("is for both eyes where each eye's drops of the same strength were entered on their own", () => {
    const each = [
      { ...drops, eye: "right" as const },
      { ...drops, eye: "left" as const, from: "2026-02-01" },
    ]
    expect(value(made(input({ treatments: each, orders: [ordered("2026-03-01")] })), "Use")).toBe(
      "one drop in each eye at bedtime",
    )
  })

  it("has the parts and values that templates are held to", () => {
    for (const asked of [input({}), input({ orders: [ordered("2026-03-01")] })]) {
      const content = compoundingOrderPaper(asked)
      if ("kind" in content) throw new Error(content.why)
      const names = content.parts.map(({ name }) => name)
      expect(PARTS_OF.order.filter((name) => names.includes(name))).toEqual(names)
      expect(Object.keys(content.values)).toEqual(VALUES_OF.order)
    }
  })

  it("is set in every language on both papers, on two pages", () => {
    for (const language of LANGUAGES)
      for (const paper of PAPERS) {
        const pdf = pdfOf([made(input({ orders: [ordered("2026-03-01")] }, { language }))], paper)
        expect([language, paper, pdf.kind === "made" && pdf.pages]).toEqual([language, paper, 2])
      }
  })
})
