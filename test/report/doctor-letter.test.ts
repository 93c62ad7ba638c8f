import { describe, expect, it } from "vitest"
import type { Course } from "../../src/engine/course.js"
import { LANGUAGES, type Language } from "../../src/engine/say.js"
import type { PaperDocument } from "../../src/report/document.js"
import type { DocumentInput } from "../../src/report/document-input.js"
import { documentOf } from "../../src/report/documents.js"
import { pdfOf } from "../../src/report/pdf/pdf.js"
import { learnEveryLanguage } from "../../src/words/index.js"
import { steadyCourse } from "../steady-child.js"
import { hasTool, textOf } from "./outside-tools.js"
import { ENGLISH, figuresOf, textsOf } from "./texts-of.js"
import { course, FREE_TEXTS, input } from "./told-child.js"

learnEveryLanguage()

function letter(over: Partial<DocumentInput> = {}): PaperDocument {
  const made = documentOf("letter", input(over))
  if (made.kind === "refused") throw new Error(made.why)
  return made
}
const leadOf = (over: Partial<DocumentInput>) => {
  const lead = letter(over).blocks.find(({ kind }) => kind === "lead")
  return lead?.kind === "lead" ? lead.text : ""
}
const said = (over: Partial<DocumentInput> = {}) => textsOf(letter(over)).join("\n")
const FREE: readonly string[] = Object.values(FREE_TEXTS).flat()
const withoutFree = (text: string) => FREE.reduce((rest, free) => rest.replaceAll(free, ""), text)

describe("The answer of a letter", () => {
  it("is one sentence on the growth with its figure and 95 % interval, and nothing of the treatment", () => {
    expect(leadOf({})).toMatch(
      /^From \S+ \S+ \d{4} to .* grew \d\.\d\d mm a year \(95 % interval \d\.\d\d to \d\.\d\d\): .*\.$/,
    )
    expect(leadOf({})).not.toMatch(/atropine|treatment/)
  })

  it("names a clear state with its certainty", () => {
    const slow = steadyCourse({ months: [-12, -6, 0, 6, 12, 18], shareAfter: 0.2 })
    expect(leadOf({ course: slow })).toMatch(/: (near-normal|slowed) growth, (over )?\d+ % certain\.$/)
  })

  it("is none for eyes measured once", () => {
    const once = steadyCourse({ months: [0], shareAfter: 1 })
    expect(leadOf({ course: once })).toBe("Growth cannot be told yet: no eye has been measured twice.")
  })

  it("is none outside the ages of the evidence", () => {
    const young: Course = { ...course, child: { ...course.child, born: "2023-06-15" } }
    expect(leadOf({ course: young })).toMatch(
      /^Nothing is said of the growth: the evidence covers children of/,
    )
    expect(said({ course: young })).toContain("not asked outside the ages of the evidence")
  })

  it("waits while a figure is in doubt", () => {
    const steady = steadyCourse({ months: [-12, -6, 0, 6, 12, 18], shareAfter: 0.5 })
    const visits = steady.visits.map((visit, index) =>
      index === steady.visits.length - 1
        ? { ...visit, right: { axialLength: { mm: 27.4, method: "optical-biometry" as const, device: "A" } } }
        : visit,
    )
    expect(leadOf({ course: { ...steady, visits } })).toMatch(
      /^A figure is in doubt and has to be measured again/,
    )
    expect(said({ course: { ...steady, visits } })).not.toMatch(/can be told (not )?to slow/)
  })

  it("says apart from it what can be told of the treatment, with the odds", () => {
    expect(said()).toMatch(/Whether the growth is slowed by atropine .* cannot be told yet .* \d.* : 1/)
  })

  it("sets a child without myopia against eyes without myopia alone", () => {
    const emmetrope = steadyCourse({ months: [0, 6, 12], shareAfter: 0.3, treatments: [], sphereD: 0.75 })
    expect(leadOf({ course: emmetrope })).toMatch(/the child is not myopic, and eyes without myopia grow/)
    expect(said({ course: emmetrope })).toContain("There is no course of treatment to judge.")
  })
})

