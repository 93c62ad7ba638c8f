import { describe, expect, it } from "vitest"
import { type ConsentText, consentPlainText, consentText } from "../../../src/engine/consent/consent-text.js"
import { defaultWordings, wordingIdOf, wordingIn } from "../../../src/engine/consent/default-wording.js"
import { spokenFor } from "../../../src/engine/consent/wording-language.js"
import { TREATMENT_KINDS, type TreatmentChoice } from "../../../src/engine/course.js"
import { inLanguage, LANGUAGES, type Language } from "../../../src/engine/say.js"
import { consentEvidence } from "../../../src/evidence/consent.js"
import { learnEveryLanguage } from "../../../src/words/index.js"

learnEveryLanguage()

const treatments: readonly TreatmentChoice[] = [
  ...[0.01, 0.02, 0.025, 0.03, 0.05, 0.1, 0.5, 1].map((concentrationPercent) => ({
    kind: "atropine" as const,
    concentrationPercent,
  })),
  ...TREATMENT_KINDS.filter((kind) => kind !== "atropine" && kind !== "none").map((kind) => ({ kind })),
]
const read = (treatment: TreatmentChoice, language: Language): ConsentText => {
  const shipped = defaultWordings.filter(({ id }) => id === wordingIdOf(treatment.kind))
  return consentText({ wording: wordingIn(language, shipped), treatment, evidence: consentEvidence })
}

/** Every figure of a text in order of size, with a point for a decimal comma. */
const figuresOf = (text: string): readonly string[] =>
  (text.match(/\d+(?:[.,]\d+)?/g) ?? []).map((figure) => figure.replace(",", ".")).toSorted()

const named = treatments.map(
  (treatment) => [`${treatment.kind} ${treatment.concentrationPercent ?? ""}`.trim(), treatment] as const,
)

describe.each(["es", "zh-Hans"] as const)("What ships in %s says what it says in English", (language) => {
  it.each(named)("section for section, figure for figure: %s", (_, treatment) => {
    const [english, other] = [read(treatment, "en"), read(treatment, language)]
    expect(other.sections.map(({ paragraphs }) => paragraphs.length)).toEqual(
      english.sections.map(({ paragraphs }) => paragraphs.length),
    )
    const figures = (text: ConsentText) => [
      figuresOf(text.title),
      ...text.sections.map(({ heading, paragraphs }) => figuresOf([heading, ...paragraphs].join("\n"))),
    ]
    expect(figures(other)).toEqual(figures(english))
    expect(other.sources).toEqual(english.sources)
  })

  it.each(named)("with no English left but the citations: %s", (_, treatment) => {
    const { sources, ...other } = read(treatment, language)
    const text = consentPlainText({ ...other, sources: [] })
      .split("\n")
      .slice(2)
      .join("\n")
    expect(text.match(/\b(?:the|of|and|eyes|drops|months|growth|trial|treatment|children)\b/gi)).toBeNull()
    expect(sources.length).toBeGreaterThan(0)
    // Chinese has no Latin letters but those of the dioptre.
    if (language === "zh-Hans")
      expect((text.match(/[A-Za-z]+/g) ?? []).filter((word) => word !== "D")).toEqual([])
  })
})

describe("The language of a text", () => {
  it("is the wording's, whatever language is spoken around it, so that its hash is the same everywhere", () => {
    const drops: TreatmentChoice = { kind: "atropine", concentrationPercent: 0.05 }
    for (const language of LANGUAGES) {
      const texts = LANGUAGES.map((around) =>
        inLanguage(around, () => consentPlainText(read(drops, language))),
      )
      expect(new Set(texts).size).toBe(1)
    }
  })

  it("is named in it with its version", () => {
    const head = (language: Language) =>
      consentPlainText(read({ kind: "orthokeratology" }, language)).split("\n")[1]
    expect(LANGUAGES.map(head)).toEqual([
      'Wording "optical", version 1, en',
      'Texto "optical", versión 1, es',
      '文本 "optical"，版本 1，zh-Hans',
    ])
  })

  it("has the decimal sign of its language in every figure", () => {
    const paragraphs = (language: Language) =>
      read({ kind: "atropine", concentrationPercent: 0.05 }, language).sections.flatMap((each) => [
        ...each.paragraphs,
      ])
    // The one date of the text is a year; nothing else may hold a figure with the other sign.
    expect(paragraphs("es").join("\n")).not.toMatch(/\d\.\d/)
    expect(paragraphs("en").join("\n")).not.toMatch(/\d,\d/)
    expect(paragraphs("zh-Hans").join("\n")).not.toMatch(/\d,\d/)
  })

  it("is told by its code: a country's form of a language counts as that language", () => {
    expect(["en-GB", "es-MX", "zh", "zh-CN", "zh-Hans-SG"].map(spokenFor)).toEqual([
      "en",
      "es",
      "zh-Hans",
      "zh-Hans",
      "zh-Hans",
    ])
    // Whoever reads traditional characters is not handed simplified ones, and other languages are not ours to speak.
    expect(["zh-Hant", "zh-TW", "fr", ""].map(spokenFor)).toEqual([null, null, null, null])
  })

  it("a wording in a language we do not speak has its figures in English, and says which language it is in", () => {
    const [english] = defaultWordings
    if (!english) throw new Error("no wording ships")
    const text = consentText({
      wording: { ...english, language: "fr", version: "A" },
      treatment: { kind: "atropine", concentrationPercent: 0.05 },
      evidence: consentEvidence,
    })
    expect([text.spoken, text.wording.language]).toEqual(["en", "fr"])
  })
})

/**
 * Flesch-Kincaid grade: 0.39 words per sentence + 11.8 syllables per word - 15.59 (Kincaid et al. 1975). Syllables by
 * groups of vowels, a silent e at the end left out. Figures and units are read aloud as words and are left out.
 */
function gradeOf(text: string): number {
  const sentences = text.split(/[.?!](?=\s|$)/).filter((part) => /[a-z]{2}/i.test(part))
  const words = text.match(/[A-Za-z][A-Za-z'’-]*[A-Za-z]/g) ?? []
  const syllables = words.map((word) => {
    const groups =
      word
        .toLowerCase()
        .replace(/e$/, "")
        .match(/[aeiouy]+/g)?.length ?? 0
    return Math.max(1, groups)
  })
  const sum = syllables.reduce((a, b) => a + b, 0)
  return 0.39 * (words.length / sentences.length) + 11.8 * (sum / words.length) - 15.59
}

describe("How hard the English text is to read", () => {
  it.each(named)("grade 8 or lower by Flesch-Kincaid: %s", (_, treatment) => {
    const { title, sections } = read(treatment, "en")
    const text = [
      `${title}.`,
      ...sections.flatMap(({ heading, paragraphs }) => [`${heading}.`, ...paragraphs]),
    ]
    const grade = gradeOf(text.join("\n"))
    expect(grade).toBeLessThanOrEqual(8)
    // A formula that broke would call anything easy.
    expect(grade).toBeGreaterThan(3)
  })
})
