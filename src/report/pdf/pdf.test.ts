import { writeFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import type { PaperDocument } from "../document.js"
import { pdfOf } from "./pdf.js"

const document: PaperDocument = {
  kind: "family",
  title: "Report for Mira 王 محمد",
  language: "en",
  date: "2026-11-26",
  letterhead: { practice: "The practice", lines: ["1 Some Street"] },
  foot: "Not a medical device.",
  blocks: [
    { kind: "lead", text: "Her eyes grew slowly." },
    { kind: "heading", level: 1, text: "What we saw" },
    { kind: "text", text: 'A "quoted" \\ #text *with* $signs$ and _marks_.' },
    { kind: "heading", level: 2, text: "Smaller" },
    { kind: "list", items: ["one", "two"], isNumbered: true },
    { kind: "list", items: ["a", "b"] },
    {
      kind: "pairs",
      pairs: [
        ["Right", "24.10 mm"],
        ["Left", "24.20 mm"],
      ],
    },
    {
      kind: "table",
      head: ["Date", "Right"],
      rows: [
        ["10 Mar 2026", "24.10"],
        ["10 Sep 2026", "24.20"],
      ],
      figures: [1],
    },
    { kind: "answer", question: "Does it help?", lines: ["Some."], grade: "Grade B" },
    {
      kind: "figure",
      svg: '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 20" font-family="x"><text x="0" y="15" font-size="12">24.1 眼</text></svg>',
      alt: "An eye",
      caption: "Drawn to scale",
    },
    {
      kind: "code",
      svg: '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><rect width="5" height="5"/></svg>',
      alt: "QR code",
      lines: ["Scan it"],
    },
    { kind: "caution", lines: ["Same day: flashes."] },
    { kind: "notes", lines: ["Source one."] },
    { kind: "label", lines: ["Atropine"] },
    { kind: "address", lines: ["Dr A", "Street"] },
    { kind: "signatures", lines: [{ role: "Parent", name: "" }] },
    { kind: "page-break" },
    { kind: "text", text: "x".repeat(200) },
  ],
}

describe("a PDF", () => {
  it("is made of every kind of block", () => {
    const pdf = pdfOf([document, document], "a4")
    expect(pdf).toMatchObject({ kind: "made", pages: 4 })
    if (pdf.kind === "made" && process.env.KEEP) writeFileSync(process.env.KEEP, pdf.bytes)
  })
  it("is refused with the letters that no font holds", () => {
    expect(pdfOf([{ ...document, title: "Report for ꦗꦮ" }], "letter")).toEqual({
      kind: "refused",
      why: expect.stringContaining("ꦗ"),
    })
  })
})
