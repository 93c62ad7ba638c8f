import type { Writable } from "node:stream"
import type { CalendarDate, Course } from "../../engine/course.js"
import { METHOD_VERSION } from "../../engine/method.js"
import { noRules } from "../../engine/practice-rules.js"
import { inLanguage, type Language, say } from "../../engine/say.js"
import { defaultSettings } from "../../engine/settings.js"
import { COURSE_TABLES, courseTable } from "../../interop/archive/course-tables.js"
import { type Manifest, README } from "../../interop/archive/format.js"
import { readmeText } from "../../interop/archive/readme.js"
import { archiveWriter } from "../../interop/archive/zip-writer.js"
import type { PaperSize } from "../../report/document.js"
import { documentOf } from "../../report/documents.js"
import { pdfOf } from "../../report/pdf/pdf.js"
import { courseText } from "./course-text.js"

/** The one part that a course archive is read back from. */
export const COURSE_PART = "course.json"

/** Writes the course of one child as an archive: the course file, its tables, FHIR where it can be had, the paper. */
export async function writeCourseArchive({
  course,
  fhir,
  papers,
  today,
  madeAtMs,
  destination,
}: {
  readonly course: Course
  readonly fhir: string | null
  readonly papers: { readonly language: Language; readonly paper: PaperSize } | null
  readonly today: CalendarDate
  readonly madeAtMs: number
  readonly destination: Writable
}): Promise<Manifest> {
  const madeAt = new Date(madeAtMs)
  const writer = archiveWriter(destination, { madeAt })
  await writer.add(README, readmeText({ of: "course", practice: null }))
  await writer.add(COURSE_PART, courseText(course))
  for (const table of COURSE_TABLES) await writer.add(`tables/${table.name}.csv`, courseTable(table, course))
  if (fhir !== null) await writer.add("fhir.json", fhir)
  const papersNotMade: Manifest["papersNotMade"] = []
  if (papers) {
    const pdf = recordPaper(course, { ...papers, today })
    if (pdf.kind === "refused") papersNotMade.push({ child: course.child.id ?? "child", why: pdf.why })
    else await writer.add("record.pdf", pdf.bytes)
  }
  return writer.finish({
    of: "course",
    madeAt: madeAt.toISOString(),
    madeBy: `Lengthwise, method ${METHOD_VERSION}`,
    practice: null,
    head: null,
    counts: { visits: course.visits.length, treatments: course.treatments?.length ?? 0 },
    papers,
    papersNotMade,
    damage: [],
  })
}

function recordPaper(
  course: Course,
  {
    language,
    paper,
    today,
  }: { readonly language: Language; readonly paper: PaperSize; readonly today: CalendarDate },
) {
  const practice = inLanguage(language, () => say("Eye-care practice"))
  const document = documentOf("record", {
    ...{ course, today, language, rules: noRules, settings: defaultSettings },
    childName: null,
    childNumber: course.child.id,
    practice: { name: practice, latitude: course.practice?.latitude },
    letterhead: { practice, lines: [] },
  })
  return document.kind === "refused" ? document : pdfOf([document], paper)
}
