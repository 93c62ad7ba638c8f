import type { DocumentContent, DocumentRefused } from "../document.js"
import type { DocumentInput } from "../document-input.js"

export function costEstimate(_input: DocumentInput): DocumentContent | DocumentRefused {
  return { kind: "refused", why: "this document is not made yet" }
}
