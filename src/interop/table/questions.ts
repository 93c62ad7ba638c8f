import type { TableMapping } from "../../engine/practice-rules.js"
import type { Question, QuestionKind, Sniffed } from "./table-types.js"

/**
 * What a person must answer before the table may be read. What was answered (by a person, or by a mapping that was
 * saved) is named in `settled` and not asked again unless the values contradict it.
 */
export function questions(
  _sniffed: Sniffed,
  _mapping: TableMapping,
  _answers: { readonly settled?: readonly QuestionKind[] } = {},
): readonly Question[] {
  return []
}
