import { readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { everyBlock } from "../../../test/report/every-block.js"
import type { Picture } from "../document.js"
import { pdfOf } from "./pdf.js"
import { pictureFault } from "./picture-fault.js"

const PNG = new Uint8Array(
  Buffer.from(
    "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==",
    "base64",
  ),
)

describe("a PDF", () => {
  it("is made of every kind of block", () => {
    expect(pdfOf([everyBlock, everyBlock], "a4")).toMatchObject({ kind: "made", pages: 6 })
  })

  it("is the same bytes for the same document", () => {
    const [one, other] = [pdfOf([everyBlock], "a4"), pdfOf([everyBlock], "a4")]
    expect(one).toEqual(other)
    pdfOf([{ ...everyBlock, title: "Another, 另一个" }], "letter")
    expect(pdfOf([everyBlock], "a4")).toEqual(one)
  })

  it.each(["Report for ꦗꦮ", "Report for 😀"])(
    "is refused with the letters that no font holds: %s",
    (title) => {
      const letters = [...title.slice("Report for ".length)]
      const refused = pdfOf([{ ...everyBlock, title }], "letter")
      expect(refused).toMatchObject({ kind: "refused", about: "letters", letters })
      for (const letter of letters) expect(refused).toMatchObject({ why: expect.stringContaining(letter) })
    },
  )

  it("names a mark that stands on another letter as itself", () => {
    const refused = pdfOf([{ ...everyBlock, title: "Report for ꦮꦪꦤ꧀" }], "a4")
    const letters = "letters" in refused ? refused.letters : []
    expect(letters).toEqual([..."ꦮꦪꦤ꧀"])
  })

  it("is refused with the letters that a figure lacks", () => {
    const svg =
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><text y="9" font-size="5">ꦗ</text></svg>'
    const blocks = [{ kind: "figure" as const, svg, alt: "a letter" }]
    expect(pdfOf([{ ...everyBlock, blocks }], "a4")).toMatchObject({ kind: "refused", about: "letters" })
  })
})

describe("the logo of a letterhead", () => {
  const withLogo = (logo: Picture) =>
    pdfOf([{ ...everyBlock, letterhead: { ...everyBlock.letterhead, logo } }], "a4")
  const header = (width: number) => {
    const changed = PNG.slice()
    new DataView(changed.buffer).setUint32(16, width)
    return changed
  }
  const font = readFileSync(new URL("../../../package.json", import.meta.url))

  it("is set beside the practice's name", () => {
    expect(withLogo({ mediaType: "image/png", bytes: PNG })).toMatchObject({ kind: "made", pages: 3 })
  })

  it.each<[string, Picture, string]>([
    ["of 40 MB", { mediaType: "image/png", bytes: new Uint8Array(40_000_000) }, "at most 1 MB"],
    ["that is none", { mediaType: "image/png", bytes: font }, "can be read"],
    ["of another type than it says", { mediaType: "image/jpeg", bytes: PNG }, "can be read"],
    ["cut short", { mediaType: "image/png", bytes: PNG.subarray(0, 45) }, "can be read"],
    ["of no width", { mediaType: "image/png", bytes: header(0) }, "can be read"],
    ["that unfolds", { mediaType: "image/png", bytes: header(100_000) }, "at most 4000 pixels a side"],
    [
      "that ends after three bytes",
      { mediaType: "image/jpeg", bytes: new Uint8Array([255, 216, 255]) },
      "can be read",
    ],
  ])("is refused with words %s", (_, logo, words) => {
    expect(withLogo(logo)).toMatchObject({
      kind: "refused",
      about: "logo",
      why: expect.stringMatching(new RegExp(`^the logo must be a.* ${words}`)),
    })
    expect(pictureFault(logo, { practice: "P" })).toContain(words)
  })
})
