import type { Block, PaperDocument } from "../../src/report/document.js"

/** Every text of a document in the order in which it stands. */
export const textsOf = ({ title, blocks, foot }: PaperDocument): readonly string[] => [
  title,
  ...blocks.flatMap(textsOfBlock),
  foot,
]

export function textsOfBlock(block: Block): readonly string[] {
  switch (block.kind) {
    case "heading":
    case "lead":
    case "text":
      return [block.text]
    case "list":
      return block.items
    case "pairs":
      return block.pairs.flat()
    case "table":
      return [...block.head, ...block.rows.flat()]
    case "answer":
      return [block.question, ...block.lines, block.grade]
    case "figure":
      return [...textsOfSvg(block.svg), block.alt, ...(block.caption === undefined ? [] : [block.caption])]
    case "code":
      return [block.alt, ...block.lines]
    case "signatures":
      return block.lines.flatMap(({ role, name }) => [role, name])
    case "caution":
    case "notes":
    case "label":
    case "address":
      return block.lines
    case "page-break":
      return []
    default:
      return block satisfies never
  }
}

/** What is written in a drawing, its hidden description left out. */
const textsOfSvg = (svg: string): readonly string[] =>
  [...svg.matchAll(/<text\b[^>]*>(.*?)<\/text>/gs)].map(([, text = ""]) => text.replace(/<[^>]*>/g, ""))

/** Figures of a text, a decimal comma written as a point. */
export const figuresOf = (text: string): readonly string[] =>
  (text.match(/\d+(?:[.,]\d+)?/g) ?? []).map((figure) => figure.replace(",", "."))

/** Small words of English that no sentence goes without and that no other language here has. */
export const ENGLISH =
  /\b(the|of|and|was|were|is|are|not|with|by|from|for|this|that|has|been|to|on|until|since|day|eye|eyes|yes|mild|possible|note|date|right|left|untreated|review|decision|safety|duties|length|overdue)\b/i
