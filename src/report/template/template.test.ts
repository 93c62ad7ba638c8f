import fc from "fast-check"
import { describe, expect, it } from "vitest"
import type { DocumentPart } from "../document.js"
import { PARTS_OF, REQUIRED_PARTS, VALUES_OF } from "./document-parts.js"
import { inOrder } from "./in-order.js"
import { LONGEST_TEMPLATE, templateProblems } from "./template-problems.js"

const part = (name: string): DocumentPart => ({ name, blocks: [{ kind: "text", text: `part ${name}` }] })
const content = { parts: [part("a"), part("b")], values: { child: "Mira" } }
const letter = (text: string) => templateProblems({ document: "letter", language: "en", text })

describe("a document in the order of a template", () => {
  it("comes as it ships where there is no template, or an empty one", () => {
    const shipped = [
      { kind: "text", text: "part a" },
      { kind: "text", text: "part b" },
    ]
    expect(inOrder(content, undefined)).toEqual(shipped)
    expect(inOrder(content, { text: " \n" })).toEqual(shipped)
  })
  it("puts parts and the practice's own sentences where the template says", () => {
    const text =
      "# Dear family\n[b]\n\n- one\n- two for {child}\n! Keep away\n! from {child}\n---\n## Small\nWords.\n[a]"
    expect(inOrder(content, { text })).toEqual([
      { kind: "heading", level: 1, text: "Dear family" },
      { kind: "text", text: "part b" },
      { kind: "list", items: ["one", "two for Mira"] },
      { kind: "caution", lines: ["Keep away", "from Mira"] },
      { kind: "page-break" },
      { kind: "heading", level: 2, text: "Small" },
      { kind: "text", text: "Words." },
      { kind: "text", text: "part a" },
    ])
  })
  it("leaves no trace of a part that this child's document lacks", () => {
    expect(inOrder(content, { text: "[c]\n[a]" })).toEqual([{ kind: "text", text: "part a" }])
  })
})

describe("a broken template is refused with its line", () => {
  const [required = ""] = REQUIRED_PARTS.letter
  const sound = REQUIRED_PARTS.letter.map((name) => `[${name}]`).join("\n")
  it("takes a sound one, an empty one, and the order that ships of every document", () => {
    expect(letter(sound)).toEqual([])
    expect(letter("")).toEqual([])
    for (const [document, parts] of Object.entries(PARTS_OF)) {
      const text = parts.map((name) => `[${name}]`).join("\n")
      expect(templateProblems({ document, language: "en", text }), document).toEqual([])
    }
  })
  it("names a part, a value and a brace that are wrong, each with its line", () => {
    const known = VALUES_OF.letter[0] ?? ""
    const problems = letter(`${sound}\n[nonsense]\nDear {nobody}, {${known}}\na } alone`)
    const first = REQUIRED_PARTS.letter.length + 1
    expect(problems.map(({ line }) => line)).toEqual([first, first + 1, first + 2])
    expect(problems[0]?.message).toContain("[nonsense]")
    expect(problems[1]?.message).toContain("{nobody}")
    expect(problems[1]?.message).toContain(`{${known}}`)
    expect(problems[2]?.message).toContain("brace")
  })
  it("refuses a part that stands twice, and one that was left out although it must stand", () => {
    expect(letter(`${sound}\n[${required}]`)).toMatchObject([{ line: REQUIRED_PARTS.letter.length + 1 }])
    expect(letter("Only words.").map(({ message }) => message)).toEqual(
      REQUIRED_PARTS.letter.map((name) => expect.stringContaining(`[${name}]`)),
    )
  })
  it("refuses a document that there is not, and a text without end", () => {
    expect(templateProblems({ document: "poem", language: "en", text: "x" })).toMatchObject([{ line: 0 }])
    expect(letter("x".repeat(LONGEST_TEMPLATE + 1))).toMatchObject([{ line: 0 }])
  })
  it("never throws, and what it takes can be set", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 200 }), (text) => {
        if (letter(text).length === 0) inOrder(content, { text })
      }),
    )
  })
})
