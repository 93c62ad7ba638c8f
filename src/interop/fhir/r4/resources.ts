import type { FhirResource, Organization, Practitioner } from "fhir/r4.js"
import type { Course } from "../../../engine/course.js"
import type { FhirContext } from "../context.js"
import { idsOf, patientId, sharedId } from "../logical-id.js"
import { plain } from "../plain-text.js"
import { referenceTo, SNOMED } from "./codes.js"
import { LIST_NAMES, LISTS } from "./lists.js"
import { paperResources } from "./papers.js"
import { type Head, patientOf } from "./patient.js"
import { planResources } from "./plan.js"
import { type ItemCodec, listResources, type Scope } from "./scope.js"
import { visitResources } from "./visit.js"

/** Everything of a course, in R4, the Patient first. */
export function r4Resources(given: Course, about: FhirContext): readonly FhirResource[] {
  const course = withoutNulls(given) as Course
  const id = patientId(course, about)
  const practice = about.practice && organization(about.practice)
  const scope: Scope = {
    patient: referenceTo("Patient", id),
    organization: practice && referenceTo("Organization", practice.id ?? "", practice.name),
    asOf: about.asOf,
    newId: idsOf(id),
    devices: new Map(),
  }
  const visits = course.visits
    .toSorted((a, b) => (a.date < b.date ? -1 : 1))
    .flatMap((visit) => visitResources(visit, scope))
  const lists = LIST_NAMES.flatMap((list) =>
    listResources(course[list] ?? [], { list, codec: LISTS[list] as ItemCodec<unknown>, scope }),
  )
  const all = [
    patientOf(headOf(course), { id, about, organization: scope.organization }),
    ...(practice ? [practice] : []),
    ...practitioners(about.people),
    ...visits,
    ...lists,
    ...planResources(course, about, scope),
    ...paperResources(about, { written: visits, scope }),
    ...scope.devices.values(),
  ]
  const distinct = [...new Map(all.map((each) => [`${each.resourceType}/${each.id}`, each])).values()]
  return about.snomed === false
    ? distinct.map((resource) => withoutSnomed(resource) as FhirResource)
    : distinct
}

/** All but the items of lists; a list with nothing in it has no item that could tell of it. */
function headOf({ lengthwise: _, visits: __, ...fields }: Course): Head {
  const rest = Object.entries(fields).filter(
    ([field, value]) => !(Object.hasOwn(LISTS, field) && Array.isArray(value) && value.length > 0),
  )
  return Object.fromEntries(rest) as Head
}

const organization = ({ id, name }: { readonly id: string; readonly name: string }): Organization => ({
  resourceType: "Organization",
  id: sharedId("practice", id),
  name: plain(name) ?? id,
})

const practitioners = (people: FhirContext["people"] = {}): readonly Practitioner[] =>
  Object.entries(people).map(([id, name]) => {
    const text = plain(name)
    return {
      resourceType: "Practitioner",
      id: sharedId("person", id),
      ...(text === undefined ? {} : { name: [{ text }] }),
    }
  })

function withoutNulls(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutNulls)
  if (typeof value !== "object" || value === null) return value
  const held = Object.entries(value).filter(([, item]) => item !== null && item !== undefined)
  return Object.fromEntries(held.map(([field, item]) => [field, withoutNulls(item)]))
}

function withoutSnomed(value: unknown): unknown {
  if (Array.isArray(value)) {
    return value.filter((item) => (item as { system?: unknown } | null)?.system !== SNOMED).map(withoutSnomed)
  }
  if (typeof value !== "object" || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([field, item]) => [field, withoutSnomed(item)]))
}
