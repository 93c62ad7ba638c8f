import type { Visit } from "../../engine/course.js"

/** The stored visit that a form corrects, and the entry that holds it. */
export interface Correcting {
  readonly entryId: string
  readonly visit: Visit
}
