import type { SafetyConcern } from "../../engine/course.js"
import type { ChildView } from "../../server/contract/child.js"

/** The entry in force that holds this record of a concern; undefined when the page is older than the record. */
export function entryOfConcern(view: ChildView, concern: SafetyConcern): string | undefined {
  const wanted = JSON.stringify(concern)
  return view.entries.find(
    ({ kind, supersededBy, body }) =>
      kind === "concern" && supersededBy === null && JSON.stringify(body) === wanted,
  )?.id
}
