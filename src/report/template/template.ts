import type { Language } from "../../engine/say.js"
import type { DocumentKind } from "../document.js"

/** A practice's own order and words of a document, as text that a person edits. */
export interface Template {
  readonly document: DocumentKind
  readonly language: Language
  readonly text: string
}
