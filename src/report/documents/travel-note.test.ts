import { mkdirSync, writeFileSync } from "node:fs"
import { beforeAll, describe, expect, it } from "vitest"
import { drops } from "../../../test/spec/protocol/child.js"
import type { Course, Treatment } from "../../engine/course.js"
import { noRules } from "../../engine/practice-rules.js"
import { LANGUAGES, type Language } from "../../engine/say.js"
import { defaultSettings } from "../../engine/settings.js"
import { learnEveryLanguage } from "../../words/index.js"
import type { PaperDocument } from "../document.js"
import type { DocumentInput } from "../document-input.js"
import { documentOf } from "../documents.js"
import { pdfOf } from "../pdf/pdf.js"

beforeAll(learnEveryLanguage)

const today = "2025-09-10"
const on = (...treatments: readonly Treatment[]): Course => ({
  lengthwise: 1,
  child: { born: "2016-05-02", sex: "female" },
  visits: [
    {
      date: "2025-01-10",
      right: { axialLength: { mm: 24.61 }, refraction: { sphere: -3.25 } },
      left: { axialLength: { mm: 24.58 } },
    },
  ],
  treatments,
})
const weak = drops("2025-01-10", 0.01)
const strong = drops("2025-01-10", 0.05)
const input = (course: Course, changes: Partial<DocumentInput> = {}): DocumentInput => ({
  course,
  childName: "Mira Solberg",
  practice: { name: "The practice" },
  settings: defaultSettings,
  rules: { ...noRules, contacts: { poisonCentre: "0123 100", urgent: "0123 200" } },
  today,
  language: "en",
  letterhead: { practice: "The practice", lines: ["1 Some Street", "Telephone 0123 456"] },
  ...changes,
})
function note(course: Course, changes: Partial<DocumentInput> = {}): PaperDocument {
  const document = documentOf("travel", input(course, changes))
  if (document.kind === "refused") throw new Error(document.why)
  return document
}
const wordsOf = ({ title, blocks, foot }: PaperDocument): string =>
  [title, foot, JSON.stringify(blocks)].join("\n")
const said = (course: Course, changes: Partial<DocumentInput> = {}) => wordsOf(note(course, changes))

describe("what is used", () => {
  it("is said with strength, eyes, hour and nights", () => {
    expect(said(on(strong))).toContain(
      "Atropine eye drops 0.05 %: one drop at bedtime in each eye, every night.",
    )
    expect(said(on({ ...weak, eye: "right", nightsPerWeek: 3 }))).toContain(
      "Atropine eye drops 0.01 %: one drop at bedtime in the right eye, 3 nights a week.",
    )
    expect(said(on({ kind: "atropine", from: "2025-01-10" }))).toContain("the strength is on the label")
  })

  it("is one thing where each eye has an entry of its own, and two where the strengths differ", () => {
    const words = said(on({ ...strong, eye: "right" }, { ...strong, eye: "left" }))
    expect(words).toContain("in each eye")
    expect(words).not.toContain("in the left eye")
    const two = said(on({ ...strong, eye: "right" }, { ...weak, eye: "left" }))
    expect(two).toContain("0.05 %: one drop at bedtime in the right eye")
    expect(two).toContain("0.01 %: one drop at bedtime in the left eye")
  })

  it.each([
    ["lenslet-spectacles", "Glasses (lenslet spectacles): worn all day, in class and outdoors."],
    ["dual-focus-lens", "in both eyes: put in after getting up, taken out before sleep."],
    ["orthokeratology", "in both eyes: worn during sleep, taken out after getting up."],
  ] as const)("%s is worn as such things are", (kind, words) => {
    expect(said(on({ kind, from: "2025-01-10" }))).toContain(words)
  })

  it("leaves out what has ended or is still to begin", () => {
    expect(said(on(weak, { kind: "orthokeratology", from: "2025-12-01" }))).not.toContain("contact lenses")
    expect(said(on(drops("2024-01-10", 0.05, "2025-01-10"), weak))).not.toContain("0.05")
  })

  it("is nothing without a treatment: the note is refused", () => {
    for (const course of [
      on(),
      on({ kind: "none", from: "2025-01-10" }),
      on(drops("2024-01-10", 0.05, today)),
    ])
      expect(documentOf("travel", input(course))).toEqual({
        kind: "refused",
        why: "no treatment is in use on 10 September 2025: there is nothing that such a note could say",
      })
  })
})

