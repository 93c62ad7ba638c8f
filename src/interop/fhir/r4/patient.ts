import type { Patient } from "fhir/r4.js"
import { type Course, SEXES } from "../../../engine/course.js"
import { type Loose, records } from "../../course/loose.js"
import type { Identity } from "../../intake/fragment.js"
import type { FhirContext } from "../context.js"
import { plain } from "../plain-text.js"
import { withoutLoss, withRemainder } from "../remainder.js"
import { dayIn } from "./days.js"
import { present } from "./observation.js"

/** The child, and what the course holds beside its lists: ancestry, parents, latitude, and that a list is empty. */

const CHILD_ID = "urn:lengthwise:fhir:child-id"
const CHART_NUMBER = "urn:lengthwise:fhir:chart-number"

/** The fields of a course that are no list of items; `others` are lists with nothing in them. */
export type Head = Pick<Course, "child" | "practice"> & Readonly<Record<string, unknown>>

export function patientOf(
  head: Head,
  {
    id,
    about,
    organization,
  }: { id: string; about: FhirContext; organization: Patient["managingOrganization"] },
): Patient {
  const { child } = head
  const [number, name, childId] = [about.identity?.number, about.identity?.name, child.id].map(plain)
  const identifier = [
    ...(number === undefined ? [] : [{ system: CHART_NUMBER, value: number }]),
    ...(childId === undefined ? [] : [{ system: CHILD_ID, value: childId }]),
  ]
  const patient: Patient = {
    resourceType: "Patient",
    id,
    ...(identifier.length === 0 ? {} : { identifier }),
    ...(name === undefined ? {} : { name: [{ text: name }] }),
    gender: child.sex,
    birthDate: child.born,
    ...(organization === undefined ? {} : { managingOrganization: organization }),
  }
  return withRemainder(patient, { whole: head, native: nativeHead(patient as unknown as Loose) })
}

const nativeHead = ({ identifier, gender, birthDate }: Loose) => ({
  child: present({
    id: text(records(identifier).find(({ system }) => system === CHILD_ID)?.value),
    born: dayIn(birthDate),
    sex: SEXES.find((sex) => sex === gender),
  }),
})

export const headRead = (patient: Loose): unknown => withoutLoss(patient, nativeHead(patient))

/** Who the Patient is, for matching. */
export function identityOf({ identifier, name, gender, birthDate }: Loose): Identity {
  const numbers = records(identifier).filter(({ value }) => text(value) !== undefined)
  const own = [CHART_NUMBER, CHILD_ID].map((system) => numbers.find((each) => each.system === system))
  // A former number may be another child's by now.
  const theirs = numbers.find(({ use }) => use !== "old")
  const names = records(name).filter(({ use }) => use !== "old")
  const called = names.find(({ use }) => use === "official") ?? names[0]
  return present({
    number: text((own[0] ?? own[1] ?? theirs)?.value),
    name: called && nameOf(called),
    born: dayIn(birthDate),
    sex: SEXES.find((sex) => sex === gender),
  })
}

function nameOf({ text: whole, given, family }: Loose): string | undefined {
  const parts = [...(Array.isArray(given) ? given : []), family].flatMap((part) => text(part) ?? [])
  const name = parts.length > 0 ? parts.join(" ") : text(whole)
  return name?.trim().replace(/\s+/g, " ") || undefined
}

const text = (value: unknown): string | undefined =>
  typeof value === "string" && value.trim() !== "" ? value : undefined
