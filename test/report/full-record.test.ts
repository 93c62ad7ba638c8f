import * as fc from "fast-check"
import { describe, expect, it } from "vitest"
import { type Course, EYES, type EyeExamination } from "../../src/engine/course.js"
import { QUESTIONS } from "../../src/engine/protocol/questions.js"
import { inLanguage, LANGUAGES, type Language, shortDayInWords } from "../../src/engine/say.js"
import type { PaperDocument } from "../../src/report/document.js"
import type { DocumentInput } from "../../src/report/document-input.js"
import { documentOf } from "../../src/report/documents.js"
import { QUESTION_UNITS } from "../../src/report/record/question-names.js"
import { learnEveryLanguage } from "../../src/words/index.js"
import { courseArbitrary } from "../generative/course-arbitrary.js"
import { ENGLISH, textsOf } from "./texts-of.js"
import { course, FREE_TEXTS, input } from "./told-child.js"

learnEveryLanguage()

function record(over: Partial<DocumentInput> = {}): PaperDocument {
  const made = documentOf("record", input(over))
  if (made.kind === "refused") throw new Error(made.why)
  return made
}
const said = (over: Partial<DocumentInput> = {}) => textsOf(record(over)).join("\n")

/** Every day, number and free text under a value, as the document writes it. */
function heldBy(value: unknown): readonly string[] {
  if (typeof value === "number") return [String(Math.abs(value))]
  if (typeof value === "string") {
    if (/^\d{4}-\d{2}-\d{2}$/.test(value)) return [shortDayInWords(value)]
    return []
  }
  if (typeof value === "object" && value !== null) return Object.values(value).flatMap(heldBy)
  return []
}
const freeTextsOfEye = (eye: EyeExamination): readonly (string | undefined)[] => [
  eye.axialLength?.device,
  eye.refraction?.device,
  ...(eye.otherRefractions ?? []).map(({ device }) => device),
  eye.spectaclesWorn?.prism,
  eye.corneaRadius?.device,
]
const freeTextsOf = ({ visits, supplies = [] }: Course): readonly string[] =>
  [
    ...visits.flatMap((visit) => EYES.flatMap((eye) => freeTextsOfEye(visit[eye] ?? {}))),
    ...visits.flatMap(({ sources = [] }) => sources.flatMap(({ id, device }) => [id, device])),
    ...supplies.map(({ lot }) => lot),
  ].flatMap((text) => (text === undefined || text.trim() === "" ? [] : [text]))

/** The day of birth is written in full. */
const whole = (course: Course) => ({ ...course, child: { ...course.child, born: undefined } })

describe("A full record leaves nothing out", () => {
  it("of any course: every day and number stands in it, and every free text", () => {
    fc.assert(
      fc.property(courseArbitrary, (any) => {
        const { lengthwise: _, ...rest } = whole(any)
        const text = said({ course: any, practice: { name: "P" } })
        for (const figure of new Set(heldBy(rest))) expect(text).toContain(figure)
        for (const words of freeTextsOf(any)) expect(text).toContain(words)
      }),
      { numRuns: 40 },
    )
  })

  it("of one with an entry of every kind", () => {
    const text = said()
    for (const words of Object.values(FREE_TEXTS)
      .flat()
      .filter((words) => words !== FREE_TEXTS.author && words !== FREE_TEXTS.practice)) {
      expect(text).toContain(words)
    }
    for (const words of [
      "123.45 EUR",
      "ab".repeat(32),
      "signed on paper",
      "the child agreed",
      "1.5 hours a day",
      "cyclopentolate 1 %; tropicamide",
      "the glasses worn",
      "own lens",
      "DICOM object",
      "Hours outdoors",
      "change the strength",
      "Redness",
    ]) {
      expect(text).toContain(words)
    }
  })

  it("has its tables in order of date", () => {
    const shuffled: Course = { ...course, visits: course.visits.toReversed() }
    expect(textsOf(record({ course: shuffled }))).toEqual(textsOf(record()))
  })

  it("says what is not recorded", () => {
    const bare: Course = { lengthwise: 1, child: { born: "2016-06-15", sex: "male" }, visits: [] }
    expect(said({ course: bare })).toMatch(
      /Nothing is recorded under: Visits, .* and Concerns about safety\./,
    )
  })

  it("has the figure of the course with what it shows in words, and the version of the method", () => {
    const figure = record().blocks.find(({ kind }) => kind === "figure")
    expect(figure).toMatchObject({ alt: expect.stringMatching(/^Length, growth, refraction.* mm a year/) })
    expect(figure?.kind === "figure" && figure.svg).not.toContain("var(--")
    expect(said()).toMatch(/Method \d+\.\d+\.\d+, parameters/)
  })
})

describe("The questions", () => {
  it("have a unit in words wherever a value is asked for", () => {
    for (const { value } of QUESTIONS) if (value) expect(QUESTION_UNITS).toHaveProperty(value.unit)
  })

  it("that no version of the program knows stand by their id", () => {
    const visits = [
      { date: "2025-01-10", answers: [{ question: "moon-phase", answer: "yes", value: 3 }] },
    ] as const
    expect(said({ course: { ...course, visits } })).toMatch(/Moon phase\nyes\n3\n/)
  })
})

describe("In another language", () => {
  const others = LANGUAGES.filter((language) => language !== "en")
  it.each(others)("%s: has no English in it, the figure included", (language: Language) => {
    const answered: Course = {
      ...course,
      visits: [
        ...course.visits,
        {
          date: "2026-01-05",
          answers: QUESTIONS.map(({ id, value }) => ({
            question: id,
            answer: "no" as const,
            ...(value ? { value: value.low } : {}),
          })),
        },
      ],
    }
    const free = Object.values(FREE_TEXTS).flat()
    const text = free.reduce(
      (rest, words) => rest.replaceAll(words, ""),
      said({ language, course: answered }),
    )
    for (const line of text.split("\n")) expect(line).not.toMatch(ENGLISH)
  })

  it.each(others)("%s: has every day and length of the English one", (language: Language) => {
    const text = said({ language })
    inLanguage(language, () => {
      for (const { date, right } of course.visits) {
        expect(text).toContain(shortDayInWords(date))
        const mm = String(right?.axialLength?.mm)
        expect(text).toContain(language === "es" ? mm.replace(".", ",") : mm)
      }
    })
  })
})
