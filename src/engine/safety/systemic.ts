import type { Visit } from "../course.js"
import { say } from "../say.js"
import type { RaisedConcern } from "./raised-concern.js"

/** The question about effects outside the eye: flushing, fever, fast pulse, dry mouth, constipation, sleep, behaviour. */
export const SYSTEMIC_QUESTION = "systemic-effects"

/** CD-076: any yes, stop and assess (UK-SMPC-1PCT, excerpt; US-LABEL-1PCT, secondary; both of the 1 % product). */
export function systemicConcerns(visit: Visit): readonly RaisedConcern[] {
  const told = visit.answers?.find(
    ({ question, answer }) => question === SYSTEMIC_QUESTION && answer === "yes",
  )
  if (!told) return []
  const why =
    told.note === undefined
      ? say(
          "Effects outside the eye told on {date}. The product texts of 1 % atropine name flushing, fever, fast pulse, dry mouth, constipation, trouble passing water, change of behaviour or sleep.",
          { date: visit.date },
        )
      : say(
          "Effects outside the eye ({note}) told on {date}. The product texts of 1 % atropine name flushing, fever, fast pulse, dry mouth, constipation, trouble passing water, change of behaviour or sleep.",
          { date: visit.date, note: told.note },
        )
  return [{ kind: "systemic-effects", recordKind: "systemic-effects", why, on: visit.date, duty: "CD-076" }]
}
