import { spawnSync } from "node:child_process"
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { fileURLToPath } from "node:url"
import { describe, expect, it } from "vitest"
import { noRules } from "../../src/engine/practice-rules.js"
import { LANGUAGES, type Language } from "../../src/engine/say.js"
import { defaultSettings } from "../../src/engine/settings.js"
import { readCourse } from "../../src/interop/course/read-course.js"
import { documentOf } from "../../src/report/documents.js"
import { pdfOf } from "../../src/report/pdf/pdf.js"
import { learnEveryLanguage } from "../../src/words/index.js"
import { greyPicture, shareChanged } from "./grey-png.js"
import { hasTool } from "./outside-tools.js"

/** The pages as they were last looked at; `node scripts/paper-pages.mjs` draws them anew. */
const KEPT = fileURLToPath(new URL("./pages", import.meta.url))
const TODAY = "2026-08-01"

/** Share of the dots that may differ: another version of poppler smooths an edge otherwise, and moves no word. */
const MOST_CHANGED = 0.004

learnEveryLanguage()

function familyReport(language: Language): Uint8Array {
  const read = readCourse(readFileSync("examples/slowed.json", "utf8"), { today: TODAY })
  if ("problems" in read) throw new Error(JSON.stringify(read.problems))
  const practice = { name: "Quiet Harbour" }
  const document = documentOf("family", {
    ...{ course: read.course, childName: "Mira Solberg", practice, settings: defaultSettings },
    ...{ rules: noRules, today: TODAY, language },
    letterhead: { practice: practice.name, lines: ["12 Harbour Lane", "Telephone 0123"] },
    familyLink: "https://quiet.example/f/0123456789abcdef",
  })
  if (document.kind === "refused") throw new Error(document.why)
  const pdf = pdfOf([document], "a4")
  if (pdf.kind === "refused") throw new Error(pdf.why)
  return pdf.bytes
}

/** Each page as a small grey PNG, by poppler. */
function pagesOf(pdf: Uint8Array): readonly Uint8Array[] {
  const folder = mkdtempSync(join(tmpdir(), "lengthwise-pages-"))
  try {
    writeFileSync(join(folder, "paper.pdf"), pdf)
    spawnSync("pdftoppm", ["-r", "45", "-gray", "-png", join(folder, "paper.pdf"), join(folder, "page")])
    const names = readdirSync(folder).filter((name) => name.endsWith(".png"))
    return names.sort().map((name) => readFileSync(join(folder, name)))
  } finally {
    rmSync(folder, { recursive: true })
  }
}

describe.skipIf(!hasTool("pdftoppm"))("the family's report on paper (needs poppler-utils)", () => {
  it.each(LANGUAGES)("looks as it did when it was last looked at: %s", (language) => {
    const pages = pagesOf(familyReport(language))
    expect(pages).toHaveLength(2)
    pages.forEach((page, index) => {
      const file = join(KEPT, `family-${language}-${index + 1}.png`)
      const changedFile = file.replace(".png", "-changed.png")
      if (process.env.LENGTHWISE_RENEW_PAGES) writeFileSync(file, page)
      rmSync(changedFile, { force: true })
      const changed = existsSync(file) ? shareChanged(greyPicture(page), greyPicture(readFileSync(file))) : 1
      if (changed > MOST_CHANGED) writeFileSync(changedFile, page)
      expect(changed, `look at ${changedFile}`).toBeLessThanOrEqual(MOST_CHANGED)
    })
  })

  it("would be seen to change by one word", () => {
    const [page] = pagesOf(familyReport("en"))
    const read = greyPicture(page ?? new Uint8Array())
    const dots = read.dots.slice()
    // A word of 5 mm by 40 mm at 45 dots an inch, blacked out.
    for (let y = 100; y < 109; y += 1) dots.fill(0, y * read.width + 100, y * read.width + 171)
    expect(shareChanged(read, { ...read, dots })).toBeGreaterThan(0.001)
  })
})
