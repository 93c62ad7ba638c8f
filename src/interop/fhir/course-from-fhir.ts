import type { CalendarDate, Course } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { record } from "../course/loose.js"
import type { Identity, ReadFile } from "../intake/fragment.js"
import { papersIn } from "./r4/papers.js"
import { identityOf } from "./r4/patient.js"
import { type Collected, collected, type Held, type NotTaken } from "./reading/collected.js"
import type { ChildInFile, FhirFragment } from "./reading/piece.js"
import { resourceRead } from "./reading/resource-read.js"
import { soundCourse } from "./reading/sound-course.js"

export interface FromFhir {
  /** Name of the file, for what is told of it. */
  readonly file: string
  /** What tells the file from all others. */
  readonly id: string
  readonly today?: CalendarDate | undefined
}

export interface ReadFhir extends ReadFile {
  readonly fragments: readonly FhirFragment[]
  /** For each fragment the course file that it is of; undefined where birth or sex are not in the file. */
  readonly wholes: readonly (Course | undefined)[]
}

/** More than a person would read. */
const MOST_TOLD = 1000

/**
 * What a Bundle or a single R4 resource says of children, as far as it is understood; the rest is in `skipped` with its
 * place and why. A Bundle of `fhirBundle` gives the course back that it was made of.
 *
 * A figure goes to the Patient that its resource refers to and to no other, even where a file has only one.
 *
 * @example
 * courseFromFhir(fhirBundle(course), { file: "kim.json", id: "kim" }).fragments[0]?.course.visits
 */
export function courseFromFhir(value: unknown, { file, id, today }: FromFhir): ReadFhir {
  const all = collected(value)
  const notTaken: NotTaken[] = [...all.notTaken]
  const children = byChild(all, notTaken)
  const found = [...children.values()].flatMap((child) => {
    const { course, whole, ...sound } = soundCourse(child, { today })
    notTaken.push(...sound.notTaken)
    const { patient, documents } = child
    if (course === undefined) return []
    if (Object.keys(course).length + documents.length === 0 && patient === undefined) return []
    const identity = patient ? identityOf(patient.resource) : child.identity
    const notes = [...child.notes, ...sound.notes]
    const fragment: FhirFragment = { identity, course, documents, source: { kind: "fhir", id }, notes }
    return [{ fragment, whole }]
  })
  return {
    file,
    fragments: found.map(({ fragment }) => fragment),
    wholes: found.map(({ whole }) => whole),
    skipped: told(notTaken).map(({ where, why }) => ({ file, where, why })),
  }
}

function told(notTaken: readonly NotTaken[]): readonly NotTaken[] {
  if (notTaken.length <= MOST_TOLD) return notTaken
  const rest = notTaken.length - MOST_TOLD
  const why = say(
    "{rest, plural, one {# more resource was not taken.} other {# more resources were not taken.}}",
    { rest },
  )
  return [...notTaken.slice(0, MOST_TOLD), { where: "", why }]
}

function byChild(all: Collected, notTaken: NotTaken[]): ReadonlyMap<string, ChildInFile> {
  const children = new Map<string, ChildInFile>()
  const childOf = (key: string, patient: Held | undefined, identity: Identity = {}): ChildInFile => {
    const known = children.get(key)
    if (known) return known
    const fresh: ChildInFile = { patient, identity, pieces: [], notes: [], documents: [] }
    children.set(key, fresh)
    return fresh
  }
  for (const one of all.held) if (one.type === "Patient") childOf(one.path, one)
  for (const held of all.held) {
    const outcome = resourceRead(held, all.lookFrom(held))
    if (outcome !== "nothing" && "why" in outcome) {
      notTaken.push({ where: held.place, why: outcome.why })
      continue
    }
    const documents = papersIn(held.resource)
    if (outcome === "nothing" && documents.length === 0) continue
    const subject = subjectOf(held, all)
    if ("why" in subject) {
      notTaken.push({ where: held.place, why: subject.why })
      continue
    }
    const child = childOf(subject.key, subject.patient, subject.identity)
    child.documents.push(...documents)
    if (outcome === "nothing") continue
    child.pieces.push(...outcome.pieces)
    child.notes.push(...(outcome.notes ?? []))
  }
  return children
}

type Subject =
  | { readonly key: string; readonly patient: Held | undefined; readonly identity: Identity }
  | { readonly why: string }

function subjectOf(held: Held, all: Collected): Subject {
  const { resource } = held
  const reference =
    held.type === "Provenance" ? patientOfTarget(held, all) : (resource.subject ?? resource.patient)
  const found = all.follow(reference, held)
  if (found?.type === "Patient") return { key: found.path, patient: found, identity: {} }
  if (found !== undefined)
    return { why: say("It is about no Patient but a {type}.", { type: found.type.slice(0, 40) }) }
  const { reference: address, identifier, display } = record(reference)
  const number = record(identifier).value
  const identity: Identity = {
    ...(typeof number === "string" && number.trim() !== "" ? { number } : {}),
    ...(typeof display === "string" && display.trim() !== "" ? { name: display } : {}),
  }
  const key = typeof address === "string" && address !== "" ? address : identity.number
  if (key === undefined) return { why: say("It does not say whose it is.") }
  if (typeof address === "string" && /(^|\/)Group\//.test(address))
    return { why: say("It is about a group.") }
  return { key: `not in the file: ${key}`, patient: undefined, identity }
}

/** A Provenance names no child, only what it is the source of. */
function patientOfTarget(held: Held, all: Collected): unknown {
  const [target] = Array.isArray(held.resource.target) ? held.resource.target : []
  const about = all.follow(target, held)?.resource
  return about && (about.subject ?? about.patient)
}
