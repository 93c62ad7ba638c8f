import { readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { readFile } from "./read-file.js"

const bytes = (text: string) => new TextEncoder().encode(text)
const read = (content: Uint8Array, file = "file") => readFile({ file, bytes: content, today: "2026-08-01" })
const object = (name: string) =>
  readFileSync(new URL(`../../test/validation/dicom/objects/${name}.dcm`, import.meta.url))

describe("a file is read by its content", () => {
  it("DICOM, whatever its name", async () => {
    const { fragments } = await read(object("keratometry-both"), "keratometry.csv")
    expect(fragments[0]?.source.kind).toBe("dicom")
  })

  it("a course file is one fragment under the child it names", async () => {
    const course = {
      lengthwise: 1,
      child: { id: "7", born: "2017-03-14", sex: "female", ancestry: "european" },
      visits: [{ date: "2026-01-10", right: { axialLength: { mm: 24.1 } } }],
    }
    expect((await read(bytes(`\uFEFF ${JSON.stringify(course)}`))).fragments).toMatchObject([
      {
        identity: { number: "7", born: "2017-03-14", sex: "female" },
        course: { child: { ancestry: "european" }, visits: course.visits },
        source: { kind: "course-file" },
      },
    ])
  })

  it("a course file with a fault is skipped with every fault and its place", async () => {
    const { fragments, skipped } = await read(bytes('{ "child": { "born": "2017-03-14", "sex": "f" } }'))
    expect(fragments).toEqual([])
    expect(skipped).toEqual([
      { file: "file", where: "child.sex", why: 'child.sex must be female or male, not "f".' },
    ])
  })

  it.each([
    ["nothing", "", "empty"],
    ["a PDF", "%PDF-1.7 ...", "PDF"],
    ["a picture", "GIF89a...", "picture"],
    ["a ZIP archive", "PK\u0003\u0004....readme.txt", "ZIP"],
    ["our archive", "PK\u0003\u0004....manifest.json....entries.ndjson", "lengthwise import"],
    ["XML", '<?xml version="1.0"?><Patient/>', "XML"],
    ["a program", "MZ\u0000\u0001\u0000", "no kind"],
    ["half of a DICOM file", "\u0008\u0000\u0005\u0000CS\u0000\u0000", "without the header"],
  ])("%s is skipped with a reason", async (_, content, words) => {
    const { fragments, skipped } = await read(bytes(content))
    expect(fragments).toEqual([])
    expect(skipped.map(({ why }) => why).join()).toContain(words)
  })
})
