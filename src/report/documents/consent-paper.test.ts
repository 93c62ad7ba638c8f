import { execFileSync } from "node:child_process"
import { mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { describe, expect, it } from "vitest"
import type { Course } from "../../engine/course.js"
import { type ConsentWording, noRules } from "../../engine/practice-rules.js"
import { LANGUAGES, type Language } from "../../engine/say.js"
import { learnEveryLanguage } from "../../words/index.js"
import type { Block, PaperDocument } from "../document.js"
import type { DocumentInput } from "../document-input.js"
import { documentOf } from "../documents.js"
import { pdfOf } from "../pdf/pdf.js"

learnEveryLanguage()

const drops = { kind: "atropine", concentrationPercent: 0.05 } as const
const course: Course = {
  lengthwise: 1,
  child: { born: "2017-03-14", sex: "female" },
  visits: [],
  treatments: [{ ...drops, from: "2026-12-05" }],
}
const fees = {
  title: "Fees of 2026",
  currency: "EUR",
  from: "2026-01-01",
  fees: [
    { id: "bottle", title: "Bottle", cents: 3550, coverage: "not-covered", charged: { kind: "bottle" } },
  ],
} as const
const input = (more: Partial<DocumentInput> = {}): DocumentInput => ({
  course,
  childName: "Ilse Varga",
  practice: { name: "Practice" },
  settings: {} as DocumentInput["settings"],
  rules: { ...noRules, contacts: { poisonCentre: "00 000", urgent: "00 111" } },
  today: "2026-11-25",
  language: "en",
  letterhead: { practice: "Practice", lines: [] },
  ...more,
})
function paper(more: Partial<DocumentInput> = {}): PaperDocument {
  const made = documentOf("consent", input(more))
  if (made.kind === "refused") throw new Error(made.why)
  return made
}
const why = (more: Partial<DocumentInput>): string => {
  const made = documentOf("consent", input(more))
  return made.kind === "refused" ? made.why : "it was made"
}

function textsOf(block: Block): readonly string[] {
  switch (block.kind) {
    case "heading":
    case "text":
      return [block.text]
    case "list":
      return block.items
    case "pairs":
      return block.pairs.flat()
    case "caution":
    case "notes":
      return block.lines
    case "signatures":
      return block.lines.flatMap(({ role, name }) => [role, name])
    default:
      return []
  }
}
const words = ({ blocks }: PaperDocument): string =>
  blocks.flatMap(textsOf).join("\n").replaceAll("\u00a0", " ")

describe("a consent on paper", () => {
  it("has the text with its figures, what it costs, its sources, and lines for all who sign", () => {
    const text = words(paper({ rules: { ...input().rules, feeSchedules: [fees] }, author: "Dr. A. Example" }))
    for (const part of [
      "Ilse Varga",
      "14 March 2017",
      "grew 0.20 mm on average, eyes on drops without the drug 0.41 mm",
      "by our fees “Fees of 2026” of 1 January 2026",
      "Yam JC et al. Ophthalmology 2019;126:113-124",
      "Parent or guardian, and relation to the child",
      "The child, if able and willing to sign",
      "Clinician who explained it\nDr. A. Example",
      'Wording "drops", version 1, en',
    ])
      expect(text).toContain(part)
  })

  it("has the poison centre and the same-day call in view before anything else is read", () => {
    const { blocks } = paper()
    const caution = blocks.find(({ kind }) => kind === "caution")
    expect(blocks.findIndex(({ kind }) => kind === "caution")).toBeLessThan(
      blocks.findIndex(({ kind }) => kind === "heading"),
    )
    expect(caution && textsOf(caution).join(" ")).toMatch(
      /poisonous.*Call: 00 000\..*same day.*Call: 00 111\./,
    )
  })

  it("does not speak of poison where there are no drops", () => {
    expect(words(paper({ treatment: { kind: "lenslet-spectacles" } }))).not.toContain("poison")
  })

  it("does without a name that a course file does not have", () => {
    expect(words(paper({ childName: null }))).not.toMatch(/^Child$/m)
  })
})

describe("which treatment it is about", () => {
  const treatments = [
    { kind: "orthokeratology", from: "2026-01-10" },
    { ...drops, from: "2026-12-05" },
  ] as const
  const title = (more: Partial<DocumentInput>) => paper(more).title.replaceAll("\u00a0", " ")

  it("the one asked about", () => {
    expect(title({ treatment: { kind: "atropine", concentrationPercent: 0.01 } })).toContain(
      "atropine 0.01 %",
    )
  })

  it("else the one in use, or planned, that lacks a consent", () => {
    expect(title({ course: { ...course, treatments } })).toContain("orthokeratology")
    const consents = [{ date: "2026-01-09", covers: { kind: "orthokeratology" } }] as const
    expect(title({ course: { ...course, treatments, consents } })).toContain("atropine 0.05 %")
  })

  it("and where all are covered the one in use, to be read again", () => {
    const consents = treatments.map(({ from: _, ...covers }) => ({ date: "2026-01-09", covers }))
    expect(title({ course: { ...course, treatments, consents } })).toContain("orthokeratology")
  })

  it("none is refused with the reason", () => {
    expect(why({ course: { ...course, treatments: [] } })).toMatch(/^no treatment that needs a consent/)
    expect(why({ treatment: { kind: "none" } })).toBe("nobody consents to having no treatment")
    expect(why({ treatment: { kind: "atropine" } })).toMatch(/names their strength/)
  })

  it("is refused in the language asked for", () => {
    expect(why({ treatment: { kind: "none" }, language: "es" })).toMatch(/^nadie da su consentimiento/)
  })
})

describe("in the family's language", () => {
  it("has the same blocks in each", () => {
    const shape = (language: Language) => paper({ language }).blocks.map(({ kind }) => kind)
    for (const language of LANGUAGES) expect(shape(language)).toEqual(shape("en"))
  })

  it("has the same figures in each, dates apart, which each language orders its own way", () => {
    const figures = (language: Language) =>
      (words(paper({ language })).match(/\d+(?:[.,]\d+)?/g) ?? [])
        .map((figure) => figure.replace(",", "."))
        // The months of the two dates are words in some languages and figures in others.
        .filter((figure) => figure !== "3" && figure !== "11")
        .toSorted()
    for (const language of LANGUAGES) expect(figures(language)).toEqual(figures("en"))
  })

  it("says where the practice's own wording is in another language only", () => {
    const own: ConsentWording = {
      id: "drops",
      version: "A",
      from: "2026-01-01",
      language: "en",
      title: "Our own consent to {treatment}",
      sections: [{ heading: "In figures", text: "{benefit}" }],
      isMaterial: true,
    }
    const rules = { ...input().rules, consentWordings: [own] }
    expect(paper({ rules }).title).toContain("Our own consent")
    expect(words(paper({ rules }))).not.toContain("this is the one that ships")
    const spanish = words(paper({ rules, language: "es" }))
    expect(spanish).toContain('Texto "drops", versión 1, es')
    expect(spanish).toContain("La consulta no tiene un texto propio vigente en este idioma")
  })
})

describe("as a PDF", () => {
  it.each([
    ["en", "Consent to treatment with atropine 0.05 % eye drops", "Who consents"],
    ["es", "Consentimiento para el tratamiento con gotas oculares de atropina al 0,05 %", "Quién consiente"],
    ["zh-Hans", "使用 0.05% 阿托品滴眼液治疗的知情同意书", "谁同意"],
  ] as const)(
    "is read by poppler in %s, tagged, from its title to where it is signed",
    (language, title, signing) => {
      const made = pdfOf([paper({ language })], "a4")
      if (made.kind === "refused") throw new Error(made.why)
      const folder = mkdtempSync(join(tmpdir(), "lengthwise-consent-"))
      const file = join(folder, "consent.pdf")
      writeFileSync(file, made.bytes)
      const plain = (text: string) => text.replaceAll(/\s+/g, "")
      const text = plain(execFileSync("pdftotext", [file, "-"], { encoding: "utf8" }))
      const info = execFileSync("pdfinfo", [file], { encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] })
      rmSync(folder, { recursive: true })
      expect(text.indexOf(plain(title))).toBeGreaterThanOrEqual(0)
      expect(text.indexOf(plain(signing))).toBeGreaterThan(text.indexOf(plain(title)))
      expect(info.replaceAll("\u00a0", " ")).toContain(title)
      expect(info).toMatch(/Tagged:\s+yes/)
    },
  )
})