describe("what may be noticed", () => {
  const LIGHT = "Bright light may bother the child."
  const NEAR = "Reading and writing close up may be harder or blurred."
  const ALLERGY = "The eyes or lids may be red, itchy or sore."

  it("is what was reported of children on that strength, and nothing else", () => {
    // MOSAIC2 asked about light and near sight, and LAMP measured pupil and accommodation; no arm tells of headache.
    expect(said(on(strong))).toContain(LIGHT)
    expect(said(on(strong))).toContain(NEAR)
    expect(said(on(strong))).toContain("reported of drops of this strength by Loughman 2025 and Yam 2019.")
    expect(said(on(strong))).not.toContain(ALLERGY)
    expect(said(on(weak))).toContain(ALLERGY)
    expect(said(on(weak))).not.toContain("headache")
    expect(said(on(drops("2025-01-10", 0.5)))).toContain("headache")
  })

  it("is said to be unknown of a strength that no trial reports", () => {
    const words = said(on(drops("2025-01-10", 0.04)))
    expect(words).toContain("We have read no report of what may be noticed at this strength.")
    expect(words).not.toContain(LIGHT)
  })

  it("is not said of glasses, of which nothing was read, nor how to carry drops that are not there", () => {
    const words = said(on({ kind: "defocus-spectacles", from: "2025-01-10" }))
    for (const part of ["may be noticed", "swallowed", "hand luggage", "Sunglasses"])
      expect(words).not.toContain(part)
  })
})

describe("a note for school and travel", () => {
  it("says what to do, whom to call, how to carry the bottle, and who answers for it", () => {
    const words = said(on(strong), { author: "Dr. Ada Brenner" })
    for (const part of [
      "Sunglasses and a hat or cap may be worn",
      "Reading glasses may be used",
      "out of the reach of children",
      "hand luggage, with its label",
      "call the poison centre at once: 0123 100",
      "Urgent contact: 0123 200",
      "Telephone 0123 456",
      "Dr. Ada Brenner",
      "common practice without a published source",
      "It is not a prescription.",
    ])
      expect(words).toContain(part)
  })

  it("names the poison centre of the country where the practice has set none", () => {
    expect(said(on(strong), { rules: noRules })).toContain("the poison centre of the country you are in")
  })

  it("holds no figure of the eyes", () => {
    expect(said(on(strong))).not.toMatch(/24\.|3\.25|\d mm|dioptre/)
  })

  it("leaves room for a name that the file does not hold", () => {
    const words = said(on(strong), { childName: null })
    expect(words).toContain("____")
    expect(words).toContain("This child is treated")
  })
})

describe("a note in another language", () => {
  const everything = on(
    { ...strong, eye: "right", nightsPerWeek: 3 },
    { ...weak, eye: "left" },
    { kind: "lenslet-spectacles", from: "2025-01-10" },
    { kind: "orthokeratology", from: "2025-01-10" },
  )
  const sources = /Loughman 2025|Yam 2019|Zadnik 2023|STAR 2026|Hieda 2021|Chia 2016/g
  const figures = (language: Language) =>
    said(everything, { language })
      .replace(sources, "")
      .replaceAll(/(\d),(\d)/g, "$1.$2")
      .match(/\d+\.\d+/g)
      ?.toSorted()

  it.each(["es", "zh-Hans"] as const)("%s has the same strengths and no English left", (language) => {
    expect(figures(language)).toEqual(figures("en"))
    const { blocks } = note(everything, {
      language,
      childName: null,
      letterhead: { practice: "", lines: [] },
    })
    const prose = JSON.stringify(blocks).replace(sources, "").replaceAll("The practice", "")
    expect(prose.match(/\b(the|of|and|with|drops|eyes|may|glasses|worn|child|call|practice)\b/gi)).toBeNull()
  })

  it("is said as the language says it", () => {
    expect(said(on(strong), { language: "es" })).toContain(
      "Colirio de atropina al 0,05 %: una gota al acostarse en cada ojo, todas las noches.",
    )
    expect(said(on({ ...weak, nightsPerWeek: 3 }), { language: "zh-Hans" })).toContain(
      "0.01% 阿托品滴眼液：每周 3 晚睡前双眼各滴一滴。",
    )
  })

  it("is set as one page in every language", () => {
    for (const language of LANGUAGES) {
      const pdf = pdfOf([note(on(strong), { language })], "a4")
      if (pdf.kind !== "made") throw new Error(pdf.why)
      expect(pdf.pages).toBe(1)
      if (process.env.KEEP_PAPERS) {
        mkdirSync(process.env.KEEP_PAPERS, { recursive: true })
        writeFileSync(`${process.env.KEEP_PAPERS}/travel-${language}.pdf`, pdf.bytes)
      }
    }
  })
})
