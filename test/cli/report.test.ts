import { spawnSync } from "node:child_process"
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { processIo } from "../../src/cli/process-io.js"
import { runCommandLine } from "../../src/cli/program.js"
import { hasTool, textOf, toolOn } from "../report/outside-tools.js"
import { commandLine, json } from "./fake-io.js"

const course = JSON.parse(readFileSync(new URL("../../examples/slowed.json", import.meta.url), "utf8"))
const PNG = Buffer.from(
  "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==",
  "base64",
)
const files = {
  "child.json": course,
  "head.txt": "12 Harbour Lane\n\nTelephone 0123\n",
  "logo.png": new Uint8Array(PNG),
  "large.png": new Uint8Array(40_000_000),
  "logo.gif": new Uint8Array(Buffer.from("GIF89a")),
  "folder/a.json": course,
  "folder/b.json": { ...course, child: { ...course.child, sex: "girl" } },
  "folder/c.json": course,
}
const report = (...words: readonly string[]) => commandLine(["report", ...words], { files })
const bytesIn = (held: string | Uint8Array | undefined): Uint8Array =>
  typeof held === "string" || held === undefined ? new Uint8Array() : held

describe("lengthwise report", () => {
  it("writes the family's report in English on A4 where nothing else is asked", async () => {
    const { code, stdout, written } = await report("child.json", "--out", "r.pdf", "--name", "Mira Solberg")
    expect(code).toBe(0)
    expect(stdout).toMatch(/Mira Solberg.*\n2 pages written to r\.pdf\.\n/)
    expect(Buffer.from(bytesIn(written["r.pdf"])).subarray(0, 5).toString()).toBe("%PDF-")
  })

  it("says as JSON what it wrote, and every text in order", async () => {
    const { stdout, stderr, written } = await report(
      ...[
        "child.json",
        "--out",
        "r.pdf",
        "--json",
        "--language",
        "es",
        "--paper",
        "letter",
        "--practice",
        "Puerto",
      ],
    )
    const said = json({ stdout })
    expect(Object.keys(said)).toEqual([
      "document",
      "language",
      "paper",
      "pages",
      "bytes",
      "out",
      "title",
      "text",
    ])
    expect(said).toMatchObject({
      document: "family",
      language: "es",
      paper: "letter",
      pages: 2,
      out: "r.pdf",
    })
    expect(said.bytes).toBe(bytesIn(written["r.pdf"]).length)
    expect(said.text.slice(0, 2)).toEqual(["Puerto", said.title])
    expect(stderr).toBe("")
  })

  it.skipIf(!hasTool("pdftotext"))("puts on paper what its JSON says (needs poppler-utils)", async () => {
    for (const language of ["en", "es", "zh-Hans"]) {
      const { stdout, written } = await report(
        "child.json",
        "--out",
        "r.pdf",
        "--json",
        "--language",
        language,
      )
      const paper = textOf(bytesIn(written["r.pdf"])).replace(/\s/g, "")
      const { text } = json({ stdout }) as { readonly text: readonly string[] }
      // What a figure shows is told to who does not see it, and stands nowhere as text.
      const missing = text.filter((words) => !paper.includes(words.replace(/\s/g, "")))
      expect(missing.length, missing.join("\n")).toBeLessThanOrEqual(4)
      expect(text.length).toBeGreaterThan(20)
    }
  })

  it.skipIf(!hasTool("pdfinfo"))("sets letterhead, logo and paper (needs poppler-utils)", async () => {
    const { written } = await report(
      ...["child.json", "--out", "r.pdf", "--paper", "letter", "--practice", "Quiet Harbour"],
      ...["--letterhead", "head.txt", "--logo", "logo.png", "--link", "https://quiet.example/f/abc"],
    )
    const bytes = bytesIn(written["r.pdf"])
    expect(textOf(bytes)).toMatch(/^Quiet Harbour 12 Harbour Lane Telephone 0123 /)
    expect(toolOn(bytes, { program: "pdfinfo" }).out).toContain("(letter)")
    expect(
      toolOn(bytes, { program: "pdfimages", before: ["-list"] })
        .out.trim()
        .split("\n").length,
    ).toBeGreaterThan(2)
  })

  it("refuses with the reason and exit code 1, and writes nothing", async () => {
    const refused = await report(
      "child.json",
      "--document",
      "adverse-event",
      "--out",
      "r.pdf",
      "--language",
      "zh-Hans",
    )
    expect(refused.code).toBe(1)
    expect(refused.stderr).toMatch(/--document: No adverse-event document can be made of child\.json: [a-z]/)
    expect(refused.stderr).not.toMatch(/\p{Script=Han}/u)
    expect(refused.written).toEqual({})
    const letters = await report("child.json", "--out", "r.pdf", "--name", "ꦮꦪꦤ꧀")
    expect(letters.stderr).toContain("no font at hand holds “ꦮ”")
    expect(letters.code).toBe(1)
  })

  it.each<[string, readonly string[], string]>([
    ["a logo of 40 MB", ["--logo", "large.png"], "large.png is too large"],
    ["a logo of another kind", ["--logo", "logo.gif"], "--logo must be a PNG or JPEG"],
    ["a letterhead that is not there", ["--letterhead", "no.txt"], "no.txt cannot be read"],
    ["a name that is empty", ["--name", " "], "--name must be a name of 1 to 200 characters"],
    ["a name of 201 characters", ["--name", "x".repeat(201)], "--name must be a name of 1 to 200 characters"],
    ["drops without a strength", ["--treatment", "atropine"], "--concentration is missing"],
    ["a strength without drops", ["--concentration", "0.05"], "--concentration must be absent"],
    ["a link that is none", ["--link", "javascript:x"], "--link must be an address"],
    ["fees that are none", ["--fees", "head.txt"], "not JSON"],
  ])("tells of %s", async (_, words, message) => {
    const { code, stderr, written } = await report("child.json", "--out", "r.pdf", ...words)
    expect(stderr).toContain(message)
    expect(code).toBe(1)
    expect(written).toEqual({})
  })

  it("keeps stdout for one thing, and never writes over the course file", async () => {
    const both = await report("child.json", "--out", "-", "--json")
    expect(both.code).toBe(1)
    expect(both.stderr).toContain("--out must be a file, since the JSON takes stdout")
    const over = await report("child.json", "--out", "./child.json")
    expect(over.stderr).toContain("--out must be another file than the course file")
    const alone = await report("child.json", "--out", "-")
    expect(alone.stdout.slice(0, 5)).toBe("%PDF-")
    expect(alone.stdout.trimEnd().slice(-5)).toBe("%%EOF")
  })

  it.each([
    ["--document", "diploma"],
    ["--language", "fr"],
    ["--paper", "a5"],
    ["--months", "0"],
  ])("does not understand %s %s", async (option, value) => {
    expect((await report("child.json", "--out", "r.pdf", option, value)).code).toBe(2)
  })

  it("says why a file could not be written", async () => {
    const { code, stderr } = await report("child.json", "--out", "locked/r.pdf")
    expect(code).toBe(1)
    expect(stderr).toContain("locked/r.pdf cannot be written")
  })
})

