import { inLanguage, say } from "../../engine/say.js"
import type { PaperDocument, PaperSize } from "../document.js"
import { blockOf, inLines, type Named } from "./blocks.js"
import { FAMILIES } from "./fonts.js"
import { INK, LINE, SOFT } from "./inks.js"
import { content, quoted, typstDate } from "./literals.js"

/** A document as the typesetter reads it: its source, and the pictures it names. */
export interface TypstSource {
  readonly source: string
  readonly files: ReadonlyMap<string, Uint8Array>
}

export interface Setting {
  readonly paper: PaperSize
  /** Of the whole file; that of the first document unless said otherwise. */
  readonly title?: string | undefined
}

/** Several documents, one after another, each beginning on a page of its own and counting its own pages. */
export function typstSource(documents: readonly PaperDocument[], { paper, title }: Setting): TypstSource {
  const files = new Map<string, Uint8Array>()
  const names = new Map<Uint8Array, string>()
  const named: Named = (bytes, ending) => {
    // A letterhead's picture is one file, however many documents it stands on.
    const known = names.get(bytes)
    if (known !== undefined) return known
    const name = `picture-${files.size + 1}.${ending}`
    files.set(name, bytes)
    names.set(bytes, name)
    return name
  }
  const [first] = documents
  if (first === undefined) throw new RangeError("at least one document is set")
  const source = [
    `#set document(title: ${quoted(title ?? first.title)}, date: ${typstDate(first.date)})`,
    PREAMBLE,
    ...documents.map((document, index) =>
      inLanguage(document.language, () => oneDocument(document, { paper, index, named })),
    ),
  ].join("\n")
  return { source, files }
}

// Figures stand under each other, so they are tabular everywhere.
const PREAMBLE = `
#set text(font: (${FAMILIES.map((family) => `"${family}"`).join(", ")}), fallback: false, size: 10.5pt, fill: ${INK}, number-width: "tabular")
#set par(leading: 0.62em, spacing: 0.9em, justify: false)
#set table(stroke: none, inset: (x: 0pt, top: 5pt, bottom: 6pt))
#show table: set block(above: 10pt, below: 12pt)
#show list: set block(above: 7pt, below: 9pt)
#show enum: set block(above: 7pt, below: 9pt)
#show heading.where(level: 1): set text(size: 17pt, weight: 600)
#show heading.where(level: 2): set text(size: 12.5pt, weight: 600)
#show heading.where(level: 3): set text(size: 10.5pt, weight: 600)
#show heading.where(level: 1): set block(above: 0pt, below: 13pt)
#show heading.where(level: 2): set block(above: 18pt, below: 9pt, sticky: true)
#show heading.where(level: 3): set block(above: 12pt, below: 7pt, sticky: true)
#show figure: set align(left)
#show figure: set block(above: 10pt, below: 12pt)
#show figure.caption: set text(size: 8.5pt, fill: ${SOFT})
#set figure(gap: 5pt)
`

interface Place {
  readonly paper: PaperSize
  readonly index: number
  readonly named: Named
}

function oneDocument(document: PaperDocument, { paper, index, named }: Place): string {
  const { title, language, letterhead, blocks, foot } = document
  const [language2, script] = language === "zh-Hans" ? ["zh", "hans"] : [language, "latn"]
  const end = `end-of-document-${index + 1}`
  return [
    `#set text(lang: "${language2}", script: "${script}")`,
    `#set page(paper: ${paper === "a4" ? '"a4"' : '"us-letter"'}, margin: (x: 20mm, top: 17mm, bottom: 20mm), footer: ${footer(foot, end)})`,
    index === 0 ? "" : "#pagebreak(weak: true)",
    "#counter(page).update(1)",
    letterheadOf(letterhead, named),
    `#heading(level: 1, ${content(title)})`,
    ...blocks.map((block) => blockOf(block, named)),
    `#metadata(none) <${end}>`,
    "",
  ].join("\n")
}

/** Pages are counted within the document, up to the mark at its end. */
function footer(foot: string, end: string): string {
  const pageOf = say("Page {page} of {pages}", { page: "\ue000", pages: "\ue001" })
  const parts = pageOf
    .split(/([\ue000\ue001])/)
    .map((part) =>
      part === "\ue000"
        ? "str(counter(page).get().first())"
        : part === "\ue001"
          ? `str(counter(page).at(<${end}>).first())`
          : quoted(part),
    )
  return `context [
  #set text(size: 7.5pt, fill: ${SOFT})
  #grid(columns: (1fr, auto), column-gutter: 8mm, ${content(foot)}, text(${parts.join(" + ")}))
]`
}

function letterheadOf({ practice, lines, logo }: PaperDocument["letterhead"], named: Named): string {
  const words = [
    `#block(below: 5pt)[#set text(weight: 600, size: 11pt)\n${inLines([practice])}]`,
    lines.length === 0
      ? ""
      : `#block(above: 0pt)[#set text(size: 8.5pt, fill: ${SOFT})\n#set par(leading: 0.5em)\n${inLines(lines)}]`,
  ].join("\n")
  const picture =
    logo === undefined
      ? null
      : `image(${quoted(named(logo.bytes, logo.mediaType === "image/png" ? "png" : "jpg"))}, height: 16mm, width: 45mm, fit: "contain", alt: ${quoted(practice)})`
  return `#block(width: 100%, below: 9mm, stroke: (bottom: 0.5pt + ${LINE}), inset: (bottom: 3mm))[${
    picture === null
      ? words
      : `#grid(columns: (1fr, auto), column-gutter: 6mm, [${words}], figure(${picture}, alt: ${quoted(practice)}, supplement: none, numbering: none))`
  }]`
}
