import { say } from "../../engine/say.js"
import type { Block } from "../document.js"
import { FAMILIES } from "./fonts.js"
import { ACCENT, INK, LINE, SOFT, WARM, WARM_WASH } from "./inks.js"
import { content, quoted } from "./literals.js"
import { pairs, table } from "./tables.js"

/** Puts a picture beside the source and gives its name. */
export type Named = (bytes: Uint8Array, ending: string) => string

/** A block as source. Every text of it is a paragraph, a heading, a cell or an item, so that none is without a tag. */
export function blockOf(block: Block, named: Named): string {
  switch (block.kind) {
    case "heading":
      return `#heading(level: ${block.level + 1}, ${content(block.text)})`
    case "lead":
      return `#block(below: 10pt, sticky: true)[#set text(size: 14pt, weight: 600)\n#par(leading: 0.5em, ${content(block.text)})]`
    case "text":
      return paragraph(block.text)
    case "list":
      return list(block)
    case "pairs":
      return block.pairs.length === 0 ? "" : pairs(block.pairs)
    case "table":
      return table(block)
    case "answer":
      return [
        `#heading(level: 3, ${content(block.question)})`,
        ...block.lines.map(paragraph),
        block.grade === "" ? "" : small([block.grade], "6pt"),
      ].join("\n")
    case "figure":
      return figure(block, named)
    case "code":
      return code(block, named)
    case "caution":
      return `#block(width: 100%, breakable: false, above: 11pt, below: 11pt, fill: ${WARM_WASH}, stroke: (left: 2.5pt + ${WARM}), inset: (x: 9pt, y: 8pt))[${block.lines.map(paragraph).join("\n")}]`
    case "notes":
      return small(block.lines, "14pt")
    case "label":
      return `#block(breakable: false, stroke: 0.8pt + ${INK}, radius: 3pt, inset: 8pt)[${inLines(block.lines)}]`
    case "address":
      return `#block(above: 2mm, below: 8mm)[${inLines(block.lines)}]`
    case "signatures":
      return signatures(block.lines)
    case "page-break":
      return "#pagebreak(weak: true)"
    default:
      return block satisfies never
  }
}

const paragraph = (text: string): string => `#par(${content(text)})`

/** One paragraph of several lines, as an address is. */
export const inLines = (lines: readonly string[]): string =>
  lines.length === 0 ? "" : `#par(${lines.map(content).join(" + linebreak() + ")})`

const small = (lines: readonly string[], above: string): string =>
  lines.length === 0
    ? ""
    : `#block(above: ${above})[#set text(size: 8pt, fill: ${SOFT})\n#set par(spacing: 0.7em, leading: 0.5em)\n${lines.map(paragraph).join("\n")}]`

function list({ items, isNumbered }: Extract<Block, { kind: "list" }>): string {
  if (items.length === 0) return ""
  const name = isNumbered ? "enum" : "list"
  return `#${name}(indent: 2pt, spacing: 0.7em, ${items.map(content).join(", ")})`
}

function figure({ svg, alt, caption }: Extract<Block, { kind: "figure" }>, named: Named): string {
  const file = named(new TextEncoder().encode(ownFonts(svg)), "svg")
  // A figure that is taller than it is wide would not leave room for a word beside it, or not fit a page at all.
  const size = tallness(svg) > 0.9 ? 'height: 120mm, fit: "contain"' : "width: 100%"
  const words = caption === undefined ? "" : `, caption: ${content(caption)}`
  return `#figure(image(${quoted(file)}, ${size}, alt: ${quoted(alt)}), alt: ${quoted(alt)}, supplement: none, numbering: none${words})`
}

function code({ svg, alt, lines }: Extract<Block, { kind: "code" }>, named: Named): string {
  const file = named(new TextEncoder().encode(svg), "svg")
  const picture = `figure(image(${quoted(file)}, width: 26mm, alt: ${quoted(alt)}), alt: ${quoted(alt)}, supplement: none, numbering: none)`
  return `#block(breakable: false, grid(columns: (26mm, 1fr), column-gutter: 5mm, align: horizon, ${picture}, [${lines.map(paragraph).join("\n")}]))`
}

function signatures(lines: readonly { readonly role: string; readonly name: string }[]): string {
  if (lines.length === 0) return ""
  const head = ["", say("Name"), say("Signature"), say("Date")].map(
    (title) => `text(size: 8.5pt, fill: ${SOFT}, ${content(title)})`,
  )
  const rows = lines.map(
    ({ role, name }) => `text(fill: ${SOFT}, ${content(role)}), ${content(name)}, [], []`,
  )
  return `#block(breakable: false, above: 16pt, table(columns: (1.2fr, 1.3fr, 1.6fr, 0.8fr), column-gutter: 4mm, align: bottom + left, inset: (x: 0pt, top: 15pt, bottom: 3pt), stroke: none, table.header(${head.join(", ")}), table.hline(stroke: 0.8pt + ${ACCENT}), ${rows.join(`, table.hline(stroke: 0.5pt + ${LINE}), `)}, table.hline(stroke: 0.5pt + ${LINE})))`
}

/** Height of a figure by its width; a wide one where it does not say. */
function tallness(svg: string): number {
  const [, , , width = 1, height = 0] =
    /viewBox="([-\d.]+)[ ,]+([-\d.]+)[ ,]+([\d.]+)[ ,]+([\d.]+)"/.exec(svg)?.map(Number) ?? []
  return height / width
}

/** The figure in the document's own fonts: the page's are not at hand where it is set. */
const ownFonts = (svg: string): string =>
  svg.replace(/font-family="[^"]*"/g, `font-family="${FAMILIES.map((family) => `'${family}'`).join(", ")}"`)