describe("A letter", () => {
  it("has the last visits, what is in use, how it is borne, what comes and what is asked", () => {
    const text = said()
    for (const words of [
      "Dr Émile Øst",
      "born 15 Jun 2016, our number N-204",
      "24.39",
      "−3.00",
      "Atropine 0.025 % since 20 Jun 2025.",
      "wide pupil since 1 Aug 2025",
      "light sensitivity grade 2 of 3",
      "Treatment is planned to stop on",
      "Nothing but care on the same day",
      "555 0199",
      "A change of",
      "poison centre 555 0100",
      "Not a medical device.",
      FREE_TEXTS.author,
    ]) {
      expect(text).toContain(words)
    }
  })

  it("has an open warning sign before everything else", () => {
    const [last] = course.visits.toReversed()
    const told: Course = {
      ...course,
      visits: [
        ...course.visits.slice(0, -1),
        { ...last, date: "2026-01-10", answers: [{ question: "flashes", answer: "yes" }] },
      ],
    }
    const blocks = letter({ course: told }).blocks.map(({ kind }) => kind)
    expect(blocks.indexOf("caution")).toBeGreaterThan(-1)
    expect(blocks.indexOf("caution")).toBeLessThan(blocks.indexOf("lead"))
    expect(said({ course: told })).toMatch(/Flashes: told on 10 January 2026\..* Same-day care/)
  })

  it("names a child without a name as this child, and no number where there is none", () => {
    const text = said({ childName: null, childNumber: null, addressee: undefined })
    expect(text).toContain("Letter on the growth of this child's eyes")
    expect(text).toContain("20 January 2026. Re: child born 15 Jun 2016.")
  })

  it("says of no treatment that none is in use, and of one that ended when", () => {
    expect(said({ course: { ...course, treatments: [] } })).toContain("No treatment is in use.")
    const ended: Course = {
      ...course,
      treatments: [{ from: "2024-06-15", to: "2025-12-15", kind: "atropine", concentrationPercent: 0.05 }],
    }
    expect(said({ course: ended })).toContain("No treatment is in use; atropine 0.05 % ended on 15 Dec 2025.")
  })
})

describe.each(LANGUAGES.filter((language) => language !== "en"))("A letter in %s", (language: Language) => {
  it("has the figures of the English one", () => {
    const figures = (spoken: Language) =>
      figuresOf(
        said({ language: spoken }).replace(/\d* ?(de )?[a-z]{3,10}\.? (de )?\d{4}|\d+年\d+月\d+日/gi, ""),
      )
        .filter((figure) => figure.includes("."))
        .toSorted()
    expect(figures(language)).toEqual(figures("en"))
  })

  it("has no English in it", () => {
    for (const text of textsOf(letter({ language })).map(withoutFree)) expect(text).not.toMatch(ENGLISH)
  })
})

describe("A letter as a PDF", () => {
  const set = (over: Partial<DocumentInput>, paper: "a4" | "letter") => pdfOf([letter(over)], paper)

  it.each(LANGUAGES)("%s: is one page on A4 and on Letter", (language) => {
    expect(set({ language }, "a4")).toMatchObject({ pages: 1 })
    expect(set({ language }, "letter")).toMatchObject({ pages: 1 })
  })

  it.each([
    ["mixed scripts", "Zoë O’Connor-Ivanova Иванова 王小明"],
    ["right to left", "מרים אל־חורי محمد"],
    ["200 letters", "Ab".repeat(100)],
    ["200 letters in words", "Maria de la ".repeat(17).slice(0, 200)],
  ])("takes a name in %s", (_, childName) => {
    expect(set({ childName }, "letter").kind).toBe("made")
  })

  it("is refused by the name of a letter that no font holds", () => {
    const made = set({ childName: "Mira ꦗ" }, "a4")
    expect(made).toMatchObject({ kind: "refused", why: expect.stringContaining("ꦗ") })
  })

  it.skipIf(!hasTool("pdftotext"))(
    "keeps the day of birth whole behind a name from right to left (needs poppler-utils)",
    () => {
      const pdf = set({ language: "zh-Hans", childName: "محمد" }, "a4")
      if (pdf.kind === "refused") throw new Error(pdf.why)
      expect(textOf(pdf.bytes).replaceAll(" ", "")).toContain("2016年6月15日出生")
    },
  )

  it.skipIf(!hasTool("pdftotext"))(
    "is read by poppler in the order of the page (needs poppler-utils)",
    () => {
      const pdf = set({}, "a4")
      if (pdf.kind === "refused") throw new Error(pdf.why)
      const text = textOf(pdf.bytes)
      let place = -1
      for (const words of [
        "Letter on the growth",
        "Dr Émile Øst",
        "Re: ",
        "mm a year",
        "cannot be told yet",
        "Length right, mm",
        "15 Dec 2025",
        "Treatment now",
        "How it is borne",
        "What is planned",
        "What we ask of you",
        "Axial length",
        "For the practice",
      ]) {
        const next = text.indexOf(words, place + 1)
        expect(next, `“${words}” after place ${place} of ${text}`).toBeGreaterThan(place)
        place = next
      }
    },
  )
})
