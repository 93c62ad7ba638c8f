import { EYES, type Eye } from "../../../engine/course.js"
import { say } from "../../../engine/say.js"
import { type Loose, record, records } from "../../course/loose.js"
import { AXIAL_LENGTH, isEyeSite } from "../r4/codes.js"
import { dayIn, effectiveDay } from "../r4/days.js"
import { eyeReader } from "../r4/eye.js"
import { lensesRead } from "../r4/glasses.js"
import { isListName, LISTS } from "../r4/lists.js"
import type { Look } from "../r4/look.js"
import { codings, hasCode } from "../r4/observation.js"
import { DERIVED } from "../r4/plan.js"
import { MISSED_NIGHTS } from "../r4/programme.js"
import { type ItemCodec, itemRead, markOf } from "../r4/scope.js"
import { ANSWERED, answersRead, isVisitOfOurs, SYMPTOMS, sourceRead, symptomsRead } from "../r4/visit.js"
import { withoutLoss } from "../remainder.js"
import type { Held } from "./collected.js"
import { foreignItem } from "./foreign-item.js"
import { type Outcome, type Piece, shown } from "./piece.js"

/** What a resource says of a course, as far as it is understood. */
export function resourceRead(held: Held, look: Look): Outcome {
  const { resource, type, place } = held
  const modified = modifiedWhy(resource)
  if (modified !== undefined) return { why: modified }
  if (SUPPORTING.has(type) || isDerived(resource)) return "nothing"
  const mark = markOf(resource)
  if (mark !== undefined && isListName(mark.list)) {
    const value = itemRead(resource, LISTS[mark.list] as ItemCodec<never>, look)
    return { pieces: [{ origin: place, kind: "item", list: mark.list, place: mark.place, value }] }
  }
  if (type === "Observation") return observationRead(held, look)
  if (type === "VisionPrescription") return glassesRead(held)
  if (isVisitOfOurs(resource) && (type === "Encounter" || type === "Basic")) return visitRead(held)
  if (type === "Provenance" && mark?.list === "sources") return provenanceRead(held, mark.place)
  return foreignItem(held, look)
}

/** Told of by the resources that refer to them. */
const SUPPORTING: ReadonlySet<string> = new Set([
  "Patient",
  "Device",
  "Medication",
  "Organization",
  "Practitioner",
  "PractitionerRole",
  "RelatedPerson",
  "Location",
])

const isDerived = ({ meta }: Loose): boolean =>
  records(record(meta).tag).some(({ system, code }) => system === DERIVED.system && code === DERIVED.code)

/** A resource may say that its meaning is changed by something; what is not known may not be passed over. */
function modifiedWhy(resource: Loose): string | undefined {
  if (resource.implicitRules !== undefined)
    return say("It was written by rules of another program, which could change what it means.")
  const parts = [resource, ...records(resource.component), ...records(resource.lensSpecification)]
  return parts.some(({ modifierExtension }) => records(modifierExtension).length > 0)
    ? say("It carries a modifier of another program, which could change what it means.")
    : undefined
}

const FINAL: readonly unknown[] = ["final", "amended", "corrected"]

function observationRead({ resource, place }: Held, look: Look): Outcome {
  if (!FINAL.includes(resource.status)) {
    return { why: say("Its status is {status}, so it is not final.", { status: shown(resource.status) }) }
  }
  if (hasCode(resource.code, MISSED_NIGHTS)) return { why: say("It does not say which list it belongs to.") }
  const reader = eyeReader(resource)
  const isSymptoms = hasCode(resource.code, SYMPTOMS)
  const isAnswers = hasCode(resource.code, ANSWERED)
  if (reader === undefined && !isSymptoms && !isAnswers) {
    return { why: say("Its code is not one that is understood: {codes}.", { codes: codesOf(resource.code) }) }
  }
  const date = effectiveDay(resource)
  if (date === undefined) return { why: say("It names no day.") }
  if (reader === undefined) {
    const field = isSymptoms ? "symptoms" : "answers"
    const value = isSymptoms ? symptomsRead(resource) : answersRead(resource)
    return { pieces: [{ origin: place, kind: "asked", date, field, value }] }
  }
  const eye = eyeOf(resource)
  if (typeof eye === "object") return eye
  const value = withoutLoss(resource, reader.read(resource, look))
  if (value === undefined || (typeof value === "object" && Object.keys(record(value)).length === 0)) {
    return { why: say("It has no figure in a unit that is understood.") }
  }
  const piece = { origin: place, kind: "eye", date, eye, field: reader.field, value } as const
  return { pieces: [{ ...piece, place: markOf(resource)?.place }] }
}

/** By code, never by words alone; a code and a site that disagree are not reconciled. */
function eyeOf({ code, bodySite }: Loose): Eye | { readonly why: string } {
  const sides = EYES.filter(
    (eye) => hasCode(code, AXIAL_LENGTH[eye]) || codings(bodySite).some((coding) => isEyeSite(eye, coding)),
  )
  const [eye, other] = sides
  if (other !== undefined) return { why: say("It names both eyes, so it is not clear whose figure it is.") }
  return eye ?? { why: say("It does not say by a code which eye it is of.") }
}

function glassesRead({ resource, place }: Held): Outcome {
  if (resource.status !== "active" && resource.status !== undefined) {
    return { why: say("Its status is {status}.", { status: shown(resource.status) }) }
  }
  const date = dayIn(resource.dateWritten) ?? dayIn(resource.created)
  if (date === undefined) return { why: say("It names no day.") }
  const lenses = lensesRead(resource)
  if (lenses.length === 0) return { why: say("No lens in it has an eye and a sphere.") }
  const pieces = lenses.map(({ eye, field, value, isOurs }): Piece => {
    return { origin: place, kind: "eye", date, eye, field, value, isOldGlasses: !isOurs }
  })
  if (lenses.every(({ isOurs }) => isOurs)) return { pieces }
  const why = say("glasses that were prescribed; read as old glasses, not as a refraction of that day")
  return { pieces, notes: [{ kind: "old-glasses", path: place, why }] }
}

function visitRead({ resource, place }: Held): Outcome {
  const date = dayIn(record(resource.period).start) ?? dayIn(resource.created)
  if (date === undefined) return { why: say("It names no day.") }
  return { pieces: [{ origin: place, kind: "base", date, resource }] }
}

function provenanceRead({ resource, place: origin }: Held, place: number): Outcome {
  const date = dayIn(resource.occurredDateTime)
  if (date === undefined) return { why: say("It names no day.") }
  const value = withoutLoss(resource, sourceRead(resource))
  return { pieces: [{ origin, kind: "source", date, place, value: value as never }] }
}

const codesOf = (concept: unknown): string => {
  const named = codings(concept).map(({ system, code }) => `${shown(system ?? "")}|${shown(code)}`)
  const { text } = record(concept)
  if (named.length > 0) return named.slice(0, 4).join(", ")
  return typeof text === "string" ? JSON.stringify(text.slice(0, 60)) : say("none|a code")
}
