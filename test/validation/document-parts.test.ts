import { describe, expect, it } from "vitest"
import type { Course } from "../../src/engine/course.js"
import { noRules } from "../../src/engine/practice-rules.js"
import { inLanguage } from "../../src/engine/say.js"
import { defaultSettings } from "../../src/engine/settings.js"
import { demoCourses } from "../../src/engine/simulate/demo.js"
import { evidence } from "../../src/evidence/index.js"
import { DOCUMENT_KINDS, type DocumentKind } from "../../src/report/document.js"
import type { DocumentInput } from "../../src/report/document-input.js"
import { contentOf } from "../../src/report/documents.js"
import { PARTS_OF, REQUIRED_PARTS, VALUES_OF } from "../../src/report/template/document-parts.js"

const today = "2026-11-25"
const courses = demoCourses({ today, seed: 7, evidence }).map(({ course }): Course => course)

const inputOf = (course: Course): DocumentInput => ({
  course,
  childName: "Invented Child",
  practice: { name: "Practice", latitude: 51.5 },
  settings: defaultSettings,
  rules: noRules,
  today,
  language: "en",
  letterhead: { practice: "Practice", lines: [] },
})

/** Contents of a document for every invented child that has one, on paper and on a screen. */
const contents = (kind: DocumentKind) =>
  courses
    .flatMap((course) => (["paper", "screen"] as const).map((readOn) => ({ ...inputOf(course), readOn })))
    .map((input) => inLanguage("en", () => contentOf(kind, input)))
    .flatMap((content) => ("kind" in content ? [] : [content]))

describe("what a template may name is what the documents have", () => {
  it.each(DOCUMENT_KINDS)(
    "every part and value of %s is known, and its parts ship in the order told",
    (kind) => {
      for (const { parts, values } of contents(kind)) {
        const names = parts.map(({ name }) => name)
        expect(names).toEqual(PARTS_OF[kind].filter((name) => names.includes(name)))
        for (const name of Object.keys(values)) expect(VALUES_OF[kind], name).toContain(name)
        for (const name of VALUES_OF[kind]) expect(values, name).toHaveProperty(name)
      }
    },
  )
  it.each(DOCUMENT_KINDS)("what must stand in %s is one of its parts", (kind) => {
    for (const name of REQUIRED_PARTS[kind]) expect(PARTS_OF[kind]).toContain(name)
  })
})
