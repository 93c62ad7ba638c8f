import { describe, expect, it } from "vitest"
import type { Language } from "../../../src/engine/say.js"
import type { Block, DocumentContent } from "../../../src/report/document.js"
import { blocksOf, demoChildren, demoRules, proseOf, reported } from "./child.js"

const rules = { ...demoRules, contacts: { poisonCentre: "01 02 03 04 05", urgent: "06 07 08 09 10" } }
const link = "https://practice.example/f/x"
const inAll = demoChildren().map(({ course }) => {
  const as = (language: Language) => reported({ course, language, rules, familyLink: link }, { on: "screen" })
  return { id: course.child.id ?? "", en: as("en"), es: as("es"), zh: as("zh-Hans") }
})

/** What a block is made of, without its words. */
function shapeOf(block: Block): string {
  if (block.kind === "pairs") return `pairs ${block.pairs.length}`
  if (block.kind === "heading") return `heading ${block.level}`
  return `${block.kind} ${proseOf(block).length}`
}

const partsOf = ({ parts }: DocumentContent) =>
  parts.map(({ name, blocks }) => `${name}: ${blocks.map(shapeOf).join(", ")}`)

const textsOf = (content: DocumentContent): readonly string[] => [
  content.title,
  content.foot,
  ...blocksOf(content).flatMap((block) => {
    if (block.kind === "pairs") return block.pairs.flat()
    if (block.kind === "figure") return [block.alt, ...drawnIn(block.svg)]
    return block.kind === "code" ? [block.alt, ...block.lines] : proseOf(block)
  }),
]

const drawnIn = (svg: string): readonly string[] =>
  [...svg.matchAll(/>([^<>]+)</g)].map(([, text = ""]) => text.trim()).filter((text) => text !== "")

/** Decimals, written with a point. */
const decimalsIn = (content: DocumentContent) =>
  textsOf(content)
    .flatMap((text) => text.match(/\d+[.,]\d+/g) ?? [])
    .map((figure) => figure.replace(",", "."))
    .toSorted()

/** Words that no English sentence does without and that are none in the other languages. */
const ENGLISH =
  /\b(the|and|of|with|is|are|was|you|your|we|not|that|this|grew|eyes?|short-sighted|treatment)\b/i

describe("Every language tells the same", () => {
  it.each(inAll.map((child) => [child.id, child] as const))(
    "%s: the same parts and blocks",
    (_, { en, es, zh }) => {
      expect(partsOf(es)).toEqual(partsOf(en))
      expect(partsOf(zh)).toEqual(partsOf(en))
    },
  )

  it("the same figures, with the decimal sign of the language", () => {
    for (const { en, es, zh } of inAll) {
      expect(decimalsIn(es)).toEqual(decimalsIn(en))
      expect(decimalsIn(zh)).toEqual(decimalsIn(en))
      expect(textsOf(es).join(" ")).not.toMatch(/\d\.\d/)
    }
  })

  it("no sentence is left in English", () => {
    for (const { es, zh } of inAll)
      for (const text of [...textsOf(es), ...textsOf(zh)].map((each) =>
        each.replaceAll("The demo practice", ""),
      ))
        expect(text).not.toMatch(ENGLISH)
  })

  it("Chinese is written in Chinese: beside names and units no word is in Latin letters", () => {
    for (const { zh } of inAll) {
      const words = textsOf(zh)
        .map((text) =>
          text.replaceAll("The demo practice", "").replace(/\p{Lu}[\p{L}-]*( \p{Lu}[\p{L}-]*)* \d{4}/gu, ""),
        )
        .flatMap((text) => text.match(/[A-Za-z]+/g) ?? [])
      expect([...new Set(words)].filter((word) => !["Mira", "mm", "cm", "D"].includes(word))).toEqual([])
    }
  })
})

describe("A child without a name is still spoken of in a whole sentence", () => {
  it.each([
    ["en", "your child"],
    ["es", "su hijo o hija"],
    ["zh-Hans", "您的孩子"],
  ] as const)("%s", (language, words) => {
    for (const { course } of demoChildren()) {
      const told = reported({ course, language, name: null, rules }, { on: "screen" })
      const all = textsOf(told).join(" ")
      expect(all.toLowerCase()).toContain(words)
      expect(all).not.toMatch(/ {2}|null|undefined|\{|\}/)
    }
  })
})
