import { say } from "../../engine/say.js"
import type { Block, PaperDocument, PaperSize } from "../document.js"
import { FAMILIES } from "./fonts.js"

/** A document as the typesetter reads it: its source, and the pictures it names. */
export interface TypstSource {
  readonly source: string
  readonly files: ReadonlyMap<string, Uint8Array>
}

/** Several documents, one after another, each beginning on a page of its own and counting its own pages. */
export function typstSource(documents: readonly PaperDocument[], paper: PaperSize): TypstSource {
  const files = new Map<string, Uint8Array>()
  const named = (bytes: Uint8Array, ending: string): string => {
    const name = `picture-${files.size + 1}.${ending}`
    files.set(name, bytes)
    return name
  }
  const [first] = documents
  if (first === undefined) throw new RangeError("at least one document is set")
  const source = [
    `#set document(title: ${quoted(first.title)}, date: ${typstDate(first.date)})`,
    PREAMBLE,
    ...documents.map((document, index) => oneDocument(document, { paper, isFirst: index === 0, named })),
  ].join("\n")
  return { source, files }
}

interface Setting {
  readonly paper: PaperSize
  readonly isFirst: boolean
  /** Puts a picture beside the source and gives its name. */
  readonly named: (bytes: Uint8Array, ending: string) => string
}

const INK = 'rgb("#1d2328")'
const SOFT = 'rgb("#5d6870")'
const LINE = 'rgb("#d5dbdf")'
const ACCENT = 'rgb("#0b6b62")'
const WARM = 'rgb("#8a5a12")'
const WARM_WASH = 'rgb("#f6ecd9")'

// Figures stand under each other, so they are tabular everywhere.
const PREAMBLE = `
#set text(font: (${FAMILIES.map((family) => `"${family}"`).join(", ")}), fallback: false, size: 10.5pt, fill: ${INK}, number-width: "tabular")
#set par(leading: 0.62em, spacing: 0.85em, justify: false)
#set table(stroke: none, inset: (x: 0pt, y: 3.5pt))
#show heading.where(level: 1): set text(size: 17pt, weight: 600)
#show heading.where(level: 2): set text(size: 12.5pt, weight: 600)
#show heading.where(level: 3): set text(size: 10.5pt, weight: 600)
#show heading.where(level: 1): set block(above: 0pt, below: 9pt)
#show heading.where(level: 2): set block(above: 15pt, below: 6pt, sticky: true)
#show heading.where(level: 3): set block(above: 10pt, below: 4pt, sticky: true)
#let line-under = table.hline(stroke: 0.5pt + ${LINE})
`

function oneDocument(document: PaperDocument, setting: Setting): string {
  const { title, language, letterhead, blocks, foot } = document
  const [language2, script] = language === "zh-Hans" ? ["zh", "hans"] : [language, "latn"]
  const pageOf = say("Page {page} of {pages}", { page: "\u0001", pages: "\u0002" })
  const [before = "", between = "", after = ""] = pageOf.split(/[\u0001\u0002]/)
  return [
    `#set text(lang: "${language2}", script: "${script}")`,
    `#set page(paper: ${setting.paper === "a4" ? '"a4"' : '"us-letter"'}, margin: (x: 20mm, top: 17mm, bottom: 20mm), footer: ${footer(foot, [before, between, after])})`,
    setting.isFirst ? "" : "#pagebreak(weak: true)",
    "#counter(page).update(1)",
    letterheadOf(letterhead, setting),
    `#heading(level: 1, ${content(title)})`,
    ...blocks.map((block) => blockOf(block, setting)),
    "#metadata(none) <end-of-document>",
    "",
  ].join("\n")
}

/** Pages are counted within the document: the end that comes next after the page is this document's own. */
function footer(foot: string, [before, between, after]: readonly string[]): string {
  return `context [
  #set text(size: 7.5pt, fill: ${SOFT})
  #grid(columns: (1fr, auto), column-gutter: 8mm,
    ${content(foot)},
    [#{
      let end = query(selector(<end-of-document>).after(here())).first(default: none)
      let last = if end == none { counter(page).final().first() } else { counter(page).at(end.location()).first() }
      text(${quoted(before ?? "")} + str(counter(page).get().first()) + ${quoted(between ?? "")} + str(last) + ${quoted(after ?? "")})
    }])
]`
}

function letterheadOf({ practice, lines, logo }: PaperDocument["letterhead"], { named }: Setting): string {
  const name = `text(weight: 600, size: 11pt, ${quoted(practice)})`
  const rest = lines.map((line) => `text(size: 8.5pt, fill: ${SOFT}, ${quoted(line)})`)
  const words = `stack(spacing: 3.5pt, ${[name, ...rest].join(", ")})`
  const picture =
    logo === undefined
      ? null
      : `image(${quoted(named(logo.bytes, logo.mediaType === "image/png" ? "png" : "jpg"))}, height: 16mm, width: 45mm, fit: "contain", alt: ${quoted(practice)})`
  return `#block(width: 100%, below: 9mm, stroke: (bottom: 0.5pt + ${LINE}), inset: (bottom: 3mm), ${
    picture === null ? words : `grid(columns: (1fr, auto), ${words}, ${picture})`
  })`
}

