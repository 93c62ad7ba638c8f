import type { Block, PaperDocument } from "./document.js"

/** Every text of a document in the order it is read, for whoever reads it without a page: a check, a search, a program. */
export const wordsOf = ({ title, letterhead, blocks, foot }: PaperDocument): readonly string[] => [
  letterhead.practice,
  ...letterhead.lines,
  title,
  ...blocks.flatMap(wordsOfBlock),
  foot,
]

function wordsOfBlock(block: Block): readonly string[] {
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
      return [...block.head, ...block.rows.flat()].filter((cell) => cell !== "")
    case "answer":
      return [block.question, ...block.lines, block.grade]
    case "figure":
      return block.caption === undefined ? [block.alt] : [block.alt, block.caption]
    case "code":
      return [block.alt, ...block.lines]
    case "caution":
    case "notes":
    case "label":
    case "address":
      return block.lines
    case "signatures":
      return block.lines.flatMap(({ role, name }) => (name === "" ? [role] : [role, name]))
    case "page-break":
      return []
    default:
      return block satisfies never
  }
}
