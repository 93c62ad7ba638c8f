import type { CalendarDate } from "../../engine/course.js"
import type { ReadFile } from "../intake/fragment.js"

export interface FromFhir {
  /** Name of the file, for what is told of it. */
  readonly file: string
  /** What tells the file from all others. */
  readonly id: string
  readonly today?: CalendarDate | undefined
}

/**
 * What a Bundle or a single R4 resource says of children, as far as it is understood; the rest is in `skipped` with its
 * place and why.
 */
export function courseFromFhir(_value: unknown, { file }: FromFhir): ReadFile {
  return { file, fragments: [], skipped: [] }
}
