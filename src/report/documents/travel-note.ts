import type { DocumentContent, DocumentRefused } from "../document.js"
import type { DocumentInput } from "../document-input.js"

export function travelNote(_input: DocumentInput): DocumentContent | DocumentRefused {
  return { kind: "refused", why: "this document is not made yet" }
}
