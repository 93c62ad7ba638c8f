import type { DutyState } from "../assessment.js"
import { seenHere } from "./measured.js"
import { datedOccasions, type Occasion } from "./occasions.js"
import type { Decides } from "./protocol.js"
import type { Situation } from "./situation.js"

/** A decision on this child's calendar. The course file records one as an end of treatment or a new treatment entry. */
export interface Decision extends Occasion {
  readonly state: DutyState
  readonly needs: readonly string[]
}

const NEEDS: Readonly<Record<Decides, string>> = {
  stop: "whether to stop or to go on, recorded as an end of the treatment or as a new treatment entry",
  restart:
    "whether treatment is taken up again, recorded as a new treatment entry (kind none when it is not)",
}

export function decisions(situation: Situation): readonly Decision[] {
  return datedOccasions(situation)
    .filter(({ step }) => step.kind === "decision")
    .map((occasion) => {
      const decides = occasion.step.decides ?? "stop"
      const state = stateOf(occasion, decides, situation)
      return { ...occasion, state, needs: state === "done" ? [] : [NEEDS[decides]] }
    })
}

function stateOf(
  { opens, closes }: Occasion,
  decides: Decides,
  { course, current, today }: Situation,
): DutyState {
  const entryMade = (course.treatments ?? []).some(({ from }) => from >= opens)
  const stopRecorded = decides === "stop" && current?.stop != null
  if (entryMade || stopRecorded) return "done"
  if (today < opens) return "upcoming"
  if (today <= closes) return "open"
  // A child seen again after the window goes on untreated, so the moment of the restart has passed. Nothing ends a
  // treatment by itself: whether to stop stays owed.
  const seenSince = course.visits.some((visit) => seenHere(visit) && visit.date > closes)
  return decides === "restart" && seenSince ? "missed" : "overdue"
}