describe("lengthwise report of a folder", () => {
  it("is one PDF, with what could not be printed on its last page, and says so", async () => {
    const { code, stdout, stderr, written } = await report("folder", "--out", "all.pdf", "--json")
    expect(code).toBe(1)
    expect(json({ stdout })).toMatchObject({
      pages: 5,
      printed: 2,
      notPrinted: [{ label: "folder/b.json", why: 'child.sex must be female or male, not "girl".' }],
    })
    expect(stderr).toContain("setting 3 papers")
    expect(stderr).toContain(
      "No family document can be made of folder/b.json: child.sex must be female or male",
    )
    if (hasTool("pdftotext")) {
      const text = textOf(bytesIn(written["all.pdf"]))
      expect(text.match(/Page 1 of 2/g)).toHaveLength(2)
      expect(text).toMatch(
        /Not printed, and why 1 of the 3 papers asked for could not be made\..*folder\/b\.json/,
      )
    }
  })

  it("is refused where no document can be made", async () => {
    const { code, stderr, written } = await report(
      "folder",
      "--document",
      "adverse-event",
      "--out",
      "all.pdf",
    )
    expect(code).toBe(1)
    expect(stderr).toContain("there is nothing to print for any of these children")
    expect(written).toEqual({})
  })
})

describe("the file that is written", () => {
  let folder = ""
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "lengthwise-report-"))
  })
  afterAll(() => rmSync(folder, { recursive: true }))

  it("takes the place of an older one whole, and leaves nothing beside it", async () => {
    const out = join(folder, "r.pdf")
    writeFileSync(out, "older")
    const io = { ...processIo, out: () => {}, error: () => {}, today: () => "2026-08-01" }
    expect(await runCommandLine(["report", "examples/slowed.json", "--out", out], io)).toBe(0)
    expect(readFileSync(out).subarray(0, 5).toString()).toBe("%PDF-")
    expect(readdirSync(folder)).toEqual(["r.pdf"])
    if (hasTool("qpdf")) expect(spawnSync("qpdf", ["--check", out]).status).toBe(0)
  })
})
