import type { TreatmentChoice } from "../engine/course.js"
import type { PracticeRules } from "../engine/practice-rules.js"
import type { Language } from "../engine/say.js"
import type { DocumentKind, Letterhead } from "../report/document.js"
import type { DocumentInput } from "../report/document-input.js"
import type { Template } from "../report/template/template.js"
import type { Context } from "./context.js"
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
    letterhead: letterheadOf(rules, name),
    template: document && templateOf(rules, { document, language }),
    ...asked,
  }
}

/** The practice's letterhead; its name alone until it sets one. */
function letterheadOf(rules: PracticeRules & { readonly letterhead?: Letterhead }, name: string): Letterhead {
  return rules.letterhead ?? { practice: name, lines: [] }
}

/** The practice's own order and words of a document in a language, where it has set them. */
function templateOf(
  rules: PracticeRules & { readonly templates?: readonly Template[] },
  { document, language }: { readonly document: DocumentKind; readonly language: Language },
): Template | undefined {
  return rules.templates?.find((template) => template.document === document && template.language === language)
}
