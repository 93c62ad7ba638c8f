import type { DutyState } from "../assessment.js"
import type { DecisionKind } from "../course.js"
import { msg, say } from "../say.js"
import { seenHere } from "./measured.js"
import { datedOccasions, type Occasion } from "./occasions.js"
import type { Decides } from "./protocol.js"
import type { Situation } from "./situation.js"
import { stillOwed } from "./still-owed.js"

/** A decision on this child's calendar. It is on record as a decision, an end of treatment or a new treatment entry. */
export interface Decision extends Occasion {
  readonly state: DutyState
  readonly needs: readonly string[]
}

const NEEDS: Readonly<Record<Decides, string>> = {
  stop: msg(
    "whether to stop or to go on, recorded as a decision, an end of the treatment or a new treatment entry",
  ),
  restart: msg("whether treatment is taken up again or not, recorded as a decision"),
  "step-down": msg(
    "whether to give fewer nights from here on, recorded as a decision or a new treatment entry with its nights",
  ),
}

/** What may be decided at such a moment; a referral changes nothing by itself. */
const SETTLED_BY: Readonly<Record<Decides, readonly DecisionKind[]>> = {
  stop: ["stop", "continue", "taper", "change-strength", "add", "switch", "start", "restart", "discharge"],
  restart: [
    "restart",
    "start",
    "add",
    "switch",
    "change-strength",
    "stop",
    "continue",
    "decline",
    "discharge",
  ],
  "step-down": ["taper", "continue", "change-strength", "add", "switch", "stop", "discharge"],
}

export function decisions(situation: Situation): readonly Decision[] {
  const judged = datedOccasions(situation, "decision").map((occasion) => {
    const decides = occasion.step.decides ?? "stop"
    const state = stateOf(occasion, decides, situation)
    return { ...occasion, state, needs: state === "done" ? [] : [say(NEEDS[decides])] }
  })
  return stillOwed(
    judged.map((one, index) => overtaken(one, judged.slice(index + 1), situation)),
    situation,
  )
}

/** A step down that was not taken is missed once the next one opens. */
function overtaken(one: Decision, after: readonly Decision[], { today }: Situation): Decision {
  const isOver =
    one.step.decides === "step-down" && one.state === "overdue" && after.some(({ opens }) => opens <= today)
  return isOver ? { ...one, state: "missed" } : one
}

function stateOf(
  { opens, closes, step }: Occasion,
  decides: Decides,
  { course, current, today }: Situation,
): DutyState {
  const isDecided = (course.decisions ?? []).some(
    ({ date, kind }) => date >= opens && SETTLED_BY[decides].includes(kind),
  )
  const entryMade = (course.treatments ?? []).some(
    ({ from, nightsPerWeek = 7 }) => from >= opens && nightsPerWeek <= (step.nightsPerWeek ?? 7),
  )
  const stopRecorded = decides !== "restart" && current?.stop != null
  if (isDecided || entryMade || stopRecorded) return "done"
  if (today < opens) return "upcoming"
  if (today <= closes) return "open"
  // A child seen again after the window goes on untreated, so the moment of the restart has passed. Nothing ends a
  // treatment by itself: whether to stop stays owed.
  const seenSince = course.visits.some((visit) => seenHere(visit) && visit.date > closes)
  return decides === "restart" && seenSince ? "missed" : "overdue"
}
