import type { PracticeSettings } from "../../../src/engine/assessment.js"
import type { CalendarDate, Course } from "../../../src/engine/course.js"
import { noRules, type PracticeRules } from "../../../src/engine/practice-rules.js"
import { inLanguage, type Language } from "../../../src/engine/say.js"
import { defaultSettings } from "../../../src/engine/settings.js"
import { type DemoChild, demoCourses } from "../../../src/engine/simulate/demo.js"
import { demoContacts, demoPharmacy } from "../../../src/engine/simulate/demo-practice.js"
import { evidence } from "../../../src/evidence/index.js"
import type { Block, DocumentContent } from "../../../src/report/document.js"
import type { DocumentInput } from "../../../src/report/document-input.js"
import { type FamilyReportOptions, familyReport } from "../../../src/report/documents/family-report.js"
import { learnEveryLanguage } from "../../../src/words/index.js"

learnEveryLanguage()

export const DEMO_DAY = "2026-11-25"
let demo: readonly DemoChild[] | null = null
/** The children of the invented practice. */
export const demoChildren = (): readonly DemoChild[] => {
  demo ??= demoCourses({ today: DEMO_DAY, seed: 7, evidence })
  return demo
}

export const demoRules: PracticeRules = {
  ...noRules,
  pharmacies: [demoPharmacy],
  contacts: { ...demoContacts, poisonCentre: "01 02 03 04 05" },
}

interface Told {
  readonly course: Course
  readonly name?: string | null
  readonly today?: CalendarDate
  readonly language?: Language
  readonly rules?: PracticeRules
  readonly settings?: PracticeSettings
  readonly familyLink?: string
}

export function inputOf(told: Told): DocumentInput {
  const { course, name = "Mira", today = DEMO_DAY, language = "en", rules = demoRules } = told
  return {
    course,
    childName: name,
    practice: { name: "The demo practice", latitude: 51 },
    settings: told.settings ?? defaultSettings,
    rules,
    today,
    language,
    letterhead: { practice: "The demo practice", lines: ["12 Long Lane, Sometown", "Telephone 000 000"] },
    ...(told.familyLink === undefined ? {} : { familyLink: told.familyLink }),
  }
}

export function reported(told: Told, options?: FamilyReportOptions): DocumentContent {
  const input = inputOf(told)
  return inLanguage(input.language, () => familyReport(input, options))
}

export const blocksOf = (content: DocumentContent, part?: string): readonly Block[] =>
  content.parts.filter(({ name }) => part === undefined || name === part).flatMap(({ blocks }) => blocks)

/**
 * What is read as sentences, piece by piece: without figures and pairs, and without headings, which as short sentences would
 * make a text look easier than it is.
 */
export const runningText = (content: DocumentContent): readonly string[] => [
  ...blocksOf(content).flatMap((block) => (block.kind === "heading" ? [] : proseOf(block))),
  content.foot,
]

export function proseOf(block: Block): readonly string[] {
  switch (block.kind) {
    case "heading":
    case "lead":
    case "text":
      return [block.text]
    case "list":
      return block.items
    case "answer":
      return [block.question, ...block.lines, block.grade]
    case "caution":
    case "notes":
    case "code":
      return block.lines
    default:
      return []
  }
}

/** All that is read of a part, in one line. */
export const wordsIn = (content: DocumentContent, part: string): string =>
  blocksOf(content, part)
    .flatMap((block) =>
      block.kind === "pairs" ? block.pairs.map(([label, value]) => `${label}: ${value}`) : proseOf(block),
    )
    .join(" ")

export const leadOf = (told: Told): string => wordsIn(reported(told), "lead")
