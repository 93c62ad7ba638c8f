import { say } from "../../../engine/say.js"
import { type Loose, record } from "../../course/loose.js"
import { supply } from "../r4/bottles.js"
import { dayIn } from "../r4/days.js"
import type { Look } from "../r4/look.js"
import { papersIn } from "../r4/papers.js"
import { concern } from "../r4/programme.js"
import { treatment } from "../r4/treatment.js"
import type { Held } from "./collected.js"
import { type Outcome, shown } from "./piece.js"

/** Items of another program's record that the course file has a place for. */
export function foreignItem(held: Held, look: Look): Outcome {
  switch (held.type) {
    case "MedicationRequest":
      return request(held, look)
    case "MedicationDispense":
      return dispense(held, look)
    case "AdverseEvent":
      return adverseEvent(held, look)
    case "DiagnosticReport":
    case "DocumentReference":
      return papersIn(held.resource).length > 0
        ? "nothing"
        : {
            why: say("It holds no paper as PDF with a day, and words of another program are not taken over."),
          }
    case "Consent":
      return { why: say("It does not say by a code of ours which treatment it covers.") }
    default:
      return {
        why: say("A course file has no place for {type} of another program.", {
          type: held.type.slice(0, 40),
        }),
      }
  }
}

const wrongStatus = ({ status }: Loose): Outcome => ({
  why: say("Its status is {status}.", { status: shown(status) }),
})

function request({ resource, place }: Held, look: Look): Outcome {
  if (resource.status !== "active" && resource.status !== "completed") return wrongStatus(resource)
  if (resource.intent === "proposal" || resource.intent === "plan")
    return { why: say("It is a plan, not a prescription.") }
  if (resource.doNotPerform === true) return { why: say("It says what is not to be given.") }
  const read = record(treatment.read(resource, look))
  if (read.kind !== "atropine") return { why: say("It is not coded as atropine.") }
  if (read.concentrationPercent === undefined)
    return { why: say("It does not state the strength as milligrams in millilitres.") }
  const from = read.from ?? dayIn(resource.authoredOn)
  if (from === undefined) return { why: say("It names no day.") }
  const why = say("read from a prescription: that the drops were taken from that day on is not known")
  return {
    pieces: [{ origin: place, kind: "item", list: "treatments", place: undefined, value: { ...read, from } }],
    notes: [{ kind: "treatment-from-prescription", path: place, why }],
  }
}

function dispense({ resource, place }: Held, look: Look): Outcome {
  if (resource.status !== "completed") return wrongStatus(resource)
  const read = record(supply.read(resource, look))
  if (read.concentrationPercent === undefined)
    return { why: say("It does not state the strength as milligrams in millilitres.") }
  if (read.dispensed === undefined) return { why: say("It names no day.") }
  return { pieces: [{ origin: place, kind: "item", list: "supplies", place: undefined, value: read }] }
}

function adverseEvent({ resource, place }: Held, look: Look): Outcome {
  if (resource.actuality !== "actual") return { why: say("It did not happen: it is kept as possible only.") }
  const read = record(concern.read(resource, look))
  if (read.opened === undefined) return { why: say("It names no day.") }
  if (read.kind === undefined) return { why: say("It does not say in words what happened.") }
  const why = say("taken as an open concern: another program's outcome does not close it here")
  return {
    pieces: [{ origin: place, kind: "item", list: "concerns", place: undefined, value: read }],
    notes: [{ kind: "concern-open", path: place, why }],
  }
}
