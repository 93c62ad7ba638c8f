import { describe, expect, it } from "vitest"
import type { Course, SafetyConcern, Treatment } from "../../src/engine/course.js"
import { LANGUAGES, type Language } from "../../src/engine/say.js"
import type { DocumentInput } from "../../src/report/document-input.js"
import { documentOf } from "../../src/report/documents.js"
import { initials } from "../../src/report/record/initials.js"
import { learnEveryLanguage } from "../../src/words/index.js"
import { ENGLISH, textsOf } from "./texts-of.js"
import { course, FREE_TEXTS, input } from "./told-child.js"

learnEveryLanguage()

const made = (over: Partial<DocumentInput> = {}) => documentOf("adverse-event", input(over))
function said(over: Partial<DocumentInput> = {}): string {
  const document = made(over)
  if (document.kind === "refused") throw new Error(document.why)
  return textsOf(document).join("\n")
}
const drops = (from: string, to?: string, concentrationPercent = 0.05): Treatment => ({
  kind: "atropine",
  from,
  concentrationPercent,
  ...(to === undefined ? {} : { to }),
})
const effect = (opened: string): SafetyConcern => ({
  opened,
  kind: "redness",
  what: "red",
  adverseEvent: true,
})
const told = (
  treatments: readonly Treatment[],
  concerns: readonly SafetyConcern[],
): Partial<DocumentInput> => ({
  course: { ...course, treatments, concerns } as Course,
})

describe("A report of an unwanted effect", () => {
  it("says first that national forms and rules come first", () => {
    const document = made()
    expect(document.kind !== "refused" && document.blocks[0]).toMatchObject({
      kind: "caution",
      lines: [
        expect.stringMatching(/^National forms, deadlines and rules for reporting come first/),
        expect.anything(),
      ],
    })
  })

  it("has patient, product, reaction and reporter", () => {
    const text = said()
    for (const words of [
      "N-204",
      "9 years, 0 months",
      "girl",
      "Atropine 0.05 %, used from 15 June 2024, last on the day before 20 June 2025",
      "atropine eye drops, made to order by a pharmacy",
      "0.05 % w/v",
      FREE_TEXTS.lot,
      FREE_TEXTS.pharmacy,
      "14 May 2025",
      "The bottle was past its last day of use (10 June 2025)",
      FREE_TEXTS.note,
      FREE_TEXTS.what,
      "moderate",
      "probable",
      FREE_TEXTS.outcome,
      FREE_TEXTS.author,
    ]) {
      expect(text).toContain(words)
    }
  })

  it("never has the child's name", () => {
    expect(said()).not.toContain("Mira")
    expect(
      said({ childNumber: null, course: { ...course, child: { ...course.child, id: undefined } } }),
    ).not.toContain("Mira")
  })

  it("has initials where there is no number", () => {
    const nameless = { ...course, child: { ...course.child, id: undefined } }
    expect(said({ childNumber: null, course: nameless, childName: "Zoë Marín" })).toContain("Z. M.")
  })

  it("takes the latest effect, or the one asked for", () => {
    const concerns = [effect("2025-02-01"), effect("2025-07-01")]
    expect(said(told([drops("2024-06-15")], concerns))).toContain("Report of an unwanted effect, 1 July 2025")
    expect(said({ ...told([drops("2024-06-15")], concerns), concernIndex: 0 })).toContain("1 February 2025")
  })
})

describe("It is refused with its reason", () => {
  it("where no unwanted effect is recorded", () => {
    expect(made(told([], []))).toEqual({
      kind: "refused",
      why: "no unwanted effect of a treatment is recorded by 20 January 2026",
    })
  })

  it("where the one asked for is none, or is not there", () => {
    expect(made({ concernIndex: 1 })).toMatchObject({ why: expect.stringContaining("mark it as one first") })
    expect(made({ concernIndex: 7 })).toMatchObject({
      why: "there is no concern 7 in this record: it has 2 concerns, counted from 0",
    })
  })
})

describe("What followed, as the record shows it", () => {
  const CASES: readonly (readonly [string, readonly Treatment[], readonly SafetyConcern[], RegExp])[] = [
    [
      "it went on",
      [drops("2024-06-15")],
      [effect("2025-02-01")],
      /went on: the record shows no time without it/,
    ],
    [
      "the strength was changed",
      [drops("2024-06-15", "2025-02-03"), drops("2025-02-03", undefined, 0.01)],
      [effect("2025-02-01")],
      /changed to atropine 0\.01 % on 3 February 2025, 2 days after/,
    ],
    [
      "it was stopped and not given again",
      [drops("2024-06-15", "2025-02-02")],
      [effect("2025-02-01")],
      /stopped on 2 February 2025, 1 day after .*\(dechallenge\)[\s\S]*no rechallenge/,
    ],
    [
      "it was stopped the same day",
      [drops("2024-06-15", "2025-02-01")],
      [effect("2025-02-01")],
      /stopped on 1 February 2025, 0 days after/,
    ],
    [
      "it was given again without an effect",
      [drops("2024-06-15", "2025-02-02"), drops("2025-05-01")],
      [effect("2025-02-01")],
      /begun on 1 May 2025 \(rechallenge\); the record shows no effect of the same kind since/,
    ],
    [
      "it came back",
      [drops("2024-06-15", "2025-02-02"), drops("2025-05-01")],
      [effect("2025-02-01"), effect("2025-05-09")],
      /recorded again on 9 May 2025/,
    ],
    [
      "it had ended before",
      [drops("2024-06-15", "2025-01-02")],
      [effect("2025-02-01")],
      /Nothing was in use on the day of the effect[\s\S]*had ended on 2 January 2025, before the effect/,
    ],
    ["nothing had been given", [], [effect("2025-02-01")], /No treatment had been given by that day/],
  ]
  it.each(CASES)("%s", (_, treatments, concerns, words) => {
    expect(said({ ...told(treatments, concerns), concernIndex: 0 })).toMatch(words)
  })

  it("a treatment planned for later has not followed", () => {
    const text = said({ ...told([drops("2024-06-15", "2026-06-01")], [effect("2025-02-01")]) })
    expect(text).toContain("went on")
  })
})

describe("In another language", () => {
  it.each(LANGUAGES.filter((language) => language !== "en"))(
    "%s: has no English in it",
    (language: Language) => {
      const free = Object.values(FREE_TEXTS).flat()
      const text = free.reduce((rest, words) => rest.replaceAll(words, ""), said({ language }))
      for (const line of text.split("\n")) expect(line).not.toMatch(ENGLISH)
    },
  )
})

describe("Initials", () => {
  it.each([
    ["Mira de la Cruz", "M. d. l. C."],
    ["王小明", "王."],
    ["  Zoë  O’Connor ", "Z. O."],
    ["محمد علي", "م. ع."],
    ["", ""],
  ])("%s", (name, expected) => expect(initials(name)).toBe(expected))
})
