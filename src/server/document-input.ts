import type { TreatmentChoice } from "../engine/course.js"
import type { DocumentTemplate, PracticeRules } from "../engine/practice-rules.js"
import type { Language } from "../engine/say.js"
import type { DocumentKind } from "../report/document.js"
import type { DocumentInput, ReadOn } from "../report/document-input.js"
import type { Context } from "./context.js"
import { letterheadOf } from "./letterhead.js"
import { noSuch } from "./refusal.js"

/** What is asked of a document beside whose it is. */
export interface DocumentAsked {
  readonly language: Language
  /** Which document, so that the practice's template of it is found. */
  readonly document?: DocumentKind | undefined
  /** Who signs, orders or sends. */
  readonly author?: string | undefined
  readonly treatment?: TreatmentChoice | undefined
  readonly orderIndex?: number | undefined
  readonly concernIndex?: number | undefined
  readonly months?: number | undefined
  readonly addressee?: readonly string[] | undefined
  readonly familyLink?: string | undefined
  readonly readOn?: ReadOn | undefined
}

/** All that a document of a child is made from: the record, the papers in force, the settings and the practice's day. */
export async function documentInputOf(
  context: Context,
  childId: string,
  { document, language, ...asked }: DocumentAsked,
): Promise<DocumentInput> {
  const { record, clock, settings } = context
  const [child, course, rules] = await Promise.all([
    record.child(childId),
    record.courseOf(childId),
    context.rules.now(),
  ])
  if (!child || !course) throw noSuch("child", childId)
  const { name, latitude } = record.practice
  return {
    course,
    childName: child.name,
    childNumber: child.number,
    practice: { name, latitude: latitude ?? undefined },
    settings,
    rules,
    today: clock.today(),
    language,
    letterhead: await letterheadOf(rules.letterhead, record),
    template: document && templateOf(rules, { document, language }),
    ...asked,
  }
}

/** The practice's own order and words of a document in a language, where it has set them. */
function templateOf(
  { templates = [] }: PracticeRules,
  { document, language }: { readonly document: DocumentKind; readonly language: Language },
): DocumentTemplate | undefined {
  return templates.findLast((template) => template.document === document && template.language === language)
}
