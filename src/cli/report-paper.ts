import type { CalendarDate, TreatmentChoice, TreatmentKind } from "../engine/course.js"
import type { PracticeRules } from "../engine/practice-rules.js"
import type { Problem } from "../engine/problem.js"
import type { Language } from "../engine/say.js"
import { defaultSettings } from "../engine/settings.js"
import type {
  DocumentKind,
  DocumentRefused,
  Letterhead,
  PaperDocument,
  PaperSize,
} from "../report/document.js"
import { documentOf } from "../report/documents.js"
import type { CourseInput } from "./course-input.js"
import type { Io } from "./io.js"

export interface ReportArguments {
  readonly file: string
  readonly document: DocumentKind
  readonly language: Language
  readonly paper: PaperSize
  readonly out: string
  readonly name?: string | undefined
  readonly practice?: string | undefined
  readonly letterhead?: string | undefined
  readonly logo?: string | undefined
  readonly fees?: string | undefined
  readonly treatment?: TreatmentKind | undefined
  readonly concentration?: number | undefined
  readonly months?: number | undefined
  readonly asOf?: CalendarDate | undefined
  readonly link?: string | undefined
  readonly json?: boolean | undefined
}

/** What a document is made with beside the course. */
export interface ReportSetting {
  readonly args: ReportArguments
  readonly letterhead: Letterhead
  readonly rules: PracticeRules
}

export const pagesInWords = (pages: number): string => (pages === 1 ? "1 page" : `${pages} pages`)

/** The document of one course; a refusal is said again in English, as all of the command line is. */
export function paperOf(
  { course, asOf: today }: Pick<CourseInput, "course" | "asOf">,
  { args, letterhead, rules }: ReportSetting,
): PaperDocument | DocumentRefused {
  const { document, language, name, months, link } = args
  const practice = { name: letterhead.practice, latitude: course.practice?.latitude }
  const input = {
    ...{ course, today, language, letterhead, rules, practice, months },
    childName: name ?? null,
    childNumber: course.child.id,
    settings: defaultSettings,
    treatment: treatmentOf(args),
    familyLink: link,
  }
  const made = documentOf(document, input)
  if (made.kind !== "refused" || language === "en") return made
  const again = documentOf(document, { ...input, language: "en" })
  return again.kind === "refused" ? again : made
}

const treatmentOf = ({ treatment: kind, concentration }: ReportArguments): TreatmentChoice | undefined =>
  kind && { kind, ...(concentration === undefined ? {} : { concentrationPercent: concentration }) }

export const refusal = ({ document, file }: ReportArguments, { why }: { readonly why: string }): Problem => ({
  path: "--document",
  value: document,
  allowed: "a document that can be made of this course",
  message: `No ${document} document can be made of ${file}: ${why}${/[.?!]$/.test(why) ? "" : "."}`,
})

export async function written(
  bytes: Uint8Array,
  { out, io }: { readonly out: string; readonly io: Io },
): Promise<Problem | null> {
  if (out !== "-") return io.write(out, bytes)
  io.out(bytes)
  return null
}
