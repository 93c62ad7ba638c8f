import type { Treatment } from "../../engine/course.js"
import type { ChildView } from "../../server/contract/child.js"

/** Treatments without an end, each with the entry that records it. */
export function runningTreatments(
  view: Pick<ChildView, "course" | "entries">,
): readonly { readonly treatment: Treatment; readonly entryId: string }[] {
  const entries = view.entries.filter(
    ({ kind, supersededBy }) => kind === "treatment" && supersededBy === null,
  )
  const taken = new Set<string>()
  return (view.course.treatments ?? []).flatMap((treatment) => {
    // Two treatments may start on one day (drops and lenses): the entries of a day are handed out in their order.
    const entry = entries.find(({ id, date }) => date === treatment.from && !taken.has(id))
    if (!entry) return []
    taken.add(entry.id)
    const runs = treatment.kind !== "none" && (treatment.to === null || treatment.to === undefined)
    return runs ? [{ treatment, entryId: entry.id }] : []
  })
}
