import { isLanguage, type Language } from "../engine/say.js"
import type { PracticeRecord } from "../record/index.js"

/** The language a family is written to in, null while nobody has asked it. */
export async function familyLanguageOf(
  record: Pick<PracticeRecord, "entriesOf">,
  child: string,
): Promise<Language | null> {
  const entries = await record.entriesOf(child)
  const superseded = new Set(entries.map(({ supersedes }) => supersedes))
  const family = entries.findLast(({ kind, id }) => kind === "family" && !superseded.has(id))
  const language = (family?.body as { readonly language?: unknown } | undefined)?.language
  return isLanguage(language) ? language : null
}
