import type { VisitSource } from "../../engine/course.js"
import type { Fragment } from "../intake/fragment.js"
import type { RowReading } from "./table-types.js"

/** Rows by child; what several rows say of one day becomes one visit, and what they contradict becomes a note. */
export function fragmentsOf(
  _readings: Iterable<RowReading>,
  _about: { readonly source: VisitSource },
): readonly Fragment[] {
  return []
}
