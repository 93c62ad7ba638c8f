/**
 * An id for something about to be recorded, so that the same request sent twice is recorded once.
 * Absent where the browser has no generator (a page served without encryption from another machine).
 */
export function newEntryId(): { readonly id: string } | undefined {
  return typeof crypto.randomUUID === "function" ? { id: crypto.randomUUID() } : undefined
}
