import type { Duty } from "../engine/assessment.js"

const URGENCY: readonly Duty["state"][] = ["overdue", "open", "upcoming"]

/** The duty to act on first: what is late, then what is open, then what comes; the earliest of each. */
export function nextDuty(duties: readonly Duty[]): Duty | null {
  for (const state of URGENCY) {
    const earliest = duties
      .filter((duty) => duty.state === state)
      .toSorted((a, b) => (a.due < b.due ? -1 : a.due > b.due ? 1 : 0))[0]
    if (earliest !== undefined) return earliest
  }
  return null
}
