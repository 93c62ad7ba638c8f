import { beforeAll, describe, expect, it } from "vitest"
import type { PaperDocument } from "../../src/report/document.js"
import { pdfOf } from "../../src/report/pdf/pdf.js"
import { learnEveryLanguage } from "../../src/words/index.js"
import { everyBlock } from "./every-block.js"
import { hasTool, structureOf, textOf, toolOn } from "./outside-tools.js"

learnEveryLanguage()

function bytesOf(...documents: readonly PaperDocument[]): Uint8Array {
  const pdf = pdfOf(documents, "a4")
  if (pdf.kind === "refused") throw new Error(pdf.why)
  return pdf.bytes
}
const paper = (changes: Partial<PaperDocument>): PaperDocument => ({ ...everyBlock, blocks: [], ...changes })

describe.skipIf(!hasTool("pdftotext"))("a PDF read by poppler (needs poppler-utils)", () => {
  let bytes: Uint8Array
  beforeAll(() => {
    bytes = bytesOf(everyBlock)
  })
  const structure = () => toolOn(bytes, { program: "pdfinfo", before: ["-struct-text"] }).out

  it("gives its words in the order of the blocks", () => {
    const text = textOf(bytes)
    const words = [
      ...["The practice", "1 Some Street", "Report for Mira", "Dr A", "Her eyes grew slowly."],
      ...[
        "What we saw",
        'A "quoted" \\ #text *with* $signs$ and _marks_.',
        "1. one",
        "• a",
        "Left",
        "24.20 mm",
      ],
      ...[
        "10 Sep 2026",
        "24.20",
        "Does it help?",
        "Some. Grade B",
        "24.1 眼",
        "Scan it",
        "Same day: flashes.",
      ],
      ...["Source one.", "Atropine One drop each night", "Parent"],
    ]
    let place = -1
    for (const word of words) {
      const next = text.indexOf(word, place + 1)
      expect(next, `“${word}” after place ${place} of ${text}`).toBeGreaterThan(place)
      place = next
    }
  })

  it("tags headings, lists, tables and figures as what they are, and every text as a paragraph at least", () => {
    const said = structure()
    const top = said.split("\n").flatMap((line) => /^ {2}(\w+)/.exec(line)?.[1] ?? [])
    expect(top).not.toContain("Span")
    expect(top.slice(0, 4)).toEqual(["P", "P", "H1", "P"])
    expect(top.filter((kind) => kind === "Table")).toHaveLength(3)
    expect(said).toMatch(/H2 .*\n\s+"What we saw"/)
    expect(said).toMatch(/ListNumbering \/Decimal/)
    expect(said).toMatch(/TH <[^>]+>:\n\s+\/Scope \/Column/)
  })

  it("has its title, its paper and every font in it", () => {
    const info = toolOn(bytes, { program: "pdfinfo" }).out
    expect(info).toMatch(/Title: +Report for Mira 王 محمد\n/)
    expect(info).toMatch(/Tagged: +yes/)
    expect(info).toMatch(/Page size: +595\.276 x 841\.89 pts \(A4\)/)
    const fonts = toolOn(bytes, { program: "pdffonts" }).out.trim().split("\n").slice(2)
    expect(fonts.length).toBeGreaterThan(2)
    for (const font of fonts) expect(font).toMatch(/ yes yes yes +\d+ +0$/)
    const letter = pdfOf([everyBlock], "letter")
    if (letter.kind === "refused") throw new Error(letter.why)
    expect(toolOn(letter.bytes, { program: "pdfinfo" }).out).toMatch(/612 x 792 pts \(letter\)/)
  })

  it("keeps a name from right to left, and one in mixed scripts, whole", () => {
    // Poppler marks where the direction turns, and puts the blank there on the other side.
    const plain = textOf(bytesOf(paper({ title: "Report for שרה כהן and 王小明 Nguyễn" }))).replace(
      /[\s\u202a-\u202e]/g,
      "",
    )
    expect(plain).toContain("Reportforשרהכהןand王小明Nguyễn")
  })

  it.each([
    ["of one run", "Wolfeschlegelstein".repeat(12).slice(0, 200)],
    ["of many words", "Ana Maria de la ".repeat(13).slice(0, 200).trim()],
    ["in Chinese", "欧阳".repeat(100)],
  ])("keeps a name of 200 characters %s on the page and in order", (_, name) => {
    const bytes = bytesOf(paper({ title: name, blocks: [{ kind: "pairs", pairs: [["Name", name]] }] }))
    expect(textOf(bytes).replace(/\s/g, "").split(name.replace(/\s/g, ""))).toHaveLength(3)
    const right = toolOn(bytes, { program: "pdftotext", before: ["-bbox"], after: ["-"] }).out.matchAll(
      /xMax="([\d.]+)"/g,
    )
    // A4 is 595 pt wide, its margin 20 mm.
    expect(Math.max(...[...right].map(([, place]) => Number(place)))).toBeLessThan(595.3 - 56 + 1)
  })

  it("lets an address be copied out whole", () => {
    expect(textOf(bytes).replace(/\s/g, "")).toContain(
      "https://practice.example/f/0123456789abcdefghijklmnopqrstuvwxyz0123456789abcdef",
    )
  })

  it("counts the pages of each document by itself, in its own language", () => {
    const long = paper({
      blocks: [{ kind: "text", text: "one" }, { kind: "page-break" }, { kind: "text", text: "two" }],
    })
    const short = paper({ language: "es", title: "Informe" })
    const pages = textOf(bytesOf(long, short, { ...long, language: "zh-Hans" }))
    expect(pages.match(/Page \d of \d|Página \d de \d|第 \d 页，共 \d 页/g)).toEqual([
      ...["Page 1 of 2", "Page 2 of 2", "Página 1 de 1"],
      ...["第 1 页，共 2 页", "第 2 页，共 2 页"],
    ])
  })

  it("says the head of a long table again on every page, and cuts no row", () => {
    const rows = Array.from({ length: 90 }, (_, row) => [
      `row ${row}`,
      `begin${row} ${"word ".repeat(30)}end${row}`,
    ])
    const bytes = bytesOf(paper({ blocks: [{ kind: "table", head: ["Day", "What was seen"], rows }] }))
    const pages = toolOn(bytes, { program: "pdftotext", after: ["-"] })
      .out.split("\f")
      .slice(0, -1)
    expect(pages.length).toBeGreaterThan(2)
    for (const page of pages) {
      expect(page.match(/What was seen/g)).toHaveLength(1)
      expect(page.match(/begin\d+/g)?.length).toBe(page.match(/end\d+/g)?.length)
    }
  })
})

describe.skipIf(!hasTool("qpdf"))("a PDF read by qpdf (needs qpdf)", () => {
  it("is sound", () => {
    const { status, out } = toolOn(bytesOf(everyBlock), { program: "qpdf", before: ["--check"] })
    expect(out).toContain("No syntax or stream encoding errors found")
    expect(status).toBe(0)
  })

  it("says its language, its title in the window, and what its figures show", () => {
    const { catalog, elements } = structureOf(bytesOf({ ...everyBlock, language: "es" }))
    expect(catalog["/Lang"]).toBe("u:es")
    expect(catalog["/ViewerPreferences"]).toMatchObject({ "/DisplayDocTitle": true })
    const figures = elements.filter(({ kind }) => kind === "/Figure").map(({ alt }) => alt)
    expect(figures.toSorted()).toEqual(["An eye of 24.1 mm", "QR code of the family page"])
  })

  it("marks another language where the documents of a batch differ", () => {
    const { catalog, elements } = structureOf(
      bytesOf(paper({}), paper({ language: "zh-Hans", title: "报告" })),
    )
    expect(catalog["/Lang"]).toBe("u:en")
    expect(elements.filter(({ kind, lang }) => kind === "/H1" && lang === "zh")).toHaveLength(1)
  })
})
