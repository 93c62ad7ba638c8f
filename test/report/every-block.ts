import type { PaperDocument } from "../../src/report/document.js"

/** One of every kind of block, with the letters and signs that are hard to set. */
export const everyBlock: PaperDocument = {
  kind: "family",
  title: "Report for Mira 王 محمد",
  language: "en",
  date: "2026-11-26",
  letterhead: { practice: "The practice", lines: ["1 Some Street", "Telephone 0123"] },
  foot: "Not a medical device.",
  blocks: [
    { kind: "address", lines: ["Dr A", "2 Other Street"] },
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
      svg: '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 400 60" font-family="x"><text x="0" y="35" font-size="24">24.1 眼</text><circle cx="300" cy="30" r="28"/></svg>',
      alt: "An eye of 24.1 mm",
      caption: "Drawn to scale",
    },
    {
      kind: "code",
      svg: '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><rect width="10" height="10"/></svg>',
      alt: "QR code of the family page",
      lines: ["Scan it", "https://practice.example/f/0123456789abcdefghijklmnopqrstuvwxyz0123456789abcdef"],
    },
    { kind: "caution", lines: ["Same day: flashes.", "Keep the bottle from children."] },
    { kind: "notes", lines: ["Source one.", "Source two."] },
    { kind: "label", lines: ["Atropine", "One drop each night"] },
    { kind: "signatures", lines: [{ role: "Parent", name: "Ada" }] },
    { kind: "page-break" },
    { kind: "text", text: "x".repeat(200) },
  ],
}