function blockOf(block: Block, setting: Setting): string {
  switch (block.kind) {
    case "heading":
      return `#heading(level: ${block.level + 1}, ${content(block.text)})`
    case "lead":
      return `#block(below: 8pt, text(size: 14pt, weight: 600, ${quoted(block.text)}))`
    case "text":
      return paragraph(block.text)
    case "list": {
      const items = block.items.map(content).join(", ")
      return items === ""
        ? ""
        : `#${block.isNumbered ? "enum" : "list"}(indent: 2pt, spacing: 0.6em, ${items})`
    }
    case "pairs":
      return pairs(block.pairs)
    case "table":
      return table(block)
    case "answer":
      return [
        `#heading(level: 3, ${content(block.question)})`,
        ...block.lines.map(paragraph),
        `#block(above: 5pt, text(size: 8pt, fill: ${SOFT}, ${quoted(block.grade)}))`,
      ].join("\n")
    case "figure": {
      const file = setting.named(new TextEncoder().encode(ownFonts(block.svg)), "svg")
      const caption = block.caption === undefined ? "" : `, caption: ${content(block.caption)}`
      return `#figure(image(${quoted(file)}, width: 100%, alt: ${quoted(block.alt)}), alt: ${quoted(block.alt)}, supplement: none, numbering: none${caption})`
    }
    case "code": {
      const file = setting.named(new TextEncoder().encode(block.svg), "svg")
      return `#block(breakable: false, grid(columns: (24mm, 1fr), column-gutter: 5mm, align: horizon, figure(image(${quoted(file)}, width: 24mm, alt: ${quoted(block.alt)}), alt: ${quoted(block.alt)}, supplement: none, numbering: none), ${stacked(block.lines)}))`
    }
    case "caution":
      return `#block(width: 100%, breakable: false, fill: ${WARM_WASH}, stroke: (left: 2.5pt + ${WARM}), inset: (x: 9pt, y: 7pt), ${stacked(block.lines)})`
    case "notes":
      return block.lines
        .map((line) => `#block(spacing: 4pt, text(size: 8pt, fill: ${SOFT}, ${quoted(line)}))`)
        .join("\n")
    case "label":
      return `#block(breakable: false, stroke: 0.8pt + ${INK}, radius: 3pt, inset: 8pt, ${stacked(block.lines)})`
    case "address":
      return `#block(above: 2mm, below: 8mm, ${stacked(block.lines)})`
    case "signatures":
      return signatures(block.lines)
    case "page-break":
      return "#pagebreak(weak: true)"
    default:
      return block satisfies never
  }
}

function pairs(rows: readonly (readonly [string, string])[]): string {
  const cells = rows.map(([label, value]) => `text(fill: ${SOFT}, ${quoted(label)}), ${content(value)}`)
  return `#table(columns: (30%, 1fr), column-gutter: 6mm, ${cells.join(", line-under, ")})`
}

function table({ head, rows, figures = [] }: Extract<Block, { kind: "table" }>): string {
  const align = head.map((_, column) => (figures.includes(column) ? "right" : "left")).join(", ")
  const header = head
    .map((title) => `text(size: 8.5pt, fill: ${SOFT}, weight: 600, ${quoted(title)})`)
    .join(", ")
  const body = rows.map((row) => row.map(content).join(", "))
  const widths = columnWidths(head, rows)
  return `#table(columns: (${widths.join(", ")}), column-gutter: 4mm, align: (${align},), table.header(${header}), table.hline(stroke: 0.8pt + ${ACCENT}), ${body.join(", line-under, ")})`
}

/** Columns of long text share what is left over; short ones take what they need. */
function columnWidths(head: readonly string[], rows: readonly (readonly string[])[]): readonly string[] {
  const longest = head.map((title, column) =>
    Math.max(title.length, ...rows.map((row) => row[column]?.length ?? 0)),
  )
  const isLong = longest.map((length) => length > 18)
  if (!isLong.includes(true)) return head.map((_, column) => (column === 0 ? "1fr" : "auto"))
  return longest.map((length, column) => (isLong[column] ? `${Math.min(length, 60)}fr` : "auto"))
}

function signatures(lines: readonly { readonly role: string; readonly name: string }[]): string {
  const head = ["", say("Name"), say("Signature"), say("Date")].map(
    (title) => `text(size: 8.5pt, fill: ${SOFT}, ${quoted(title)})`,
  )
  const rows = lines.map(({ role, name }) => `text(fill: ${SOFT}, ${quoted(role)}), ${content(name)}, [], []`)
  return `#block(breakable: false, table(columns: (1.2fr, 1.3fr, 1.6fr, 0.8fr), column-gutter: 4mm, inset: (x: 0pt, top: 12pt, bottom: 3pt), table.header(${head.join(", ")}), line-under, ${rows.join(", line-under, ")}, line-under))`
}

const paragraph = (text: string): string => `#par(${content(text)})`
const stacked = (lines: readonly string[]): string =>
  `[${lines.map((line) => `#par(${content(line)})`).join(" ")}]`
const content = (text: string): string => `text(${quoted(text)})`

const typstDate = (date: string): string => {
  const [year, month, day] = date.split("-").map(Number)
  return `datetime(year: ${year}, month: ${month}, day: ${day})`
}

/** A text as a literal: nothing in a name or a sentence can become markup. */
function quoted(text: string): string {
  const escaped = breakable(text.normalize("NFC"))
    .replaceAll("\\", "\\\\")
    .replaceAll('"', '\\"')
    .replaceAll("\n", "\\n")
    // biome-ignore lint/suspicious/noControlCharactersInRegex: taken out, since no font has a sign for them
    .replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, "")
    .replaceAll("\t", " ")
  return `"${escaped}"`
}

/** A run without a blank that is longer than any word may be cut anywhere, or it would leave the page. */
const breakable = (text: string): string =>
  text.replace(/[^\s\u200b]{40,}/gu, (run) => [...run].join("\u200b"))

/** The figure in the document's own fonts: the page's are not at hand where it is set. */
const ownFonts = (svg: string): string =>
  svg.replace(/font-family="[^"]*"/g, `font-family="${FAMILIES.map((family) => `'${family}'`).join(", ")}"`)
